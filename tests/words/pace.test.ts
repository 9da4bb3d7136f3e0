/** What the pace card says, and which cuts it lists. */
import { expect, it } from 'vitest';
import { plannedCuts } from '../../src/engine/simulation/pace.ts';
import { noCuts, PACE } from '../../src/words/pace.ts';

it('lists no cut of the first minutes, when nobody can know yet that the lesson runs late', () => {
  const cuts = [1, 4, 5, 20].map((minute, step) => ({ step, minute }));
  expect(plannedCuts(cuts).map(({ minute }) => minute)).toEqual([5, 20]);
  expect(noCuts({ late: 50, cuts: plannedCuts(cuts.slice(0, 2)) }, 20)).toBe(PACE.noCuts);
  expect(noCuts({ late: 50, cuts: plannedCuts(cuts) }, 20)).toBeUndefined();
});
