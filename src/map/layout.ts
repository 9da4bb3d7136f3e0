/**
 * Where everything is on the map, from the document alone: trays as large as what they hold, rows inside, plates on the wall.
 * All sizes in pixels at 100 %.
 */
import type { NodeId } from '../game/model.ts';

export type Side = 'left' | 'right';

export interface Slot {
  /** Top left corner on the mat. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The tray that it is drawn in, or for a plate the container whose wall it is on. */
  readonly parent: NodeId | undefined;
  /** 0 on the mat. */
  readonly depth: number;
  /** Its words, broken to fit; never cut. */
  readonly lines: readonly string[];
  /** For a container: which wall its locks are on. For a plate: which wall it is on. */
  readonly wall?: Side;
  /** A tray drawn as one row, with what it holds told as a count. */
  readonly folded?: boolean;
}

/** A field that carries one caption for all that stand together on the tables, in hand, or given by the teacher. A picture of 'no holder', not a node. */
export interface Field {
  readonly caption: 'tables' | 'hand' | 'given';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly ids: readonly NodeId[];
}

export interface MapLayout {
  /** Only what is drawn: the contents of a folded tray have no slot. */
  readonly slots: ReadonlyMap<NodeId, Slot>;
  readonly fields: readonly Field[];
}

/** A line at right angles: its corners, first to last. */
export type Route = readonly { readonly x: number; readonly y: number }[];
