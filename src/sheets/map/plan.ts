/** Where everything is on the pages of the facilitator map, in points from the upper left corner of the paper. */
import type { LinkId, NodeId } from '../../game/model.ts';
import type { Side } from '../../map/layout.ts';
import type { Spot } from '../drawing.ts';
import type { RescueNote, Tellings, Tray } from './content.ts';
import type { Metrics } from './measured.ts';

export interface PlacedBar {
  readonly id: NodeId;
  readonly x: number;
  readonly y: number;
}

export interface PlacedTray {
  readonly tray: Tray;
  /** Of the spine that it stands on. Its locks are on the other wall, towards the spine. */
  readonly side: Side;
  readonly x: number;
  readonly y: number;
}

export interface PlacedNote {
  readonly note: RescueNote;
  readonly x: number;
  readonly y: number;
}

/** At right angles. It begins at the outer edge of its row (`from`), or of its bar, and ends where its arrow points. */
export interface PlannedLine {
  /** The same for lines that share a track: all that one bar takes from one side, or gives to it. They lie on each other where they run together, and nowhere else do two lines. */
  readonly net: string;
  readonly links: readonly LinkId[];
  readonly from: NodeId;
  readonly to: NodeId;
  /** In the channel only: from wall to wall. What runs inside a tray, from the row's text to the wall, is drawn with the tray. */
  readonly points: readonly Spot[];
}

/** One spine with its two sides: a page, or half of one. */
export interface PlannedPart {
  readonly metrics: Metrics;
  readonly bars: readonly PlacedBar[];
  readonly trays: readonly PlacedTray[];
  readonly lines: readonly PlannedLine[];
  readonly notes: readonly PlacedNote[];
  /** Of the whole part. */
  readonly x: number;
  readonly width: number;
}

export interface PlannedPage {
  /** One, or two side by side. */
  readonly parts: readonly PlannedPart[];
}

export interface MapPlan {
  readonly pages: readonly PlannedPage[];
  readonly told: Tellings;
  /** Rescue lines that found no room beside their steps; the list of the order of play has them. */
  readonly unplaced: readonly RescueNote[];
}

/** What a plan is made for. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Free at each edge. */
  readonly margin: number;
  /** Kept at the top of the first page, and of each other, inside the margin: title, verdict, legend. */
  readonly headFirst: number;
  readonly headOther: number;
}
