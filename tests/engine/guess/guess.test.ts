import { describe, expect, it } from 'vitest';
import { loadWordList } from '../../../app/command/word-list.ts';
import { codesOf } from '../../../src/engine/codes.ts';
import { guessesOf, minutesOfTrying } from '../../../src/engine/guess/guess.ts';
import { measure } from '../../../src/engine/measures.ts';
import { compile } from '../../../src/engine/network.ts';
import type { Game, GameLink, GameNode } from '../../../src/game/model.ts';
import { fixed, gameOf, type NodeDraft } from '../../game-of.ts';
import { randomGame, seededRandom } from '../../random-game.ts';
import { allCodes, naiveStages } from './naive-guess.ts';

const words = loadWordList();

function guessing(game: Game, list = words) {
  const network = compile(game);
  const measures = measure(network);
  const guesses = guessesOf(game, network, measures, codesOf(game, network), list);
  const ids = (nodes: readonly number[]) => nodes.map((node) => network.ids[node] ?? '');
  return {
    measures,
    lock: (id: string) => guesses.locks.get(network.index.get(id) ?? -1),
    stages: (id: string) =>
      (guesses.locks.get(network.index.get(id) ?? -1)?.stages ?? []).map((stage) => ({
        ...stage,
        skips: ids(stage.skips),
        given: ids(stage.given),
      })),
    place: (id: string) => guesses.places.get(network.index.get(id) ?? -1),
  };
}

const box = (more: Partial<NodeDraft> = {}): NodeDraft[] => [
  { id: 'box', kind: 'container' },
  { id: 'lock', kind: 'fastener', on: 'box', type: 'number', code: '472', ...more },
  { id: 'prize', kind: 'prize', in: 'box' },
];
const puzzle = (id: string, answer: string, minutes: number): NodeDraft => ({
  id,
  kind: 'puzzle',
  answer,
  ...fixed(minutes),
});
const PARTS = [puzzle('a', '4', 3), puzzle('b', '7', 5), puzzle('c', '2', 7)];
const LINKS = ['a>lock@1', 'b>lock@2', 'c>lock@3'];

describe('stages of a code', () => {
  it('are one at hand, and one after each part of it is known', () => {
    const { stages, lock } = guessing(gameOf([...PARTS, ...box()], LINKS));
    expect(stages('lock')).toMatchObject([
      { at: 0, known: [], left: 1000, given: [], skips: ['a', 'b', 'c'], minutesSkipped: 15 },
      { at: 3, known: [1], left: 100, given: ['a'], skips: ['b', 'c'], minutesSkipped: 12 },
      { at: 5, known: [1, 2], left: 10, given: ['a', 'b'], skips: ['c'], minutesSkipped: 7 },
    ]);
    expect(lock('lock')).toMatchObject({ by: 'code', codes: 1000, trySeconds: 5 });
    expect(lock('lock')?.worst).toBe(lock('lock')?.stages[2]);
  });

  it('take parts that come at one time one after another', () => {
    const even = [puzzle('a', '4', 5), puzzle('b', '7', 5), puzzle('c', '2', 5)];
    const { stages } = guessing(gameOf([...even, ...box(fixed(0.1))], LINKS));
    expect(stages('lock').map(({ at, left, quicker }) => [at, left, quicker])).toEqual([
      [0, 1000, false],
      [5, 100, true],
      [5, 10, true],
    ]);
  });

  it('begin with what is known before the box is at hand', () => {
    const late = gameOf([...PARTS, { id: 'shelf', kind: 'place', ...fixed(6) }, ...box()], LINKS);
    const nodes = new Map(late.nodes).set('box', { id: 'box', kind: 'container', name: 'box', in: 'shelf' });
    expect(guessing({ ...late, nodes }).stages('lock')).toMatchObject([
      { at: 6, known: [1, 2], left: 10, skips: ['c'] },
    ]);
    nodes.set('shelf', { id: 'shelf', kind: 'place', name: 'shelf', ...fixed(8) });
    expect(guessing({ ...late, nodes }).stages('lock')).toMatchObject([
      { at: 8, known: [1, 2, 3], left: 1, skips: [], minutesSkipped: 0, quicker: false },
    ]);
  });

  it('wait for the minute at which a lock may be worked', () => {
    expect(guessing(gameOf([...PARTS, ...box({ atMinute: 4 })], LINKS)).stages('lock')).toMatchObject([
      { at: 4, known: [1], left: 100 },
      { at: 5, known: [1, 2], left: 10 },
    ]);
  });

  it('know no parts where not all are needed, and all with the first whole answer', () => {
    const any = gameOf(
      [puzzle('a', '472', 3), puzzle('b', '472', 5), ...box({ need: 1 })],
      ['a>lock', 'b>lock'],
    );
    // Neither puzzle is must-do; that guessing ends the game sooner is not so either.
    expect(guessing(any).stages('lock')).toMatchObject([{ known: [], left: 1000, skips: [] }]);
    const parts = gameOf([...PARTS, ...box({ need: 2 })], LINKS);
    expect(guessing(parts).stages('lock')).toMatchObject([{ known: [], left: 1000 }]);
  });

  it('count what a choice of ways saves, though none of them is must-do', () => {
    const ways = [1, 2, 3].map((n) => ({ ...puzzle(`way${n}`, '', 30) }));
    const last: NodeDraft = { ...puzzle('last', '472', 1), need: 2 };
    const game = gameOf(
      [...ways, last, ...box({ hardware: { trySeconds: 1 } })],
      ['way1>last', 'way2>last', 'way3>last', 'last>lock'],
    );
    const [stage] = guessing(game).stages('lock');
    expect(stage).toMatchObject({ skips: ['last'], minutesSkipped: 1, quicker: true });
    expect(stage?.saved).toBeGreaterThan(20);
  });

  it('keep the tools that a lock needs', () => {
    const game = gameOf(
      [
        ...PARTS,
        { id: 'shed', kind: 'place', ...fixed(2) },
        { id: 'hook', kind: 'tool', in: 'shed' },
        ...box(),
      ],
      [...LINKS, 'hook>lock'],
    );
    expect(guessing(game).stages('lock')[0]).toMatchObject({
      at: 2,
      given: ['hook'],
      skips: ['a', 'b', 'c'],
    });
  });

  it('are of one lock alone where several hang on a box', () => {
    const game = gameOf(
      [
        puzzle('a', '31', 4),
        puzzle('b', '52', 6),
        ...box({ code: '31' }),
        { id: 'other', kind: 'fastener', on: 'box', type: 'number', code: '52' },
      ],
      ['a>lock', 'b>other'],
    );
    const { stages } = guessing(game);
    expect(stages('lock')).toMatchObject([{ left: 100, skips: ['a'], saved: 0 }]);
    expect(stages('other')).toMatchObject([{ left: 100, skips: ['b'] }]);
  });

  it('see the game without what is left out', () => {
    const game = gameOf([...PARTS, ...box()], LINKS);
    const nodes = new Map<string, GameNode>(game.nodes);
    nodes.set('b', { id: 'b', kind: 'puzzle', name: 'b', answer: '7', ...fixed(5), leftOut: true });
    expect(
      guessing({ ...game, nodes })
        .stages('lock')
        .map(({ left }) => left),
    ).toEqual([1000, 100, 10]);
    nodes.set('box', { id: 'box', kind: 'container', name: 'box', leftOut: true });
    expect(guessing({ ...game, nodes }).lock('lock')).toBeUndefined();
  });

  it('skip nothing where the game cannot be won, or the lock never opens', () => {
    const shut: NodeDraft[] = [
      { id: 'far', kind: 'container' },
      { id: 'no', kind: 'fastener', on: 'far', type: 'number' },
    ];
    const lost = gameOf([...PARTS, ...box(), ...shut, { id: 'gone', kind: 'prize', in: 'far' }], LINKS);
    for (const stage of guessing(lost).stages('lock')) {
      expect(stage).toMatchObject({ skips: [], minutesSkipped: 0, saved: 0, quicker: false });
    }
    const spare = gameOf([...PARTS, ...box(), ...shut], LINKS);
    expect(guessing(spare).stages('no')).toMatchObject([{ left: Infinity, skips: [], quicker: false }]);
    const hidden: NodeDraft[] = [
      { id: 'in', kind: 'container', in: 'far' },
      { id: 'deep', kind: 'fastener', on: 'in', type: 'number', code: '12' },
    ];
    expect(guessing(gameOf([...PARTS, ...box(), ...shut, ...hidden], LINKS)).lock('deep')).toMatchObject({
      codes: 100,
      stages: [],
      worst: undefined,
    });
  });
});

describe('what is left to try', () => {
  it('is what agrees with the known positions, written out', () => {
    const agreeing = (known: readonly number[]) =>
      allCodes(3).filter((code) => known.every((at) => code[at - 1] === '472'[at - 1])).length;
    for (const { known, left } of guessing(gameOf([...PARTS, ...box()], LINKS)).stages('lock')) {
      expect(left).toBe(agreeing(known));
    }
  });

  it('follows the wheels of the lock', () => {
    const hardware = { wheels: ['456', '78', '2345'] };
    const { stages, lock } = guessing(gameOf([...PARTS, ...box({ hardware })], LINKS));
    expect(lock('lock')?.codes).toBe(24);
    expect(stages('lock').map(({ left }) => left)).toEqual([24, 8, 4]);
  });

  it('is words as common as the code, for a code that is a word, as the wheels can spell them', () => {
    const bird = (more: Partial<NodeDraft>, at = '') =>
      gameOf(
        [puzzle('a', at === '' ? 'OWL' : 'O', 30), ...box({ type: 'word', code: 'OWL', ...more })],
        [`a>lock${at}`],
      );
    const plain = (wanted: (word: string) => boolean) => {
      const graded = words.graded(3);
      const own = graded.find(([word]) => word === 'OWL')?.[1] ?? 0;
      return graded.filter(([word, grade]) => grade <= own && wanted(word)).length;
    };
    expect(guessing(bird({})).stages('lock')).toMatchObject([{ by: 'words', left: plain(() => true) }]);
    const wheels = ['OACD', 'WBRE', 'LDTS'];
    const onWheels = (word: string) => wheels.every((wheel, i) => wheel.includes(word.charAt(i)));
    expect(guessing(bird({ hardware: { wheels } })).stages('lock')).toMatchObject([
      { left: plain(onWheels) },
    ]);
    const { stages } = guessing(
      gameOf(
        [puzzle('a', 'O', 3), puzzle('b', 'WL', 9), ...box({ type: 'word', code: 'OWL' })],
        ['a>lock@1', 'b>lock@2,3'],
      ),
    );
    expect(stages('lock')[1]).toMatchObject({ known: [1], left: plain((word) => word.startsWith('O')) });
    expect(guessing(bird({ code: 'WLO' })).stages('lock')).toMatchObject([{ by: 'codes', left: 26 ** 3 }]);
    const unlisted = gameOf([puzzle('a', 'OWL', 30), ...box({ type: 'word', code: 'OWL' })], ['a>lock']);
    const network = compile(unlisted);
    const without = guessesOf(unlisted, network, measure(network), codesOf(unlisted, network));
    expect([...without.locks.values()][0]?.stages[0]).toMatchObject({ by: 'codes', left: 26 ** 3 });
  });

  it('is padlocks at hand that are not yet open, for a key', () => {
    const shut = (id: string, more: Partial<NodeDraft> = {}): NodeDraft[] => [
      { id, kind: 'container', ...more },
      { id: `${id}-lock`, kind: 'fastener', on: id, type: 'key', ...fixed(1) },
      { id: `${id}-key`, kind: 'key' },
    ];
    const game = gameOf(
      [
        { id: 'shelf', kind: 'place', ...fixed(4) },
        ...shut('early'),
        ...shut('near'),
        ...shut('far', { in: 'attic' }),
        { id: 'attic', kind: 'place', ...fixed(9) },
        ...box({ type: 'key', code: undefined }).filter(({ id }) => id !== 'lock'),
        { id: 'lock', kind: 'fastener', on: 'box', type: 'key' },
        { id: 'key', kind: 'key', in: 'shelf' },
        { ...puzzle('slow', '', 12) },
      ],
      ['early-key>early-lock', 'near-key>near-lock', 'slow>near-lock', 'far-key>far-lock', 'key>lock'],
    );
    const { stages, lock } = guessing(game);
    expect(lock('lock')).toMatchObject({ by: 'key', codes: 4, trySeconds: 10 });
    expect(stages('lock')).toMatchObject([
      { at: 4, by: 'locks', left: 2, minutes: (1.5 * 10) / 60, given: ['key'], skips: [] },
    ]);
  });

  it('is unknown for a lock without a code', () => {
    const game = gameOf(
      [
        ...PARTS,
        { id: 'box', kind: 'container' },
        { id: 'lock', kind: 'fastener', on: 'box', type: 'number' },
        { id: 'prize', kind: 'prize', in: 'box' },
      ],
      LINKS,
    );
    expect(guessing(game).lock('lock')).toMatchObject({ codes: Infinity, worst: { left: Infinity } });
  });

  it('is tried in (left + 1) / 2 goes on average, by play', () => {
    const random = seededRandom(11);
    for (const left of [1, 2, 10, 64]) {
      const runs = 6000;
      let tries = 0;
      for (let run = 0; run < runs; run++) {
        const codes = Array.from({ length: left }, (_, i) => i);
        const code = Math.floor(random() * left);
        for (let tried = 0; tried < left; tried++) {
          // Any of those not tried yet.
          const pick = tried + Math.floor(random() * (left - tried));
          const guess = codes[pick] ?? -1;
          codes[pick] = codes[tried] ?? -1;
          codes[tried] = guess;
          tries++;
          if (guess === code) break;
        }
      }
      // The number of tries is uniform on 1 to left: variance (left² − 1) / 12.
      const error = 4 * Math.sqrt((left ** 2 - 1) / 12 / runs);
      expect(Math.abs(tries / runs - (minutesOfTrying(left, 30) * 60) / 30)).toBeLessThanOrEqual(error);
    }
  });
});

/** Number locks of the game get codes of three digits, whole or in parts from what leads to them; the prizes lie behind the last. */
function withParts(game: Game, seed: number): { game: Game; locks: string[] } {
  const random = seededRandom(seed);
  const nodes = new Map<string, GameNode>(game.nodes);
  const links = new Map<string, GameLink>(game.links);
  const locks: string[] = [];
  for (const lock of game.nodes.values()) {
    if (lock.kind !== 'fastener') continue;
    const into = [...game.links.values()].filter(({ to }) => to === lock.id);
    if (into.some(({ from }) => game.nodes.get(from)?.kind === 'key')) continue;
    const code = String(100 + Math.floor(random() * 900));
    nodes.set(lock.id, { ...lock, type: 'number', code });
    locks.push(lock.id);
    for (const [i, link] of into.entries()) {
      const source = nodes.get(link.from);
      if (source?.kind !== 'puzzle' && source?.kind !== 'clue') continue;
      const at =
        random() < 0.2 ? undefined : i === into.length - 1 && random() < 0.5 ? [2, 3] : [1 + (i % 3)];
      const answer = at ? at.map((position) => code.charAt(position - 1)).join('') : code;
      nodes.set(source.id, { ...source, answer, ...fixed(1 + Math.floor(random() * 12)) });
      const { at: _, ...rest } = link;
      links.set(link.id, at ? { ...rest, at } : rest);
    }
  }
  const last = nodes.get(locks.at(-1) ?? '');
  for (const node of game.nodes.values()) {
    if (node.kind === 'prize' && last?.kind === 'fastener') nodes.set(node.id, { ...node, in: last.on });
  }
  return { game: { ...game, nodes, links }, locks };
}

describe('guesses of random games', () => {
  it('are what the statement says, worked out from the document', () => {
    let compared = 0;
    let quicker = 0;
    let parts = 0;
    for (let seed = 1; compared < 300 && seed < 9000; seed++) {
      const made = withParts(randomGame(seed, 10 + (seed % 8), { rings: seed % 4 === 0, prizes: 2 }), seed);
      const { measures, stages } = guessing(made.game);
      if (!measures.solvable || made.locks.length === 0) continue;
      for (const id of made.locks) {
        if (compile(made.game).index.get(id) === undefined) continue;
        const own = stages(id);
        const naive = naiveStages(made.game, id);
        const where = `seed ${seed}, ${id}`;
        expect(
          own.map(({ known, left, skips, quicker }) => ({ known, left, skips, quicker })),
          where,
        ).toEqual(
          naive.map(({ known, left, skips, quicker }) => ({
            known,
            left,
            skips: [...skips].sort(),
            quicker,
          })),
        );
        for (const [i, stage] of own.entries()) {
          expect(stage.at, where).toBeCloseTo(naive[i]?.at ?? -1, 6);
          expect(stage.saved, where).toBeCloseTo(naive[i]?.saved ?? -1, 6);
        }
        compared++;
        quicker += own.filter((stage) => stage.quicker).length;
        parts += own.filter(({ known }) => known.length > 0).length;
      }
    }
    expect(compared).toBeGreaterThanOrEqual(300);
    expect(quicker).toBeGreaterThan(5);
    expect(parts).toBeGreaterThan(40);
  });
});
