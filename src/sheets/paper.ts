/** Paper, in points of 1/72 inch. A4: ISO 216. Letter: ANSI/ASME Y14.1, size A. */

const MILLIMETRE = 72 / 25.4;
export const millimetres = (length: number) => length * MILLIMETRE;

export type PaperName = 'A4' | 'Letter';
export type Orientation = 'portrait' | 'landscape';

const UPRIGHT: Readonly<Record<PaperName, { readonly width: number; readonly height: number }>> = {
  A4: { width: millimetres(210), height: millimetres(297) },
  Letter: { width: 8.5 * 72, height: 11 * 72 },
};

export interface Paper {
  readonly name: PaperName;
  readonly orientation: Orientation;
  readonly width: number;
  readonly height: number;
  /** Left free at each edge, where many printers cannot print. */
  readonly margin: number;
}

export function paperOf(name: PaperName, orientation: Orientation): Paper {
  const { width, height } = UPRIGHT[name];
  const lying = orientation === 'landscape';
  return {
    name,
    orientation,
    width: lying ? height : width,
    height: lying ? width : height,
    margin: millimetres(10),
  };
}
