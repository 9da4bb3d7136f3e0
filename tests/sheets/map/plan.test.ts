import { describe, expect, test } from 'vitest';
import type { MapContent } from '../../../src/sheets/map/content.ts';
import { planMap } from '../../../src/sheets/map/plan/plan-map.ts';
import type { Frame, MapPlan } from '../../../src/sheets/map/plan.ts';
import { type Orientation, paperOf } from '../../../src/sheets/paper.ts';
import { type Box, contentOf } from './plan-content.ts';
import { faultsOf } from './plan-laws.ts';
import { randomSketch } from './plan-sketches.ts';

function frameOf(orientation: Orientation): Frame {
  const { width, height, margin } = paperOf('A4', orientation);
  return { width, height, margin, headFirst: 40, headOther: 20 };
}

function plansOf(content: MapContent, frame: Frame): MapPlan[] {
  const plans: MapPlan[] = [];
  const planning = planMap(content, frame);
  for (let step = planning.next(); ; step = planning.next()) {
    plans.push(step.value);
    if (step.done) return plans;
  }
}

const lastOf = (content: MapContent, frame: Frame) =>
  plansOf(content, frame).at(-1) ?? { pages: [], told: new Map(), unplaced: [] };

describe('on random games', () => {
  for (const orientation of ['portrait', 'landscape'] as const) {
    for (const [seed, puzzles] of [1, 3, 6, 9, 12, 15, 18, 22, 26, 30].entries()) {
      test(`${puzzles} puzzles, ${orientation}: nothing is on anything, every link is drawn or told`, () => {
        const content = contentOf(randomSketch(seed, { puzzles, rescue: seed % 2 === 1 }));
        const frame = frameOf(orientation);
        for (const plan of plansOf(content, frame)) expect(faultsOf(content, plan, frame)).toEqual([]);
      });
    }
  }

  test('the same content gives the same plan', () => {
    const plan = () =>
      JSON.stringify(lastOf(contentOf(randomSketch(4, { puzzles: 12 })), frameOf('portrait')));
    expect(plan()).toBe(plan());
  });
});

describe('what a page is given', () => {
  const named = (name: string, count: number) => Array.from({ length: count }, (_, i) => `${name}${i}`);
  /** Puzzles that each need a thing of a place of its own and open a box beside it. */
  const inTurn = (count: number, rescued = 0) =>
    contentOf({
      bars: named('puzzle', count),
      trays: named('place', count).map((id, i) => ({
        id,
        things: [`thing${i}`],
        boxes: [{ id: `box${i}`, locks: [`lock${i}`] }],
      })),
      pairs: named('puzzle', count).flatMap((bar, i): [string, string][] => [
        [`thing${i}`, bar],
        [bar, `lock${i}`],
      ]),
      rescued: named('puzzle', rescued),
    });

  test('a small game has the largest type, and all its lines', () => {
    const plan = lastOf(inTurn(5), frameOf('portrait'));
    expect(plan.pages.map((page) => page.parts.map((part) => part.metrics.size))).toEqual([[11]]);
    expect(plan.told.size).toBe(0);
  });

  test('what is beside what it belongs to has level lines', () => {
    const lines = lastOf(inTurn(5), frameOf('portrait')).pages.flatMap((page) =>
      page.parts.flatMap((part) => part.lines),
    );
    expect(lines).toHaveLength(10);
    expect(lines.filter(({ points }) => points.length === 2).length).toBeGreaterThanOrEqual(5);
  });

  test('a long game is a book of two halves on a page that lies, in the order of play', () => {
    const content = inTurn(16);
    const [page, ...others] = lastOf(content, frameOf('landscape')).pages;
    expect(others).toEqual([]);
    expect(page?.parts).toHaveLength(2);
    const counts = page?.parts.map((part) => part.bars.length) ?? [];
    expect(Math.abs((counts[0] ?? 0) - (counts[1] ?? 0))).toBeLessThanOrEqual(2);
  });

  test('rescue lines stand beside their steps as long as there is room, and are named where there is none', () => {
    const few = lastOf(inTurn(6, 6), frameOf('portrait'));
    expect(few.unplaced).toEqual([]);
    const [part] = few.pages[0]?.parts ?? [];
    for (const { note, y } of part?.notes ?? []) {
      const bar = part?.bars.find(({ id }) => id === note.key);
      expect(Math.abs(y - (bar?.y ?? 0))).toBeLessThan(20);
    }
    const content = inTurn(3, 3);
    const tall = { ...content, measureNote: () => 400 };
    const crowded = lastOf(tall, frameOf('portrait'));
    expect(crowded.unplaced).toHaveLength(2);
    expect(faultsOf(tall, crowded, frameOf('portrait'))).toEqual([]);
  });

  test('the first picture is a whole plan too, and later ones do not read worse', () => {
    const plans = plansOf(inTurn(9), frameOf('landscape'));
    const sizes = plans.map((plan) =>
      Math.min(...plan.pages.flatMap((page) => page.parts.map((part) => part.metrics.size))),
    );
    expect(plans.length).toBeGreaterThan(1);
    expect(sizes.at(-1)).toBeGreaterThanOrEqual(sizes[0] ?? 0);
  });
});

describe('bad input', () => {
  const noFaults = (content: MapContent, orientation: Orientation = 'portrait') => {
    const frame = frameOf(orientation);
    const plan = lastOf(content, frame);
    expect(faultsOf(content, plan, frame)).toEqual([]);
    return plan;
  };
  const named = (name: string, count: number) => Array.from({ length: count }, (_, i) => `${name}${i}`);

  test('nothing: one empty page', () => {
    const plan = noFaults(contentOf({ bars: [], trays: [], pairs: [] }));
    expect(plan.pages).toHaveLength(1);
  });

  test('no puzzles: trays in two columns', () => {
    const trays = named('place', 9).map((id): Box => ({ id, things: named(`${id} thing`, 4) }));
    const plan = noFaults(contentOf({ bars: [], trays, pairs: [] }));
    expect(plan.pages).toHaveLength(1);
    expect(new Set(plan.pages[0]?.parts[0]?.trays.map((tray) => tray.side)).size).toBe(2);
  });

  test('a tray of 300 rows goes on over pages', () => {
    const things = named('thing', 300);
    const bars = named('puzzle', 6);
    const pairs = things.slice(0, 40).map((id, i): [string, string] => [id, bars[i % 6] ?? '']);
    for (const orientation of ['portrait', 'landscape'] as const) {
      const plan = noFaults(contentOf({ bars, trays: [{ id: 'tables', things }], pairs }), orientation);
      expect(plan.pages.length).toBeGreaterThan(1);
    }
  });

  test('boxes five deep, each with more than a column holds', () => {
    const nested = (depth: number): Box => ({
      id: `box${depth}`,
      locks: [`lock${depth}`],
      things: named(`thing${depth} `, 30),
      boxes: depth < 5 ? [nested(depth + 1)] : [],
    });
    const bars = named('puzzle', 5);
    const pairs = bars.flatMap((bar, i): [string, string][] => [
      [`thing${i} 3`, bar],
      [bar, `lock${i + 1}`],
    ]);
    noFaults(contentOf({ bars, trays: [nested(0)], pairs }));
  });

  test('one tray used by every puzzle', () => {
    const bars = named('puzzle', 24);
    const pairs = bars.flatMap((bar, i): [string, string][] => [
      [`thing${i}`, bar],
      [`thing${(i * 7) % 24}`, bar],
    ]);
    noFaults(contentOf({ bars, trays: [{ id: 'shelf', things: named('thing', 24) }], pairs }));
  });

  test('puzzles in rings, two links between the same two', () => {
    const bars = named('puzzle', 4);
    const pairs: [string, string][] = [
      ['puzzle0', 'puzzle1'],
      ['puzzle1', 'puzzle0'],
      ['puzzle3', 'puzzle0'],
      ['thing', 'puzzle2'],
      ['thing', 'puzzle2'],
    ];
    noFaults(contentOf({ bars, trays: [{ id: 'place', things: ['thing'] }], pairs }));
  });

  test('three hundred puzzles end up on many pages', () => {
    const plan = noFaults(contentOf(randomSketch(7, { puzzles: 300 })), 'landscape');
    expect(plan.pages.length).toBeGreaterThan(10);
  });
});
