/** Areas of the pages that parts are given: a page's, or that of one of its halves. */
import type { Side } from '../../../map/layout.ts';
import type { Frame } from '../plan.ts';

/** Between the halves of a book. */
const GUTTER = 18;

export interface Area {
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** At which edge rescue lines stand, and how much of the width they are given. */
  readonly notes: { readonly side: Side; readonly share: number } | undefined;
  /** A line whose ends are farther apart in height is told. */
  readonly reach: number;
  /** No more lines cross than this. */
  readonly crossings: number;
}

const PAGE = { reach: 0.24, crossings: 8, share: 0.16 };
const HALF = { reach: 0.4, crossings: 4, share: 0.16 };
/** A page that lies is wide: a finger goes farther, and rescue lines are longer, since there is less height for them. */
const LYING = { reach: 0.32, crossings: 8, share: 0.22 };

/** `half` is undefined for a whole page. */
export function areaOf(frame: Frame, page: number, half: Side | undefined, notes: boolean): Area {
  const { margin } = frame;
  const whole = frame.width - 2 * margin;
  const top = margin + (page === 0 ? frame.headFirst : frame.headOther);
  const bottom = frame.height - margin;
  const width = half ? (whole - GUTTER) / 2 : whole;
  const lying = frame.width > frame.height;
  const limits = half ? HALF : lying ? LYING : PAGE;
  return {
    x: half === 'right' ? margin + width + GUTTER : margin,
    width,
    top,
    bottom,
    notes: notes ? { side: half ?? 'right', share: limits.share } : undefined,
    reach: limits.reach * (bottom - top),
    crossings: limits.crossings,
  };
}
