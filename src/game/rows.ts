/**
 * The order of what lies in a tray, and of the fasteners on a container: by the position's y, then x.
 * Every drop rewrites it as { x: 0, y: 0, 1, 2 … }. What has no position yet comes last, by id.
 */
import { byCodePoint } from './compare.ts';
import type { Game, GameNode, Kind, NodeId, Point } from './model.ts';

/** What lies in a tray is drawn in three groups, in this order; rows change places within their group only. */
export type RowGroup = 'locks' | 'things' | 'boxes';

/** The group that a node of the kind is drawn in. */
export function rowGroup(kind: Kind): RowGroup {
  if (kind === 'fastener') return 'locks';
  return kind === 'container' ? 'boxes' : 'things';
}

function compareRows(positions: Game['positions'], a: GameNode, b: GameNode): number {
  const p = positions.get(a.id);
  const q = positions.get(b.id);
  if (p && q && (p.y !== q.y || p.x !== q.x)) return p.y - q.y || p.x - q.x;
  if (!p !== !q) return p ? -1 : 1;
  return byCodePoint(a.id, b.id);
}

/** The nodes given, in row order. */
export function inRowOrder(positions: Game['positions'], nodes: Iterable<GameNode>): GameNode[] {
  return [...nodes].sort((a, b) => compareRows(positions, a, b));
}

/** What lies in a place or container, in row order. */
export function contentsOf(game: Pick<Game, 'nodes' | 'positions'>, holder: NodeId): GameNode[] {
  return inRowOrder(
    game.positions,
    [...game.nodes.values()].filter((node) => node.in === holder),
  );
}

/** The fasteners on a container, in row order. */
export function fastenersOf(game: Pick<Game, 'nodes' | 'positions'>, container: NodeId): GameNode[] {
  return inRowOrder(
    game.positions,
    [...game.nodes.values()].filter((node) => node.on === container),
  );
}

/**
 * The rows of a tray after things were dropped into it.
 * @param rows those that lay there before, in order; among them perhaps some of the things dropped
 * @param before the one that they are dropped above; null, or one that is not there: at the end
 */
export function rowsAfterDrop(
  rows: readonly NodeId[],
  dropped: readonly NodeId[],
  before: NodeId | null | undefined,
): NodeId[] {
  const moved = new Set(dropped);
  const from = before === null || before === undefined ? -1 : rows.indexOf(before);
  const mark = from < 0 ? undefined : rows.slice(from).find((id) => !moved.has(id));
  const rest = rows.filter((id) => !moved.has(id));
  const index = mark === undefined ? rest.length : rest.indexOf(mark);
  return [...rest.slice(0, index), ...dropped, ...rest.slice(index)];
}

/** Writes rows into positions, without the pin of what comes from the mat; a position that is right already stays the same object. */
export function writeRows(positions: Map<NodeId, Point>, rows: readonly NodeId[]): void {
  rows.forEach((id, y) => {
    const old = positions.get(id);
    if (old?.x === 0 && old.y === y && old.pinned === undefined) return;
    const { pinned: _, ...loose } = old ?? { x: 0, y };
    positions.set(id, { ...loose, x: 0, y });
  });
}
