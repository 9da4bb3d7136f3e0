/** What the facilitator map says, before anything has a place: bars of the spine, trays as rows, links, rescue lines, and what of it can be measured. */
import type { LinkId, NodeId } from '../../game/model.ts';
import type { Sides } from '../../map/arrange.ts';
import type { Caption } from '../../map/layout.ts';
import type { MeasuredBar, MeasuredTray, Metrics } from './measured.ts';

/** A line of a tray. `depth`: 0 in what stands by itself, one more in each box. */
export type TrayRow =
  | Opening
  | { readonly row: 'lock'; readonly id: NodeId; readonly depth: number }
  | { readonly row: 'thing'; readonly id: NodeId; readonly depth: number }
  /** Lower wall; without an id under what shares a caption. `continues`: the rest is in a later part of the tray. */
  | {
      readonly row: 'foot';
      readonly id: NodeId | undefined;
      readonly depth: number;
      readonly continues: boolean;
    };

/** Upper wall with a name. `continued`: it began in a part of the tray before this one. */
export type Opening =
  /** Of a place or box. */
  | { readonly row: 'head'; readonly id: NodeId; readonly depth: number; readonly continued: boolean }
  /** Of what shares a caption: it is no node, and no id is taken for it. */
  | {
      readonly row: 'caption';
      readonly caption: Caption;
      readonly depth: number;
      readonly continued: boolean;
    };

export function isOpening(row: TrayRow): row is Opening {
  return row.row === 'head' || row.row === 'caption';
}

/** A row that a node has to itself: no caption, no lower wall, and nothing that is continued from an earlier part. */
export function isOwnRow(row: TrayRow): row is Exclude<TrayRow, { row: 'caption' | 'foot' }> {
  return row.row === 'lock' || row.row === 'thing' || (row.row === 'head' && !row.continued);
}

/** What stands by itself beside the spine: a place, a box on the tables, or what shares a caption; all of it, or a part of one too long for a page. */
export interface Tray {
  /** Unique on all pages. */
  readonly key: string;
  readonly rows: readonly TrayRow[];
  /** Where it was cut from; undefined for all of a tray. */
  readonly cutFrom?: CutFrom;
}

export interface CutFrom {
  /** Key of the whole tray. */
  readonly whole: string;
  /** How many rows of the whole come before this part. */
  readonly before: number;
}

export interface PageLink {
  readonly id: LinkId;
  readonly from: NodeId;
  readonly to: NodeId;
}

/** Where the other end of a told link is, when it is not in the same picture. */
export type Elsewhere = { readonly half: 'left' | 'right' } | { readonly page: number };

/** A link that is not drawn, as one of its ends tells it. */
export interface Told {
  readonly link: LinkId;
  readonly other: NodeId;
  /** Which end of the link the other is. `from`: it is needed here. `to`: this is needed there. */
  readonly otherEnd: 'from' | 'to';
  readonly elsewhere?: Elsewhere;
}

/** By the node at which it is told. */
export type Tellings = ReadonlyMap<NodeId, readonly Told[]>;

/** A rescue line, for one step or for several that share it. */
export interface RescueNote {
  readonly key: string;
  /** In the order of play, one after the other; it wants to stand beside the first of them. */
  readonly steps: readonly NodeId[];
}

export interface MapContent {
  /** Puzzles in the order of play; those that are never reached come last. */
  readonly bars: readonly NodeId[];
  readonly trays: readonly Tray[];
  readonly links: readonly PageLink[];
  /** Where the map on the screen has what stands by itself. The page has it on the same side, where there is room. */
  readonly sides: Sides;
  /** Number in the order of play, from 1. */
  readonly numbers: ReadonlyMap<NodeId, number>;
  /** In the order of play; none when the options leave them out. */
  readonly notes: readonly RescueNote[];
  readonly measureBar: (id: NodeId, metrics: Metrics, told: Tellings) => MeasuredBar;
  /** The same on both sides of the spine. */
  readonly measureTray: (tray: Tray, metrics: Metrics, told: Tellings) => MeasuredTray;
  /** Bar width at a type size, in which the answer of the puzzle is not broken; 0 when it has none, or one so long that it may be. */
  readonly leastBarWidth: (id: NodeId, size: number) => number;
  readonly measureNote: (note: RescueNote, metrics: Metrics) => number;
  /** Two trays of one that is too long: all rows before the given one, and the rest, each with the heads and feet of what is open there. */
  readonly cut: (tray: Tray, before: number) => readonly [Tray, Tray];
}
