import type { Game } from '../model.ts';
import { fastenersOf, rowsAfterDrop, writeRows } from '../rows.ts';
import { type EditOf, type Outcome, refuse, unknownId } from './change.ts';

/** Hangs fasteners on a container, in the order of the rows on its wall. */
export function fasten(game: Game, edit: EditOf<'fasten'>): Outcome {
  const ids = [...new Set(edit.ids)];
  const container = game.nodes.get(edit.on);
  if (!container) return unknownId(edit.on);
  const nodes = new Map(game.nodes);
  const positions = new Map(game.positions);
  let rehung = false;
  for (const id of ids) {
    const node = nodes.get(id);
    if (!node) return unknownId(id);
    if (node.kind !== 'fastener') return refuse({ reason: 'cannotHold', id, holder: edit.on });
    if (container.kind !== 'container') return refuse({ reason: 'needsContainer', id });
    if (node.on === edit.on) continue;
    nodes.set(id, { ...node, on: edit.on });
    rehung = true;
  }
  const rows = fastenersOf(game, edit.on).map((node) => node.id);
  writeRows(positions, rowsAfterDrop(rows, ids, edit.before));
  return { ...game, nodes: rehung ? nodes : game.nodes, positions };
}
