/** Where what a remedy adds stands on the mat. */

import type { Placement } from '../../game/edits/edit.ts';
import { type Game, type GameNode, type NodeId, parentOf } from '../../game/model.ts';
import { freeSpot } from '../../map/free-spot.ts';
import { layOut } from '../../map/lay-out.ts';
import { type MapLayout, plainView, type Rect } from '../../map/layout.ts';
import { standsIn } from '../../map/outline.ts';
import { FREE_THING_WIDTH, PUZZLE_MIN_HEIGHT, PUZZLE_WIDTH, THING_HEIGHT } from '../../map/sizes.ts';

export interface Spots {
  /** A free spot near a thing for each new node that lies in nothing. */
  readonly beside: (id: NodeId, nodes: readonly GameNode[]) => Placement[];
}

/** So far from the thing a spot may be, in pixels, before one farther off is as good. */
const NEAR = 320;
const NARROW: Rect = { x: 0, y: 0, width: NEAR, height: NEAR };

export function spotsIn(game: Game): Spots {
  let layout: MapLayout | undefined;
  return {
    beside(id, nodes) {
      layout ??= layOut(game, plainView);
      const slot = layout.slots.get(standsIn(layout, id) ?? id);
      const view = slot
        ? { x: slot.x - NEAR, y: slot.y - NEAR, width: slot.width + 2 * NEAR, height: slot.height + 2 * NEAR }
        : NARROW;
      const places: Placement[] = [];
      for (const node of nodes) {
        if (parentOf(node) !== undefined) continue;
        const size =
          node.kind === 'puzzle'
            ? { width: PUZZLE_WIDTH, height: 3 * PUZZLE_MIN_HEIGHT }
            : { width: FREE_THING_WIDTH, height: THING_HEIGHT };
        places.push([node.id, freeSpot(withTaken(layout, places), view, size)]);
      }
      return places;
    },
  };
}

/** What was placed just before is taken too: as a puzzle's field, which is all that a free spot looks at. */
function withTaken(layout: MapLayout, places: readonly Placement[]): MapLayout {
  const fields = places.map(([id, { x, y }]) => ({
    x,
    y,
    width: FREE_THING_WIDTH,
    height: 3 * PUZZLE_MIN_HEIGHT,
    caption: 'hand' as const,
    ids: [id],
  }));
  return fields.length === 0 ? layout : { ...layout, fields: [...layout.fields, ...fields] };
}
