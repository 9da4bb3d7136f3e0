/** What the arrow keys do with the selection. */
import type { Edit } from '../../src/game/edits/edit.ts';
import { outermost } from '../../src/game/edits/place.ts';
import type { Game, NodeId } from '../../src/game/model.ts';
import { type RowGroup, rowGroup } from '../../src/game/rows.ts';
import type { MapLayout } from '../../src/map/layout.ts';
import type { Spot } from './geometry.ts';

/**
 * On the mat a thing is shifted; in a tray, or on a wall, it changes places with the neighbour above or below. Several keep their order:
 * those that are at the end of their row stay, and what follows them closes up.
 * @param by one of the four directions, each 0, 1 or -1
 * @param step pixels of the map, for what stands on the mat
 */
export function nudge(
  game: Game,
  layout: MapLayout,
  ids: ReadonlySet<NodeId>,
  by: Spot,
  step: number,
): readonly Edit[] {
  const edits: Edit[] = [];
  const trays = new Set<NodeId>();
  const roots = new Set(outermost(game, ids));
  for (const id of roots) {
    const slot = layout.slots.get(id);
    if (!slot) continue;
    if (slot.parent !== undefined) trays.add(slot.parent);
    else
      edits.push({ type: 'move', positions: [[id, { x: slot.x + by.x * step, y: slot.y + by.y * step }]] });
  }
  if (by.y === 0) return edits;
  for (const tray of trays) {
    const rows = layout.rows.get(tray) ?? [];
    const group = (name: RowGroup) => rows.filter((id) => groupOf(layout, id) === name);
    for (const { id, before } of stepsOf(group('locks'), roots, by.y)) {
      edits.push({ type: 'fasten', ids: [id], on: tray, before });
    }
    for (const { id, before } of [
      ...stepsOf(group('things'), roots, by.y),
      ...stepsOf(group('boxes'), roots, by.y),
    ]) {
      edits.push({ type: 'place', ids: [id], holder: tray, before });
    }
  }
  return edits;
}

function groupOf(layout: MapLayout, id: NodeId): RowGroup | undefined {
  const slot = layout.slots.get(id);
  return slot && rowGroup(slot.kind);
}

interface Step {
  readonly id: NodeId;
  /** What it then stands above; null at the end. */
  readonly before: NodeId | null;
}

/** One change of places after another, beginning with those that are farthest along. */
function stepsOf(rows: readonly NodeId[], chosen: ReadonlySet<NodeId>, dy: number): readonly Step[] {
  const order = [...rows];
  const steps: Step[] = [];
  const along = dy > 0 ? [...order.keys()].reverse() : [...order.keys()];
  for (const at of along) {
    const id = order[at];
    const next = order[at + dy];
    if (id === undefined || next === undefined || !chosen.has(id) || chosen.has(next)) continue;
    order[at] = next;
    order[at + dy] = id;
    steps.push({ id, before: dy < 0 ? next : (order[at + 2] ?? null) });
  }
  return steps;
}
