/** What is being dragged. It lives here and not in the game, which is written once, when it is let go. */
import { create } from 'zustand';
import type { NodeId } from '../../../src/game/model.ts';
import type { Rect } from '../../../src/map/layout.ts';
import type { Spot } from '../geometry.ts';
import type { Landing } from './landing.ts';

export interface Held {
  /** What the hand holds; the first is under the pointer. */
  readonly roots: readonly NodeId[];
  /** These and all that lies in them or hangs on them. */
  readonly moving: ReadonlySet<NodeId>;
  /** Where the roots are now, relative to what they are drawn in. */
  readonly positions: ReadonlyMap<NodeId, Spot>;
}

export interface DragState {
  readonly held: Held | undefined;
  /** Where it would land; undefined until the hand has moved. */
  readonly landing: Landing | undefined;
  /** The tray in which it would land. */
  readonly target: NodeId | undefined;
  /** The row in it. */
  readonly mark: Rect | undefined;
  /** What the pointer says, and whether that is a refusal. */
  readonly note: { readonly text: string; readonly refused: boolean } | undefined;
}

const idle: DragState = {
  held: undefined,
  landing: undefined,
  target: undefined,
  mark: undefined,
  note: undefined,
};

export const useDrag = create<DragState>()(() => idle);

/** The hand is empty again. */
export function letGo(): void {
  useDrag.setState(idle);
}
