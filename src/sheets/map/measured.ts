/** How large things are on the facilitator map: what is given, and what comes of it. */
import type { NodeId } from '../../game/model.ts';

/** Sizes in points. */
export interface Metrics {
  /** Type size. */
  readonly size: number;
  readonly trayWidth: number;
  readonly barWidth: number;
  readonly noteWidth: number;
}

/** Heights in points, from the upper edge of the whole. */
export interface Measured {
  readonly height: number;
  /** Where a line leaves or arrives, for each node that is drawn in it: the middle of the first line of its row. */
  readonly ends: ReadonlyMap<NodeId, number>;
}

export interface MeasuredTray extends Measured {
  /** Where each row begins, and at the end the lower edge of the last: one more than there are rows. */
  readonly tops: readonly number[];
}

/** In points: lines that meet one edge of a bar are no nearer to each other, and every bar is high enough for two. */
export const ENDS_APART = 10;

export interface MeasuredBar extends Measured {
  /** Heights at which lines may arrive and leave on either side, top to bottom; and anywhere between the first and the last. */
  readonly entries: readonly number[];
}
