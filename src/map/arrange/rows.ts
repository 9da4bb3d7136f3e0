/** The order of rows in trays. */
import { byCodePoint } from '../../game/compare.ts';
import { childrenOf, type Game, type GameNode, type NodeId, type Point } from '../../game/model.ts';
import { writeRows } from '../../game/rows.ts';
import { contentsOf } from '../contents.ts';
import { firstUses } from './blocks.ts';

/** Rows in the order of first use, wherever nothing in a tray has a position yet. What a teacher has put in order stays so. */
export function rowsByUse(game: Game, numbers: ReadonlyMap<NodeId, number>): Game {
  const positions = new Map(game.positions);
  const firstUse = firstUses(game, numbers);
  for (const [, inside] of childrenOf(game)) {
    if (inside.some((node) => positions.has(node.id))) continue;
    const sorted = [...inside].sort((a, b) => {
      const [p, q] = [firstUse(a.id), firstUse(b.id)];
      return p === q ? byCodePoint(a.id, b.id) : p - q;
    });
    for (const [i, node] of sorted.entries()) positions.set(node.id, { x: 0, y: i });
  }
  return { ...game, positions };
}

/** Writes the rows in and on the trays given, at any depth: things, then boxes, as they are drawn; and locks. */
export function writeRowsIn(positions: Map<NodeId, Point>, ordered: Game, trays: Iterable<NodeId>): void {
  const contents = contentsOf(ordered);
  const write = (rows: readonly GameNode[]) =>
    writeRows(
      positions,
      rows.map((node) => node.id),
    );
  const visit = (id: NodeId) => {
    const { locks, things, boxes } = contents.of(id);
    write(locks);
    write([...things, ...boxes]);
    for (const box of boxes) visit(box.id);
  };
  for (const id of trays) visit(id);
}
