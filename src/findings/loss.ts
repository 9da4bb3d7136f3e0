/**
 * What the game loses by what is left out today: the same game with everything used, beside the game as it is. Cost: that of measuring
 * the whole game once.
 */
import type { Measures } from '../engine/measures.ts';
import { byCodePoint } from '../game/compare.ts';
import { applyEdits } from '../game/edits/index.ts';
import type { NodeId } from '../game/model.ts';
import { type Assessment, assess } from './assess.ts';

export interface Loss {
  /** What the teacher has left out; what goes with it is not among them. By name, then id. */
  readonly things: readonly NodeId[];
  /** Steps that can be done fewer; negative: more. */
  readonly steps: number;
  /** Of the shortest time less; negative: more. Undefined where one of the two has none. */
  readonly minutes: number | undefined;
  /** Every prize can be reached: today, and with everything used. */
  readonly solvable: { readonly now: boolean; readonly whole: boolean };
}

/** Undefined where nothing is left out. */
export function lossOf({ game, measures, context }: Assessment): Loss | undefined {
  const whole = context.whole();
  if (!whole) return undefined;
  const things = [...game.nodes.values()]
    .filter(({ leftOut }) => leftOut === true)
    .sort((a, b) => byCodePoint(a.name, b.name) || byCodePoint(a.id, b.id))
    .map(({ id }) => id);
  return between(things, measures, whole.measures);
}

export interface Foreseen extends Loss {
  /** It can be won now, and then something would stop it: a prize out of reach, or one given away. */
  readonly stops: boolean;
}

/** What it would lose by leaving these out as well. Cost: an assessment. */
export function lossBy(
  { game, measures, canBeWon }: Assessment,
  ids: readonly NodeId[],
): Foreseen | undefined {
  const left = applyEdits(game, [{ type: 'leaveOut', ids, leftOut: true }]);
  if (!left.ok) return undefined;
  const then = assess(left.game);
  return { ...between(ids, then.measures, measures), stops: canBeWon && !then.canBeWon };
}

function between(things: readonly NodeId[], now: Measures, whole: Measures): Loss {
  const solvable = { now: now.solvable, whole: whole.solvable };
  return {
    things,
    steps: whole.steps - now.steps,
    minutes: solvable.now && solvable.whole ? whole.shortest - now.shortest : undefined,
    solvable,
  };
}
