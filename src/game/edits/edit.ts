/**
 * Every change to a game is one of these: a value that can be logged, tested and replayed. A gesture is a list of them and
 * one undo. Each keeps the document legal or is refused with a reason; the reducers stand beside this file, one a file.
 */
import type { Patch } from 'immer';
import type { LinkRefusal } from '../links.ts';
import type { Game, GameLink, GameNode, LinkId, NodeId, Point } from '../model.ts';
import type { FileNode } from '../schema.ts';

/** What edits of their own set: a form may set every other field of the schema. */
type OwnEdit = 'id' | 'kind' | 'in' | 'on' | 'at' | 'name' | 'leftOut';

/** The fields that the schema names, over all kinds; not the unknown ones that it lets pass. */
type Named<T> = T extends unknown ? keyof { [F in keyof T as string extends F ? never : F]: true } : never;

export type NodeField = Exclude<Named<FileNode>, OwnEdit>;

/**
 * Fields that a form may set. `undefined` takes a field away, so that its
 * default holds. Objects (minutes, the lesson) are merged with what is there, field by field; lists are replaced.
 */
export type NodeFields = Readonly<Partial<Record<NodeField, unknown>>>;

/** Where things land: the id and the position, relative to the holder that they have afterwards. */
export type Placement = readonly [NodeId, Point];

export type Edit =
  /** Nodes with their links and positions, all new (a dragged-in thing, a paste). Ids must be unused. What is in a tray and has no position goes to the end of its rows. */
  | {
      readonly type: 'add';
      readonly nodes: readonly GameNode[];
      readonly links: readonly GameLink[];
      readonly positions: readonly Placement[];
    }
  /** Puts things and containers into a holder, or with null takes them out into the pupils' hands. In a tray, `before` says which thing they are dropped above (null: at the end); the `at` of all that lies there is rewritten as row order. On the mat they stay at `positions`. */
  | {
      readonly type: 'place';
      readonly ids: readonly NodeId[];
      readonly holder: NodeId | null;
      readonly before?: NodeId | null;
      readonly positions?: readonly Placement[];
    }
  | {
      readonly type: 'fasten';
      readonly ids: readonly NodeId[];
      readonly on: NodeId;
      readonly before?: NodeId | null;
    }
  | { readonly type: 'move'; readonly positions: readonly Placement[] }
  /** Says of what stands on the mat, and has a position there, whether tidying leaves it where it is. Going into a tray ends it. */
  | { readonly type: 'pin'; readonly ids: readonly NodeId[]; readonly pinned: boolean }
  | {
      readonly type: 'link';
      readonly id: LinkId;
      readonly from: NodeId;
      readonly to: NodeId;
      readonly at?: readonly number[];
    }
  | { readonly type: 'unlink'; readonly ids: readonly LinkId[] }
  | { readonly type: 'setLink'; readonly id: LinkId; readonly at: readonly number[] | undefined }
  | { readonly type: 'rename'; readonly id: NodeId; readonly name: string }
  | { readonly type: 'setFields'; readonly id: NodeId; readonly fields: NodeFields }
  | { readonly type: 'leaveOut'; readonly ids: readonly NodeId[]; readonly leftOut: boolean }
  /** Removes nodes and links. A holder's fasteners go with it, what it held drops to its own holder, links of what goes go too. */
  | { readonly type: 'remove'; readonly nodes: readonly NodeId[]; readonly links: readonly LinkId[] }
  | { readonly type: 'setHead'; readonly fields: Readonly<Record<string, unknown>> };

/** Why an edit is refused. The sentence stands in src/words/. */
export type EditRefusal =
  | { readonly reason: 'unknown'; readonly id: string }
  | { readonly reason: 'taken'; readonly id: string }
  /** The kind of `id` cannot lie in `holder` (places, puzzles and fasteners lie in nothing; only places and containers hold). */
  | { readonly reason: 'cannotHold'; readonly id: NodeId; readonly holder: NodeId }
  | { readonly reason: 'insideItself'; readonly id: NodeId; readonly holder: NodeId }
  /** Only what stands on the mat can be pinned. */
  | { readonly reason: 'notOnMat'; readonly id: NodeId }
  /** A lock let go off a box. */
  | { readonly reason: 'needsContainer'; readonly id: NodeId }
  | { readonly reason: 'link'; readonly from: NodeId; readonly to: NodeId; readonly refusal: LinkRefusal }
  /** A value that the schema does not allow there. */
  | { readonly reason: 'badValue'; readonly id: string; readonly field: string };

export interface Applied {
  readonly game: Game;
  readonly patches: readonly Patch[];
  readonly inverse: readonly Patch[];
}

export type EditResult =
  | ({ readonly ok: true } & Applied)
  | { readonly ok: false; readonly refusal: EditRefusal };
