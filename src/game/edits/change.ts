/** What the reducers share. Each is a pure function: a game and an edit in, the next game or a refusal out. */
import type { Game, GameNode, NodeId, Point } from '../model.ts';
import type { Edit, EditRefusal, Placement } from './edit.ts';

export interface Refused {
  readonly refusal: EditRefusal;
}

export type Outcome = Game | Refused;
export type EditOf<T extends Edit['type']> = Extract<Edit, { type: T }>;

export function isRefused(outcome: object): outcome is Refused {
  return 'refusal' in outcome;
}

export function refuse(refusal: EditRefusal): Refused {
  return { refusal };
}

export function unknownId(id: string): Refused {
  return refuse({ reason: 'unknown', id });
}

/** Pixels between things that come to lie on the mat together, one below the other. */
export const STACK_STEP = 48;

/** Places, puzzles and fasteners lie in nothing; everything else may lie in a place or container. */
export type Thing = Extract<GameNode, { kind: 'container' | 'key' | 'clue' | 'tool' | 'prize' }>;

export function isThing(node: GameNode): node is Thing {
  return node.kind !== 'place' && node.kind !== 'puzzle' && node.kind !== 'fastener';
}

/** The thing in another holder, or with undefined in none. */
export function lyingIn(node: Thing, holder: NodeId | undefined): GameNode {
  if (holder !== undefined) return { ...node, in: holder };
  const { in: _, ...free } = node;
  return free;
}

/** Sets the position given, keeping a pin and fields of the old one that this version does not know; false when it is no position. */
export function putAt(positions: Map<NodeId, Point>, [id, point]: Placement): boolean {
  const { x, y } = point;
  if (!Number.isFinite(x) || !Number.isFinite(y)) return false;
  const old = positions.get(id);
  /** Adding 0 turns -0, which JSON does not know, into 0. */
  if (old?.x !== x || old.y !== y) positions.set(id, { ...old, x: x + 0, y: y + 0 });
  return true;
}

/** A value that the schema does not allow in that field. */
export function badValue(id: string, field: string): Refused {
  return refuse({ reason: 'badValue', id, field });
}
