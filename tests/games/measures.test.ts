/** What the engine says of the example games, against what is claimed of them. */
import { describe, expect, test } from 'vitest';
import { codesOf } from '../../src/engine/codes.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { reportOf } from '../../src/engine/report.ts';
import { FASTENER_TYPES } from '../../src/fasteners/index.ts';
import { assess } from '../../src/findings/assess.ts';
import { KINDS } from '../../src/game/model.ts';
import { findingSentence } from '../../src/words/findings/index.ts';
import { plain } from '../../src/words/sentence.ts';
import { gameOf, openExample, SLUGS, type Slug } from './example.ts';

const CLAIMS: Readonly<Record<Slug, { steps: number; fewest: number; minutes: [number, number] }>> = {
  'greenhouse-pump': { steps: 8, fewest: 8, minutes: [18, 24] },
  /** The red herring is a step, and not needed. */
  'mineral-hall': { steps: 21, fewest: 20, minutes: [25, 32] },
  /** One desk can be left alone: a search, a puzzle and a lock. */
  'front-page': { steps: 11, fewest: 8, minutes: [12, 20] },
};

describe.each(SLUGS)('%s', (slug) => {
  const game = gameOf(slug);
  const network = compile(game);
  const report = reportOf(game);

  test('can be won, with everything in it reached', () => {
    expect(report.solvable).toBe(true);
    expect(report.reached).toHaveLength(game.nodes.size);
  });

  test('has no finding of any kind', () => {
    const { findings, canBeWon } = assess(game);
    expect(findings.map((finding) => plain(findingSentence(game, finding)))).toEqual([]);
    expect(canBeWon).toBe(true);
  });

  test('has the steps and the time that are claimed', () => {
    const { steps, fewest, minutes } = CLAIMS[slug];
    expect(report.steps).toMatchObject({ total: steps, fewest, fewestExact: true });
    expect(report.minutes?.shortest).toBeGreaterThan(minutes[0]);
    expect(report.minutes?.shortest).toBeLessThan(minutes[1]);
  });

  test('has the right code on every lock, and no code twice', () => {
    const codes = codesOf(game, network);
    for (const { node, state, problems } of codes) {
      expect(['right', 'key', 'latch'], network.ids[node]).toContain(state);
      expect(problems, network.ids[node]).toEqual([]);
    }
    const used = codes.flatMap(({ code }) => code ?? []);
    expect(new Set(used).size).toBe(used.length);
  });

  test('stands on the spine: puzzles below each other in the order of play', () => {
    const { order } = measure(network);
    const puzzles = [...order].filter((node) => KINDS[network.kinds[node] ?? 0] === 'puzzle');
    const spots = puzzles.map((node) => game.positions.get(network.ids[node] ?? ''));
    expect(new Set(spots.map((spot) => spot?.x)).size).toBe(1);
    const heights = spots.map((spot) => spot?.y ?? Number.NaN);
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
    expect(game.positions.size).toBe(game.nodes.size);
  });
});

describe('the full lesson', () => {
  const { file } = openExample('mineral-hall');
  const network = compile(gameOf('mineral-hall'));
  const measures = measure(network);
  const report = reportOf(gameOf('mineral-hall'));

  test('uses every type of lock and a latch, a hasp, a box in a box, a tool and a red herring', () => {
    const fasteners = file.nodes.filter((node) => node.kind === 'fastener');
    expect(new Set(fasteners.map((fastener) => fastener.type))).toEqual(
      new Set(FASTENER_TYPES.map(({ type }) => type)),
    );
    expect(fasteners.filter((fastener) => fastener.on === 'case')).toHaveLength(2);
    const boxes = new Set(file.nodes.flatMap(({ kind, id }) => (kind === 'container' ? [id] : [])));
    const inBoxes = file.nodes.filter((node) => node.kind === 'container' && boxes.has(node.in ?? ''));
    expect(inBoxes.map(({ id }) => id)).toEqual(['wadbox']);
    expect(file.links.filter((link) => link.at !== undefined)).toHaveLength(3);
    expect(file.links).toContainEqual(expect.objectContaining({ from: 'findbox', to: 'globe' }));
    expect(report.mustDo).toContain('underlens');
    expect(file.nodes.filter((node) => node.kind === 'tool')).toHaveLength(1);
    expect(file.nodes.filter((node) => node.decoy === true).map(({ id }) => id)).toEqual(['ticket']);
  });

  test('forks at least three times into work that cannot be skipped', () => {
    const beginning = new Map<string, number>();
    for (const node of measures.order) {
      if (measures.mustDo[node] !== 1) continue;
      const moment = (measures.start[node] ?? 0).toFixed(3);
      beginning.set(moment, (beginning.get(moment) ?? 0) + 1);
    }
    expect([...beginning.values()].filter((count) => count > 1).length).toBeGreaterThanOrEqual(3);
  });

  test('has two searches that only together shorten the game', () => {
    expect(report.tied).toEqual(['shelf', 'trolley']);
  });
});

describe('the game with a choice', () => {
  test('needs two of three desks, and none of the three for itself', () => {
    const { mustDo } = reportOf(gameOf('front-page'));
    expect(mustDo).toEqual(['headline', 'presslock']);
    expect(openExample('front-page').node('headline').need).toBe(2);
  });
});
