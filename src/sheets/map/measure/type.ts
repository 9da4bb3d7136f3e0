/** Type and distances of the map, in points, for a size of the type. */
import type { TextStyle } from '../../../type/text.ts';

/** Nothing on the page is smaller. */
export const LEAST = 7.5;

export interface Type {
  readonly size: number;
  /** From line to line. */
  readonly line: number;
  /** Places, boxes, puzzles. */
  readonly name: TextStyle;
  readonly thing: TextStyle;
  /** Minutes, remarks. */
  readonly note: TextStyle;
  /** What is told and not drawn. */
  readonly told: TextStyle;
  readonly code: TextStyle & { readonly spacing: number };
  readonly step: TextStyle;
  /** Side of a sign. */
  readonly sign: number;
  /** Across a step's circle. */
  readonly circle: number;
  /** Between what stands beside each other on a line. */
  readonly gap: number;
  /** From the middle of a line of text down to its base line: half the height of a capital. */
  readonly drop: number;
}

const CAPITAL = 0.67;

export function typeOf(size: number): Type {
  const small = Math.max(LEAST, 0.88 * size);
  return {
    size,
    line: 1.26 * size,
    name: { size, weight: 'strong', family: 'words' },
    thing: { size, weight: 'regular', family: 'words' },
    note: { size: small, weight: 'regular', family: 'words' },
    told: { size: small, weight: 'regular', family: 'words', italic: true },
    code: { size, weight: 'strong', family: 'codes', spacing: 0.12 * size },
    step: { size: Math.max(LEAST, 0.86 * size), weight: 'strong', family: 'words' },
    sign: 1.3 * size,
    circle: Math.max(1.5 * size, 12.5),
    gap: 0.35 * size,
    drop: (CAPITAL / 2) * size,
  };
}

/** From the middle of a line down to the base line of text of this size. */
export const dropOf = (style: TextStyle) => (CAPITAL / 2) * style.size;
