/** How a simulated lesson is played. The plain model is one team without hints, with nothing shared and nothing checked. */
import type { Clock } from './clock.ts';

/**
 * Which open step a team takes: any, each alike; a lock before anything else; what could be tried last; among equals any.
 * A list of node indices stands for 'the first of it that is open', then what is not in it: the list scheduling of Graham 1969.
 */
export type Choosing = 'any' | 'locksFirst' | 'newestFirst' | readonly number[];

export interface Rules {
  /** Played at once; 1 is enough where nothing joins them. */
  readonly teams: number;
  /** Things that are shared are waited for. */
  readonly sharing: boolean;
  /** Steps that are checked wait for a free adult. */
  readonly checking: boolean;
  /** That each team may have; they too wait for a free adult. */
  readonly hints: number;
  readonly choosing: Choosing;
}

export const PLAIN: Rules = { teams: 1, sharing: false, checking: false, hints: 0, choosing: 'any' };

/** The plain model and what the teacher has stated of this game: things to share and steps to check are simulated over all teams at once. */
export function statedRules({ network, shared, checked, lesson }: Clock): Rules {
  const sharing = lesson.teams > 1 && shared.some((count) => count > 0);
  const checking = network.isStep.some((isStep, i) => isStep === 1 && checked[i] === 1);
  return { ...PLAIN, sharing, checking, teams: sharing || checking ? lesson.teams : 1 };
}
