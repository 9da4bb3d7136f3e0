/** What it skips to try, at one lock, what opens another: the code is known once these are reached, and a try or two find it out. */

import { isLonger } from '../engine/compare.ts';
import { minutesOfTrying } from '../engine/guess/guess.ts';
import type { Index } from '../engine/measures.ts';
import { trySecondsOf } from '../fasteners/index.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';

export interface Skipped {
  readonly skips: readonly NodeId[];
  readonly minutesSkipped: number;
}

const NOTHING: Skipped = { skips: [], minutesSkipped: 0 };

/** Nothing where solving is sooner. */
export function tried(context: Context, lock: Index, given: readonly Index[]): Skipped {
  const node = context.game.nodes.get(context.idOf(lock));
  if (node?.kind !== 'fastener') return NOTHING;
  const { cuts } = context.guesses();
  const minutes = minutesOfTrying(1, trySecondsOf(node));
  const cut = cuts.of(lock, given, minutes);
  if (cut.skips.length === 0 || !isLonger(cuts.solvedAt(lock, cut), cut.at + minutes)) return NOTHING;
  return { skips: cut.skips.map(context.idOf), minutesSkipped: cut.minutesSkipped };
}
