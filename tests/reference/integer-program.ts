/**
 * The fewest steps as an integer programme, for HiGHS (Huangfu and Hall 2018).
 * Every event is chosen or not; one that is chosen has all that it waits for chosen, and k of its needs *used*. So that nothing
 * rests on itself, each event has a level, above that of all it uses (Miller, Tucker and Zemlin 1960).
 */
import type { Highs } from 'highs';
import type { Rules } from './rules.ts';

/** The smallest number of steps that wins. The game has to be solvable. */
export function fewestByInteger(highs: Highs, game: Rules): number {
  const { rules, prizes } = game;
  const levels = rules.length + 1;
  const rows: string[] = [];
  const binaries: string[] = [];
  const bounds: string[] = [];
  for (const { head, all, some, k } of rules) {
    binaries.push(`x_${head}`);
    bounds.push(`0 <= l_${head} <= ${levels}`);
    for (const before of all) {
      rows.push(`x_${before} - x_${head} >= 0`);
      rows.push(`l_${head} - l_${before} - ${levels + 1} x_${head} >= ${-levels}`);
    }
    const uses = some.map((before) => `u_${before}_${head}`);
    for (const [i, before] of some.entries()) {
      const use = uses[i] ?? '';
      binaries.push(use);
      rows.push(`x_${before} - ${use} >= 0`);
      rows.push(`l_${head} - l_${before} - ${levels + 1} ${use} >= ${-levels}`);
    }
    if (k > 0) rows.push(uses.length === 0 ? `x_${head} <= 0` : `${uses.join(' + ')} - ${k} x_${head} >= 0`);
  }
  for (const prize of prizes) rows.push(`x_${prize} >= 1`);
  const steps = rules.filter(({ isStep }) => isStep).map(({ head }) => `x_${head}`);
  const solution = highs.solve(
    [
      'Minimize',
      ` steps: ${steps.length > 0 ? steps.join(' + ') : `0 x_${rules[0]?.head}`}`,
      'Subject To',
      ...rows.map((row, i) => ` r${i}: ${row}`),
      'Bounds',
      ...bounds.map((bound) => ` ${bound}`),
      'Binary',
      ...binaries.map((name) => ` ${name}`),
      'End',
    ].join('\n'),
  );
  // The library answers nonsense with another status and does not throw.
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS ended with ${solution.Status}.`);
  return Math.round(solution.ObjectiveValue);
}
