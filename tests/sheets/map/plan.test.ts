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
  plansOf(content, frame).at(-1) ?? { pages: [], told: new Map(), left: [] };

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
