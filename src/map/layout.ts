/**
 * Where everything is on the map, from the document alone: trays as large as what they hold, rows inside, plates on the wall.
 * All sizes in pixels at 100 %. Slots are relative to the tray that they are drawn in, so that moving a tray changes
 * its own slot and no other; `absolute` adds them up.
 */
import type { Kind, NodeId } from '../game/model.ts';

export type Side = 'left' | 'right';

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A line under the name, in the second text (sizes.ts, NOTE). The words stand in src/words/. */
export type Note =
  /** Not all of the links into it are needed. */
  | { readonly note: 'need'; readonly need: number; readonly of: number }
  | { readonly note: 'redHerring' }
  /** A lock for the joy of opening. */
  | { readonly note: 'forFun' }
  /** So many of it for all teams together. */
  | { readonly note: 'shared'; readonly copies: number }
  /** The teacher looks at it, or hands over, before it is done. */
  | { readonly note: 'checked' }
  | { readonly note: 'notToday' }
  /** `givenOut`: the teacher gives it out at this minute; else it cannot be had or done before. */
  | { readonly note: 'atMinute'; readonly minute: number; readonly givenOut: boolean };

/** A code or answer, broken at its symbols. */
export interface CodeLines {
  /** Symbols in order, line by line. Each symbol is drawn as one, `CODE.spacing` after it. */
  readonly lines: readonly (readonly string[])[];
  /** The symbols are U, D, L and R, to be drawn as arrows with their letters, `ARROW_WIDTH` wide each. */
  readonly directions: boolean;
}

/** 'On the tables' (containers), 'in hand from the start' (other things), 'given by the teacher' (what a puzzle hands over, or what is given out at a minute). */
export type Caption = 'tables' | 'hand' | 'given';

export interface Slot {
  readonly kind: Kind;
  /** Top left corner, relative to that of `parent`, or on the mat. A plate overhangs its wall, so its x may be negative or end beyond the container. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The tray that it is drawn in, or for a plate the container whose wall it is on; undefined on the mat. */
  readonly parent: NodeId | undefined;
  /** 0 on the mat; a plate is one deeper than its container. */
  readonly depth: number;
  /** Its name, broken to fit; never cut. One empty line for an empty name. None on a plate that shows its code. */
  readonly lines: readonly string[];
  /** Top left corner of the first line, relative to the slot. Each line is `LINE` high, centred on its text. The step number and the sign stand left of it. */
  readonly text: { readonly x: number; readonly y: number };
  /** Room for a step number is kept left of the name (20 px circle at x = text.x - STEP_ROOM; on a plate at x = 6): it takes time, so it will have a number once it is reached. */
  readonly step: boolean;
  /** On a plate: its code. On a puzzle: its answer, on lines after the name, behind the word 'gives'. */
  readonly code?: CodeLines;
  /** Lines after the name and the answer. */
  readonly notes: readonly Note[];
  /** For a container: which wall its locks are on. For a plate: which wall it is on. */
  readonly wall?: Side;
  /** A tray drawn as one row, with what it holds told as a count: name, then a line with lock signs and the count. */
  readonly folded: boolean;
  /** For a place or container: how many things of each kind lie in it, at any depth, in the order of the kinds' table. Locks are not counted. */
  readonly holds?: readonly { readonly kind: Kind; readonly count: number }[];
  /** For a folded container: its locks, in order, drawn as signs. */
  readonly locks?: readonly NodeId[];
  /** Stands alone on the mat and carries its own caption, drawn on the line above it. */
  readonly caption?: Caption;
}

/** A field that carries one caption for all that stand together on the tables, in hand, or given by the teacher. A picture of 'no holder', not a node. */
export interface Field extends Rect {
  readonly caption: Caption;
  /** From top to bottom. */
  readonly ids: readonly NodeId[];
}

export interface MapLayout {
  /** Only what is drawn: the contents of a folded tray have no slot. Parents come before what is in them. */
  readonly slots: ReadonlyMap<NodeId, Slot>;
  /** On the mat. */
  readonly fields: readonly Field[];
  /** What lies in each tray that is drawn open, top to bottom: plates first, then things, then boxes. */
  readonly rows: ReadonlyMap<NodeId, readonly NodeId[]>;
  /** What is not drawn, and the folded tray that it is shown as part of. */
  readonly hidden: ReadonlyMap<NodeId, NodeId>;
}

/** How the map is looked at. Not part of the document. */
export interface MapView {
  /** Boxes two or more deep that were opened by hand; the others of that depth are folded. */
  readonly opened: ReadonlySet<NodeId>;
}

export const plainView: MapView = { opened: new Set() };

/** A line at right angles: its corners, first to last. */
export type Route = readonly { readonly x: number; readonly y: number }[];

/** Where a slot is on the mat. Throws for what is not drawn. */
export function absolute(layout: MapLayout, id: NodeId): Rect {
  const slot = layout.slots.get(id);
  if (!slot)
    throw new Error(`absolute: ${id} is not drawn; ask shownAs for the tray that it is folded into.`);
  let { x, y } = slot;
  for (let parent = slot.parent; parent !== undefined; ) {
    const tray = layout.slots.get(parent);
    if (!tray) break;
    x += tray.x;
    y += tray.y;
    parent = tray.parent;
  }
  return { x, y, width: slot.width, height: slot.height };
}

/** What a node is drawn as: itself, or the folded tray that it is in; undefined for what the layout does not know. */
export function shownAs(layout: MapLayout, id: NodeId): NodeId | undefined {
  return layout.slots.has(id) ? id : layout.hidden.get(id);
}
