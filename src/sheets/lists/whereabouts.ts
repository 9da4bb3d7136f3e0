/** Where things are before the game begins. */
import { giversOf } from '../../engine/handed-over.ts';
import { parentInUse } from '../../engine/left-out.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import { captionOf } from '../../map/caption.ts';
import type { Caption } from '../../map/layout.ts';

export interface Whereabouts {
  /** What it lies in, what that lies in, and so on to the outermost. A lock begins with its box. */
  readonly holders: readonly NodeId[];
  /** For what lies in nothing, or whose outermost box does. Undefined for a place, and for what is in one. */
  readonly caption: Caption | undefined;
  /** The puzzles that hand it over, or the outermost box. */
  readonly givenBy: readonly NodeId[];
  /** Before which it is not given, or the outermost box; 0 when there is none. */
  readonly minute: number;
}

export function whereaboutsOf({ game, network, context }: Assessment, id: NodeId): Whereabouts {
  const holders: NodeId[] = [];
  let outermost = id;
  for (let holder = parentInUse(game, id); holder !== undefined; holder = parentInUse(game, holder)) {
    holders.push(holder);
    outermost = holder;
  }
  const index = network.index.get(outermost) ?? -1;
  const node = game.nodes.get(outermost);
  const givenBy = giversOf(network, index).map(context.idOf);
  const caption = node && index >= 0 ? captionOf(node, givenBy.length > 0) : undefined;
  return {
    holders,
    caption,
    givenBy,
    minute: caption === undefined ? 0 : (network.atMinute[index] ?? 0),
  };
}

/** The same, told by what it lies in at once. */
export function nearestOf(whereabouts: Whereabouts): Whereabouts {
  const [nearest] = whereabouts.holders;
  return nearest === undefined
    ? whereabouts
    : { holders: [nearest], caption: undefined, givenBy: [], minute: 0 };
}
