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
    'By these minutes the lock is open in half, and in four fifths, of the lessons that end in time. Hint where it is still shut at the second.',
  lock: 'Lock',
  half: 'Half',
  fourFifths: 'Four fifths',
  cuts: 'A lesson that runs late still ends in time, four times in five, when this step is given away at that minute.',
  step: 'Step',
  minute: 'Minute',
  noLocks: 'No lock to keep pace by.',
  neverInTime: 'No lesson ends in time, so there is no pace to keep.',
  hardlyLate: 'Hardly a lesson runs late.',
  noCuts: 'Where a lesson runs late, no single step that is given away brings it back in time.',
};

export function paceName(game: Game, id: NodeId): Sentence {
  return sayer(game).name(id);
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
export function noCuts({ cuts, late }: Pace, least: number): string | undefined {
  if (late < least) return PACE.hardlyLate;
  return cuts.length === 0 ? PACE.noCuts : undefined;
}
