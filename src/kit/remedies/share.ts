/** The teams share what there are too few of, and what that costs. */

import { Batch } from '../../engine/simulation/batch.ts';
import { clockOf } from '../../engine/simulation/clock.ts';
import { statedRules } from '../../engine/simulation/rules.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import type { RemedyWith, Shortage } from './remedy.ts';

/** On like draws, so that few tell the difference well. */
const RUNS = 200;

/** Undefined where there is none at all to share, or the thing of a lock is gone. */
export function share(
  { game }: Assessment,
  { part, node, missing, copies }: Shortage,
  teams: number,
): RemedyWith<'share'> | undefined {
  const shared = copies - missing;
  const own = game.nodes.get(node);
  const thing = own?.kind === 'fastener' ? own.on : node;
  if (shared < 1 || !own || (part === 'tool' && own.kind !== 'tool')) return undefined;
  return {
    code: 'share',
    values: { thing, shared, teams, minutes: undefined },
    edits: [{ type: 'setFields', id: thing, fields: { shared } }],
  };
}

/** Half of the lessons with what the teacher states of the game take so many minutes; undefined where it cannot be won. */
function median({ game, network, canBeWon }: Assessment): number | undefined {
  if (!canBeWon) return undefined;
  const clock = clockOf(game, network);
  const batch = new Batch(clock, statedRules(clock));
  batch.run(RUNS);
  return batch.result().median;
}

/** The median of simulated lessons with the change, less that without (src/engine/simulation/). Minutes; less than a hundredth is chance. */
export function minutesMore(before: Assessment, after: Assessment): number | undefined {
  const [was, is] = [median(before), median(after)];
  return was === undefined || is === undefined ? undefined : Math.round((is - was) * 100) / 100;
}

/** The box that a shortage is about: what hangs on it, or itself. */
export function containerOf({ game }: Pick<Assessment, 'game'>, { node }: Shortage): NodeId | undefined {
  const own = game.nodes.get(node);
  if (own?.kind === 'fastener') return own.on;
  return own?.kind === 'container' ? node : undefined;
}
