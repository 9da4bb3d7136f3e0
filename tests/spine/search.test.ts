import { expect, test } from 'vitest';
import { type Judged, judge } from '../../src/spine/judge.ts';
import { climb, search } from '../../src/spine/search.ts';
import { type Columns, join, type Spine, type Tie } from '../../src/spine/spine.ts';
import { firstColumns } from '../../src/spine/start.ts';
import { seededRandom } from '../random-game.ts';

const GAP = 10;

/** Bars, and blocks that are each tied to one to three of them. */
function randomSpine(seed: number, bars: number, others: number, more: Partial<Spine> = {}): Spine {
  const random = seededRandom(seed);
  const blocks = Array.from({ length: bars + others }, (_, i) => ({
    height: i < bars ? 30 : 20 + Math.round(80 * random()),
  }));
  const ties: Tie[] = [];
  for (let i = bars; i < bars + others; i++) {
    const count = 1 + Math.floor(3 * random());
    for (let tie = 0; tie < count; tie++) {
      ties.push({ from: i, fromY: 10, to: Math.floor(bars * random()), toY: 15 });
    }
  }
  return { blocks, bars, ties, gap: () => GAP, unit: 10, ...more };
}

const barsOf = (spine: Spine) => spine.blocks.slice(0, spine.bars).map((_, i) => i);

function last(found: Generator<Judged, Judged>): Judged {
  for (;;) {
    const { done, value } = found.next();
    if (done) return value;
  }
}

/** Every block once, in order and with its gap, but for what is held. */
function check({ columns, y }: Judged, spine: Spine) {
  const all = [...columns.left, ...columns.spine, ...columns.right].sort((a, b) => a - b);
  expect(all).toEqual(spine.blocks.map((_, i) => i));
  for (const column of Object.values(columns)) {
    for (const [place, id] of column.entries()) {
      const above = column[place - 1];
      if (above === undefined) continue;
      const end = (y[above] ?? 0) + (spine.blocks[above]?.height ?? 0);
      expect((y[id] ?? 0) - end).toBeGreaterThanOrEqual(GAP - 1e-6);
    }
  }
}

test('a search only gets better, keeps the bars in their order, and is always the same', () => {
  for (let seed = 1; seed <= 5; seed++) {
    const spine = randomSpine(seed, 6, 12);
    const joined = join(spine);
    const costs: number[] = [];
    for (const { cost } of search(joined)) costs.push(cost);
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
    const found = last(search(joined));
    check(found, spine);
    expect(found.columns.spine).toEqual(barsOf(spine));
    expect(found.cost).toBeLessThanOrEqual(costs[0] ?? 0);
    expect(last(search(join(spine)))).toEqual(found);
  }
});

test('a search can begin from given columns, and a climb from where one has ended stays there', () => {
  const spine = randomSpine(7, 5, 10);
  const joined = join(spine);
  const start: Columns = { left: [], spine: barsOf(spine), right: [14, 13, 12, 11, 10, 9, 8, 7, 6, 5] };
  const [first] = search(joined, { start });
  expect(first?.columns).toEqual(start);
  const found = last(search(joined, { start }));
  expect(found.cost).toBeLessThan(judge(joined, start, 3).cost);
  expect(last(climb(joined, found.columns)).columns).toEqual(found.columns);
});

test('costs are in units: a spine twice as large, with a unit twice as long, costs the same', () => {
  const spine = randomSpine(9, 5, 8);
  const double: Spine = {
    ...spine,
    blocks: spine.blocks.map(({ height }) => ({ height: 2 * height })),
    ties: spine.ties.map((tie) => ({ ...tie, fromY: 2 * tie.fromY, toY: 2 * tie.toY })),
    gap: () => 2 * GAP,
    unit: 20,
  };
  const columns = firstColumns(join(spine), { left: [], spine: barsOf(spine), right: [] });
  expect(judge(join(double), columns, 5).cost).toBeCloseTo(judge(join(spine), columns, 5).cost, 6);
});

test('a tie that weighs nothing neither pulls nor costs', () => {
  const spine = randomSpine(10, 5, 8);
  const told: Tie = { from: 5, fromY: 0, to: 12, toY: 0, weight: 0 };
  const columns = firstColumns(join(spine), { left: [], spine: barsOf(spine), right: [] });
  const without = judge(join(spine), columns, 5);
  expect(judge(join({ ...spine, ties: [...spine.ties, told] }), columns, 5)).toEqual(without);
});

test('a block goes to its home side, unless that costs more than it is worth', () => {
  const free = randomSpine(13, 5, 8);
  const others = free.blocks.map((_, i) => i).slice(5);
  const { columns } = last(search(join(free)));
  // The mirror image costs as much, so it is what is found when every home is on the other side.
  const mirror = new Map(others.map((i) => [i, columns.left.includes(i) ? 'right' : 'left'] as const));
  const found = last(search(join({ ...free, homes: mirror })));
  for (const [i, side] of mirror) expect(found.columns[side]).toContain(i);
  // All on one side is dear: some go where there is room, and none for nothing.
  const crowd = { ...free, homes: new Map(others.map((i) => [i, 'left'] as const)) };
  const cheap = last(search(join({ ...crowd, costs: { away: 1 } }))).columns.right.length;
  const dear = last(search(join({ ...crowd, costs: { away: 1000 } }))).columns.right.length;
  expect(cheap).toBeGreaterThan(0);
  expect(dear).toBe(0);
});

test('columns stay within their band where they can, and the search moves over what is too much for one', () => {
  const free = randomSpine(11, 4, 10);
  const sum = free.blocks.slice(4).reduce((total, { height }) => total + height + GAP, 0);
  const band = { top: 100, bottom: 100 + 0.62 * sum };
  const spine = { ...free, bands: { left: band, spine: band, right: band } };
  const joined = join(spine);
  const crowded: Columns = { left: free.blocks.map((_, i) => i).slice(4), spine: barsOf(free), right: [] };
  const found = last(search(joined, { start: crowded }));
  check(found, spine);
  for (const [i, { height }] of spine.blocks.entries()) {
    expect(found.y[i]).toBeGreaterThanOrEqual(band.top - 1e-6);
    expect((found.y[i] ?? 0) + height).toBeLessThanOrEqual(band.bottom + 1e-6);
  }
});

test('held blocks stay, and part the column that they are in', () => {
  const free = randomSpine(12, 4, 8);
  const blocks = [...free.blocks, { height: 60 }, { height: 60 }];
  const held = new Map([
    [12, { y: 120 }],
    [13, { y: 400 }],
  ]);
  const spine: Spine = { ...free, blocks, held };
  const joined = join(spine);
  const start = firstColumns(joined, { left: [12], spine: barsOf(free), right: [13] });
  const found = last(search(joined, { start }));
  check(found, spine);
  expect([found.y[12], found.y[13]]).toEqual([120, 400]);
});
