/** Sizes of type, in points. */

/** The wanted first. */
export const SIZES = [11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5] as const;
/** Enough to choose from for a first picture. */
export const FEW_SIZES = [10, 9, 8, 7.5] as const;
export const SMALLEST = 7.5;
/** Reads well. */
export const MIDDLE = 9;
/** On several pages no smaller than this, if that is possible. */
export const SEVERAL = 8.5;
