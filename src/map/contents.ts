/** What lies in each tray, in the order in which it is drawn, and how much of it there is. */
import { type Game, type GameNode, type Kind, type NodeId, parentOf } from '../game/model.ts';
import { inRowOrder, type RowGroup, rowGroup } from '../game/rows.ts';

/** Each top to bottom. */
export type Contents = Readonly<Record<RowGroup, readonly GameNode[]>>;

export interface GameContents {
  /** What stands on the mat, top to bottom. */
  readonly roots: readonly GameNode[];
  readonly of: (id: NodeId) => Contents;
  /** How many things of each kind lie in it, at any depth. Locks are not counted. */
  readonly holds: (id: NodeId) => readonly { readonly kind: Kind; readonly count: number }[];
}

const NONE: Contents = { locks: [], things: [], boxes: [] };
const COUNTED: readonly Kind[] = ['container', 'key', 'clue', 'tool', 'prize'];

export function contentsOf(game: Game): GameContents {
  const roots: GameNode[] = [];
  const trays = new Map<NodeId, Record<RowGroup, GameNode[]>>();
  for (const node of inRowOrder(game.positions, game.nodes.values())) {
    const parent = parentOf(node);
    if (parent === undefined || !game.nodes.has(parent)) {
      roots.push(node);
      continue;
    }
    let tray = trays.get(parent);
    if (!tray) {
      tray = { locks: [], things: [], boxes: [] };
      trays.set(parent, tray);
    }
    tray[rowGroup(node.kind)].push(node);
  }
  const of = (id: NodeId) => trays.get(id) ?? NONE;
  const counts = new Map<NodeId, ReadonlyMap<Kind, number>>();
  const countsOf = (id: NodeId): ReadonlyMap<Kind, number> => {
    const known = counts.get(id);
    if (known) return known;
    const count = new Map<Kind, number>();
    const add = (kind: Kind, by: number) => count.set(kind, (count.get(kind) ?? 0) + by);
    for (const thing of of(id).things) add(thing.kind, 1);
    for (const box of of(id).boxes) {
      add('container', 1);
      for (const [kind, by] of countsOf(box.id)) add(kind, by);
    }
    counts.set(id, count);
    return count;
  };
  const holds = (id: NodeId) =>
    COUNTED.flatMap((kind) => {
      const count = countsOf(id).get(kind);
      return count === undefined ? [] : [{ kind, count }];
    });
  return { roots, of, holds };
}
