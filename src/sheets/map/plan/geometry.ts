/** Where the columns of a part stand, from side to side, for a size of type. */
import type { Side } from '../../../map/layout.ts';
import type { Metrics } from '../measured.ts';
import type { Area } from './areas.ts';

/** Of the width that is left beside the rescue lines; and in sizes of the type, so that short words do not stand in wide trays. */
const TRAY_SHARE = 0.31;
const TRAY_MOST = 22;
const BAR_SHARE = 0.225;
const BAR_MOST = 15;
/** For the sake of answers that should not be broken; the trays give way. */
const BAR_WIDEST = 0.36;
const NOTE_MOST = 19;
/** Between rescue lines and trays. */
const NOTE_GAP = 8;
/** A channel is no wider than this; the trays are given the rest. */
const CHANNEL_MOST = 100;

/** From wall to wall: of the trays, and of the bars. */
export interface Channel {
  readonly tray: number;
  readonly bar: number;
}

export interface Geometry {
  readonly metrics: Metrics;
  /** Left edges. */
  readonly trays: Readonly<Record<Side, number>>;
  readonly bar: number;
  readonly channels: Readonly<Record<Side, Channel>>;
  /** Left edge of the column of rescue lines; undefined when there are none. */
  readonly notes: number | undefined;
}

/** `leastBar`: wanted width of the bars. */
export function geometryOf(
  { x, width, notes }: Pick<Area, 'x' | 'width' | 'notes'>,
  size: number,
  leastBar: number,
): Geometry {
  const noteWidth = notes ? Math.min(notes.share * width, NOTE_MOST * size) : 0;
  const kept = notes ? noteWidth + NOTE_GAP : 0;
  const left = x + (notes?.side === 'left' ? kept : 0);
  const right = x + width - (notes?.side === 'right' ? kept : 0);
  const free = right - left;
  const usual = Math.min(BAR_SHARE * free, BAR_MOST * size);
  const barWidth = Math.max(usual, Math.min(leastBar, BAR_WIDEST * free));
  const narrow = Math.min(TRAY_SHARE * free - (barWidth - usual) / 2, TRAY_MOST * size);
  const trayWidth = Math.max(narrow, (free - barWidth) / 2 - CHANNEL_MOST);
  const bar = left + (free - barWidth) / 2;
  return {
    metrics: { size, trayWidth, barWidth, noteWidth },
    trays: { left, right: right - trayWidth },
    bar,
    channels: {
      left: { tray: left + trayWidth, bar },
      right: { tray: right - trayWidth, bar: bar + barWidth },
    },
    notes: notes && (notes.side === 'left' ? x : x + width - noteWidth),
  };
}
