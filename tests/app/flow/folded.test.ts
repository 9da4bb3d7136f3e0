/** A folded box says which steps are in it, and shows of them the one that most wants to be seen. */
import { expect, test } from 'vitest';
import type { Look } from '../../../app/flow/card.ts';
import { foldedLook, insideOf } from '../../../app/flow/folded.ts';
import { gameOf } from '../open-game.ts';

const PLAIN: Look = {
  number: 0,
  state: undefined,
  culprit: false,
  pale: false,
  heat: undefined,
  inChain: false,
  moment: undefined,
};

test('what is inside is found at any depth, locks included', () => {
  const game = gameOf(
    [
      { id: 'shelf', name: 'shelf', kind: 'place' },
      { id: 'tin', name: 'tin', kind: 'container', in: 'shelf' },
      { id: 'lock', name: 'lock', kind: 'fastener', on: 'tin' },
      { id: 'case', name: 'case', kind: 'container', in: 'tin' },
      { id: 'paper', name: 'paper', kind: 'clue', in: 'case' },
      { id: 'other', name: 'other', kind: 'clue', in: 'shelf' },
    ],
    [],
  );
  expect(new Set(insideOf(game)('tin'))).toEqual(new Set(['lock', 'case', 'paper']));
});

test('the numbers of the steps stand in order', () => {
  const { steps } = foldedLook(PLAIN, [{ ...PLAIN, number: 12 }, PLAIN, { ...PLAIN, number: 3 }, undefined]);
  expect(steps).toEqual([3, 12]);
});

test('the longest time is shown, and what is worked at before what could be', () => {
  const inside: Look[] = [
    { ...PLAIN, heat: { share: 0.2, text: '20 s' }, moment: { state: 'open', text: 'can be tried' } },
    { ...PLAIN, heat: { share: 0.7, text: '2 min' }, moment: { state: 'working', text: '3 pupils' } },
  ];
  const { look } = foldedLook({ ...PLAIN, moment: { state: 'shut', text: 'shut' } }, inside);
  expect(look.heat?.text).toBe('2 min');
  expect(look.moment?.text).toBe('3 pupils');
});

test('where nothing in it can be done the box keeps its own word', () => {
  const own: Look = { ...PLAIN, moment: { state: 'done', text: 'open' } };
  const { look } = foldedLook(own, [{ ...PLAIN, moment: { state: 'shut', text: 'shut' } }]);
  expect(look.moment?.text).toBe('open');
});

test('a lock in it that cannot be opened is told', () => {
  const { look } = foldedLook(PLAIN, [
    { ...PLAIN, state: 'keptShut' },
    { ...PLAIN, state: 'cannotOpen' },
  ]);
  expect(look.state).toBe('cannotOpen');
});
