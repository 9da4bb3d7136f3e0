/** Where the time goes, in two readings, and the chain that decides the end: always the figures of one result. */
import { expect, test } from 'vitest';
import type { SimulationState } from '../../../app/engine/simulation.ts';
import { chainOf, heatOf } from '../../../app/flow/heat.ts';
import { criticalChain } from '../../../src/engine/critical-chain.ts';
import { compile } from '../../../src/engine/network.ts';
import { simulate } from '../../../src/engine/simulation/batch.ts';
import { clockOf } from '../../../src/engine/simulation/clock.ts';
import type { Figures } from '../../../src/engine/simulation/figures.ts';
import { heatSentence } from '../../../src/words/heat.ts';
import { plain } from '../../../src/words/sentence.ts';
import { gameOf, LINKS, NODES } from '../open-game.ts';

const game = gameOf(NODES, LINKS);

function figuresWith(costs: ReadonlyMap<string, number> | undefined): Figures {
  const network = compile(game);
  const clock = clockOf(game, network);
  const simulated = simulate(clock, undefined, 200);
  if (!simulated) throw new Error('a game that can be won');
  const minutes = Float64Array.from(network.ids, (id) => costs?.get(id) ?? 0);
  return {
    clock,
    simulated,
    coarse: false,
    chain: criticalChain(network),
    costs: costs && { minutes, decides: new Float64Array(network.size) },
    whole: undefined,
    byHints: undefined,
    byChoosing: undefined,
  };
}

const known = figuresWith(
  new Map([
    ['sum', 5.4],
    ['sill', 2.1],
    ['lock', 0.02],
    ['note', -1],
  ]),
);
const now: SimulationState = { figures: known, complete: known, isOld: false, failed: false, findings: [] };

test('the costs, with nothing for what costs nothing', () => {
  const shown = heatOf(now, 'cost');
  expect([...(shown?.heat ?? [])]).toEqual([
    ['sill', { share: 2.1 / 6, text: '2.1 min' }],
    ['sum', { share: 5.4 / 6, text: '5.4 min' }],
  ]);
  expect(shown).toMatchObject({ end: 6, isOld: false });
  expect(plain(heatSentence(game, known, 'cost', shown?.most))).toBe(
    'Add the rows costs most: the game ends 5.4 minutes sooner without it.',
  );
});

test('old costs stand until there are new ones, pale and marked', () => {
  const fresh = figuresWith(undefined);
  const shown = heatOf({ ...now, figures: fresh }, 'cost');
  expect(shown?.isOld).toBe(true);
  expect(shown?.figures).toBe(known);
  expect(shown?.heat.get('sum')?.share).toBeCloseTo(5.4 / 6 / 3);
  expect(shown?.heat.get('sum')?.text).toBe('5.4 min');
  expect(heatOf({ ...now, figures: fresh, complete: undefined }, 'cost')).toBeUndefined();
});

test('waiting is known with the first runs', () => {
  const fresh = figuresWith(undefined);
  const shown = heatOf({ ...now, figures: fresh }, 'waiting');
  expect(shown).toMatchObject({ isOld: false, figures: fresh });
  // Of six pupils three are at the puzzle, and nothing else can be done.
  const sum = fresh.clock.network.index.get('sum') ?? -1;
  expect(shown?.most).toBe(sum);
  expect(plain(heatSentence(game, fresh, 'waiting', shown?.most))).toBe(
    'Waiting is longest while Add the rows is worked: 3 of 6 pupils wait.',
  );
});

test('where nothing costs anything, or nobody waits, that is said', () => {
  const free = figuresWith(new Map());
  expect(heatOf({ ...now, figures: free }, 'cost')).toMatchObject({ end: undefined, most: undefined });
  expect(plain(heatSentence(game, free, 'cost', undefined))).toMatch(/^No step costs anything by itself/);
  expect(plain(heatSentence(game, free, 'waiting', undefined))).toBe('Nobody has to wait.');
});

test('what is there for fun has its figure at the pale end, and is never the most', () => {
  const forFun = known.clock.forFun.slice();
  forFun[known.clock.network.index.get('sum') ?? -1] = 1;
  const figures = { ...known, clock: { ...known.clock, forFun } };
  const shown = heatOf({ ...now, figures, complete: figures }, 'cost');
  expect([...(shown?.heat ?? [])]).toEqual([
    ['sill', { share: 2.1 / 3, text: '2.1 min' }],
    ['sum', { share: 0, text: '5.4 min' }],
  ]);
  expect(shown?.most).toBe(figures.clock.network.index.get('sill'));
});

test('of a game that cannot be won nothing is shown', () => {
  const nothing = { ...now, figures: undefined, complete: undefined };
  expect(heatOf(nothing, 'cost')).toBeUndefined();
  expect(heatOf(nothing, 'waiting')).toBeUndefined();
  expect(chainOf(nothing)).toBeUndefined();
});

test('the chain: its steps, and what follows each thing on it', () => {
  const chain = chainOf(now);
  expect([...(chain?.steps ?? [])]).toEqual(['sill', 'sum', 'lock']);
  expect(chain?.next.get('note')).toBe('sum');
  expect(chain?.next.get('sum')).toBe('lock');
});
