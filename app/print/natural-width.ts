/** How wide a text is in this browser: for signs outside the bundled typefaces, whose widths nobody knows beforehand. */
import type { TextMark } from '../../src/sheets/drawing.ts';
import { fontOf } from './faces.ts';

let pen: CanvasRenderingContext2D | null | undefined;

/** In points, letter-spacing included. Where there is no canvas, what the core measured. */
export function naturalWidth(mark: TextMark): number {
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return mark.width;
  pen.font = fontOf(mark);
  pen.fontKerning = 'none';
  pen.letterSpacing = `${mark.spacing ?? 0}px`;
  return pen.measureText(mark.text).width;
}
