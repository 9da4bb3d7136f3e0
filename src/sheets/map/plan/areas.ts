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
  /** At which edges rescue lines stand. */
  readonly noteSides: readonly Side[];
  /** A line whose ends are farther apart in height is told. */
  readonly reach: number;
  /** No more lines cross than this. */
  readonly crossings: number;
}

const PAGE = { reach: 0.24, crossings: 8 };
const HALF = { reach: 0.4, crossings: 4 };
/** A page that lies is wide: a finger goes farther. */
const LYING = { reach: 0.32, crossings: 8 };

/** `half` is undefined for a whole page. */
export function areaOf(frame: Frame, page: number, half: Side | undefined, notes: boolean): Area {
  const { margin } = frame;
  const whole = frame.width - 2 * margin;
  const top = margin + (page === 0 ? frame.headFirst : frame.headOther);
  const bottom = frame.height - margin;
  const width = half ? (whole - GUTTER) / 2 : whole;
  const lying = frame.width > frame.height;
  const sides: readonly Side[] = half ? [half] : lying ? ['left', 'right'] : ['right'];
  const limits = half ? HALF : lying ? LYING : PAGE;
  return {
    x: half === 'right' ? margin + width + GUTTER : margin,
    width,
    top,
    bottom,
    noteSides: notes ? sides : [],
    reach: limits.reach * (bottom - top),
    crossings: limits.crossings,
  };
}
