/** The pace of a lesson: when to hint at a lock that is still shut, and until when a step can be given away. */
import type { Pace } from '../engine/simulation/pace.ts';
import type { Game, NodeId } from '../game/model.ts';
import { sayer } from './say.ts';
import type { Sentence } from './sentence.ts';

export const PACE = {
  title: 'When to hint and give away',
  working: 'It is being worked out.',
  old: 'From before the change; it is being worked out anew.',
  blocked: 'It is worked out as soon as the game can be won.',
  failed: 'It cannot be worked out here.',
  locks:
    'Minutes of play. Of the lessons that end in time, half have the lock open by the first, four fifths by the second.',
  lock: 'Lock',
  half: 'Usually open by',
  fourFifths: 'Hint if still shut at',
  cuts: 'A lesson that runs late still ends in time, four times in five, when this step is given away at this minute of play.',
  step: 'Step',
  minute: 'Give away at',
  noLocks: 'No lock to keep pace by.',
  neverInTime: 'No lesson ends in time, so there is no pace to keep.',
  hardlyLate: 'Hardly a lesson runs late.',
  noCuts: 'Where a lesson runs late, giving away one step does not bring it back in time.',
};

/** At the beginning of a row: "Number lock on Green tin". */
export function paceName(game: Game, id: NodeId): Sentence {
  return sayer(game).title(id);
}

/** A minute of the lesson, whole; never before it: "by 12" is not 12.4. */
export function paceMinute(minute: number): string {
  return Number.isFinite(minute) ? String(Math.ceil(minute - 1e-6)) : 'not always opened';
}

/** Why there is nothing to list; undefined where there is. */
export function noPace({ inTime, locks }: Pace): string | undefined {
  if (inTime === 0) return PACE.neverInTime;
  return locks.length === 0 ? PACE.noLocks : undefined;
}

/** @param least late runs from which on cuts are sought */
export function noCuts({ cuts, late }: Pick<Pace, 'cuts' | 'late'>, least: number): string | undefined {
  if (late < least) return PACE.hardlyLate;
  return cuts.length === 0 ? PACE.noCuts : undefined;
}
