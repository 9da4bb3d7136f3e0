/** The critical chain adds up to the shortest time, and each of its links is one that is waited for. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { criticalChain } from '../../src/engine/critical-chain.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { fixed, gameOf } from '../game-of.ts';
import { gameArbitrary } from '../random-game.ts';

function chainIn(...[nodes, links]: Parameters<typeof gameOf>): string[] {
  const network = compile(gameOf(nodes, links));
  return Array.from(criticalChain(network), (i) => network.ids[i] ?? '');
}

test('it is the longer way to the prize, by minutes and not by steps', () => {
  const nodes = [
    { id: 'a', kind: 'puzzle', ...fixed(2) },
    { id: 'b', kind: 'puzzle', ...fixed(2) },
    { id: 'long', kind: 'puzzle', ...fixed(9) },
    { id: 'last', kind: 'puzzle', ...fixed(1) },
    { id: 'map', kind: 'prize' },
  ] as const;
  expect(chainIn(nodes, ['a>b', 'b>last', 'long>last', 'last>map'])).toEqual(['long', 'last', 'map']);
});

test('a game that cannot be won has none', () => {
  expect(
    chainIn([
      { id: 'tin', kind: 'container' },
      { id: 'lock', kind: 'fastener', on: 'tin' },
      { id: 'map', kind: 'prize', in: 'tin' },
    ]),
  ).toEqual([]);
});

test('where nothing is given out late its minutes add up to the shortest time', () => {
  let solvable = 0;
  fc.assert(
    fc.property(gameArbitrary({ size: 24 }), (game) => {
      const network = compile(game);
      const { shortest, solvable: canBeWon } = measure(network);
      if (!canBeWon || network.atMinute.some((minute) => minute > 0)) return;
      solvable += 1;
      const chain = criticalChain(network);
      const sum = chain.reduce((minutes, node) => minutes + (network.minutes[node] ?? 0), 0);
      expect(sum).toBeCloseTo(shortest, 6);
    }),
    { seed: 12, numRuns: 400 },
  );
  expect(solvable).toBeGreaterThan(20);
});
