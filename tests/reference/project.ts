/** Projects of textbooks as games: an activity is a puzzle, a precedence a link; the prize is handed over when the last activities are done. */
import type { Game } from '../../src/game/model.ts';
import { gameOf } from '../game-of.ts';

export interface Activity {
  readonly id: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly after: readonly string[];
}

/** With three estimates; `after` names its predecessors, a sign each. */
export function activity(id: string, low: number, likely: number, high: number, after = ''): Activity {
  return { id, low, likely, high, after: [...after] };
}

export function certain(id: string, duration: number, after = ''): Activity {
  return activity(id, duration, duration, duration, after);
}

/** Every activity keeps one pair of hands busy. `longer` adds to an activity's estimates. */
export function project(
  activities: readonly Activity[],
  longer: ReadonlyMap<string, number> = new Map(),
): Game {
  const waitedFor = new Set(activities.flatMap(({ after }) => after));
  const last = activities.filter(({ id }) => !waitedFor.has(id));
  return gameOf(
    [
      ...activities.map(({ id, low, likely, high }) => {
        const more = longer.get(id) ?? 0;
        return {
          id,
          kind: 'puzzle' as const,
          hands: 1,
          minutes: { low: low + more, likely: likely + more, high: high + more },
        };
      }),
      { id: 'done', kind: 'prize' },
    ],
    [
      ...activities.flatMap(({ id, after }) => after.map((before) => `${before}>${id}`)),
      ...last.map(({ id }) => `${id}>done`),
    ],
  );
}

/**
 * The construction project of Hillier and Lieberman, Introduction to Operations Research (Reliable Construction Co.): three estimates
 * in weeks and predecessors as in the worked example, from memory; means 2 4 10 6 4 5 7 9 7 8 4 5 2 6.
 */
export const RELIABLE_CONSTRUCTION: readonly Activity[] = [
  activity('A', 1, 2, 3),
  activity('B', 2, 3.5, 8, 'A'),
  activity('C', 6, 9, 18, 'B'),
  activity('D', 4, 5.5, 10, 'C'),
  activity('E', 1, 4.5, 5, 'C'),
  activity('F', 4, 4, 10, 'E'),
  activity('G', 5, 6.5, 11, 'D'),
  activity('H', 5, 8, 17, 'EG'),
  activity('I', 3, 7.5, 9, 'C'),
  activity('J', 3, 9, 9, 'FI'),
  activity('K', 4, 4, 4, 'J'),
  activity('L', 1, 5.5, 7, 'J'),
  activity('M', 1, 2, 3, 'H'),
  activity('N', 5, 5.5, 9, 'KL'),
];
