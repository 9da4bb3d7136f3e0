/**
 * The game in memory: nodes, links and positions as three maps by id. Positions stand apart, so that moving
 * a thing leaves nodes and links the same objects and nothing is computed anew. Order in a map means nothing.
 */
import type { Immutable } from 'immer';
import type { FileNode, GameFile } from './schema.ts';

export type NodeId = string;
export type LinkId = string;

type FileHead = Omit<GameFile, 'format' | 'version' | 'id' | 'revision' | 'basedOn' | 'nodes' | 'links'>;

export type GameHead = Immutable<Pick<GameFile, 'title' | 'summary' | 'lesson' | 'objectives'> & FileHead>;
export type Objective = Immutable<NonNullable<GameFile['objectives']>[number]>;
export type GameLink = Immutable<GameFile['links'][number]>;
export type Point = Immutable<NonNullable<FileNode['at']>>;
export type Estimate = Immutable<NonNullable<FileNode['minutes']>>;

/** A node without its position; see Game.positions. */
export type GameNode = Immutable<FileNode>;
export type Kind = GameNode['kind'];
/** Every kind, in the order in which a room is set up. */
export const KINDS: readonly Kind[] = [
  'place',
  'container',
  'fastener',
  'key',
  'clue',
  'tool',
  'puzzle',
  'prize',
];
export type NodeOf<K extends Kind> = Extract<GameNode, { kind: K }>;

export interface Game {
  /** Title, summary, lesson, objectives, and fields of the file that this version does not know. */
  readonly head: GameHead;
  readonly nodes: ReadonlyMap<NodeId, GameNode>;
  readonly links: ReadonlyMap<LinkId, GameLink>;
  /**
   * On the mat in pixels at 100 %, `pinned` where tidying is to leave it; in a tray or on a wall { x: 0, y: row } (see rows.ts).
   * Never changes what is true of the game.
   */
  readonly positions: ReadonlyMap<NodeId, Point>;
}

/** What tells copies of a game apart as they travel. Stands outside undo, and outside the question whether two games are the same. */
export interface Provenance {
  readonly id: string;
  /** Counts the saves of this copy. */
  readonly revision: number;
  /** The game that this one was copied from. */
  readonly basedOn?: string;
}

export interface GameDocument {
  readonly provenance: Provenance;
  readonly game: Game;
}

export const emptyGame: Game = { head: {}, nodes: new Map(), links: new Map(), positions: new Map() };

/** Place or container: the kinds that hold things. */
export function isHolder<T extends { readonly kind: Kind }>(
  node: T,
): node is T & { readonly kind: 'place' | 'container' } {
  return node.kind === 'place' || node.kind === 'container';
}

/** What the node hangs on in the picture and in the room: its holder, or for a fastener the container that it secures. */
export function parentOf(node: GameNode): NodeId | undefined {
  return node.kind === 'fastener' ? node.on : node.in;
}

/** Contents and fasteners by the node that they are in or on, each list in the order of the map. */
export function childrenOf(game: Game): ReadonlyMap<NodeId, readonly GameNode[]> {
  const children = new Map<NodeId, GameNode[]>();
  for (const node of game.nodes.values()) {
    const parent = parentOf(node);
    if (parent === undefined) continue;
    const list = children.get(parent);
    if (list) list.push(node);
    else children.set(parent, [node]);
  }
  return children;
}

/** Whether the node stands on the mat and is to stay where it is when the map is tidied. In a tray a pin means nothing. */
export function isPinned({ nodes, positions }: Pick<Game, 'nodes' | 'positions'>, id: NodeId): boolean {
  const node = nodes.get(id);
  return node !== undefined && parentOf(node) === undefined && positions.get(id)?.pinned === true;
}

/** Whether something that stands on the mat has no position there. */
export function hasUnplaced({ nodes, positions }: Pick<Game, 'nodes' | 'positions'>): boolean {
  for (const node of nodes.values()) if (parentOf(node) === undefined && !positions.has(node.id)) return true;
  return false;
}

/** The nodes given and all that lies in them or is fastened to them, at any depth. */
export function withContents(game: Game, ids: Iterable<NodeId>): Set<NodeId> {
  const children = childrenOf(game);
  const all = new Set<NodeId>();
  const visit = (id: NodeId) => {
    if (all.has(id) || !game.nodes.has(id)) return;
    all.add(id);
    for (const child of children.get(id) ?? []) visit(child.id);
  };
  for (const id of ids) visit(id);
  return all;
}
