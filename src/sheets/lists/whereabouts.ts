/** Where things are before the game begins. */
import { parentInUse } from '../../engine/left-out.ts';
import { rowOf } from '../../engine/rows.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import type { Caption } from '../../map/layout.ts';

export interface Whereabouts {
  /** What it lies in, what that lies in, and so on to the outermost. A lock begins with its box. */
  readonly holders: readonly NodeId[];
  /** For what lies in nothing, or whose outermost box does. Undefined for a place, and for what is in one. */
  readonly caption: Caption | undefined;
  /** The puzzles that hand it over, or the outermost box. */
  readonly givenBy: readonly NodeId[];
}

export function whereaboutsOf({ game, network, context }: Assessment, id: NodeId): Whereabouts {
  const holders: NodeId[] = [];
  let outermost = id;
  for (let holder = parentInUse(game, id); holder !== undefined; holder = parentInUse(game, holder)) {
    holders.push(holder);
    outermost = holder;
  }
  const index = network.index.get(outermost) ?? -1;
  const kind = index < 0 ? undefined : context.kindOf(index);
  if (kind === 'place' || kind === 'puzzle' || kind === undefined)
    return { holders, caption: undefined, givenBy: [] };
  const givenBy = Array.from(rowOf(network.needs, index))
    .filter((need) => context.kindOf(need) === 'puzzle')
    .map(context.idOf);
  const caption = givenBy.length > 0 ? 'given' : kind === 'container' ? 'tables' : 'hand';
  return { holders, caption, givenBy };
}

/** The same, told by what it lies in at once. */
export function nearestOf(whereabouts: Whereabouts): Whereabouts {
  const [nearest] = whereabouts.holders;
  return nearest === undefined ? whereabouts : { holders: [nearest], caption: undefined, givenBy: [] };
}
