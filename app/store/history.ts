/** Undo and redo without limit: each step holds immer's patches there and back. */
import type { Patch } from 'immer';
import type { EditTag } from './game.ts';

export interface HistoryStep {
  readonly patches: readonly Patch[];
  readonly inverse: readonly Patch[];
  /** Steps that carry one tag and follow each other are one gesture (typing in a field, nudging with arrow keys). */
  readonly tag: EditTag | undefined;
}

export interface History {
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

export const noHistory: History = { past: [], future: [] };

/** A new step empties the future; a step with the tag of the one before joins it. */
export function record(history: History, step: HistoryStep): History {
  const last = history.past.at(-1);
  if (last && step.tag !== undefined && last.tag === step.tag && history.future.length === 0) {
    const joined: HistoryStep = {
      patches: [...last.patches, ...step.patches],
      inverse: [...step.inverse, ...last.inverse],
      tag: step.tag,
    };
    return { past: [...history.past.slice(0, -1), joined], future: [] };
  }
  return { past: [...history.past, step], future: [] };
}
