/** How many changes lie between the open game and the file that it was last saved to: what is undone is none any more. */
import type { History, HistoryStep } from '../store/history.ts';

/** A moment from which changes are counted. */
export interface Mark {
  /** The last step of the history then. */
  readonly step: HistoryStep | undefined;
  /** Changes that there were then already. */
  readonly changes: number;
}

export function markNow(history: History, changes: number): Mark {
  return { step: history.past.at(-1), changes };
}

/** Steps done since, or undone of what was before. Undefined when the way back to the mark is gone: something else was done after an undo. */
export function changesSince({ past, future }: History, { step, changes }: Mark): number | undefined {
  if (step === undefined) return changes + past.length;
  const done = past.lastIndexOf(step);
  if (done >= 0) return changes + past.length - 1 - done;
  const undone = future.lastIndexOf(step);
  return undone >= 0 ? changes + future.length - undone : undefined;
}
