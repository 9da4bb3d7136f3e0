/** A page as an element of the document. */
import type { Drawing } from '../../src/sheets/drawing.ts';
import type { Paper } from '../../src/sheets/paper.ts';
import { svgOf } from '../../src/sheets/svg.ts';
import { naturalWidth } from './natural-width.ts';

/** As the markup of an SVG document. */
export function pageMarkup(drawing: Drawing, colour: boolean): string {
  return svgOf(drawing, { colour, naturalWidth });
}

export function elementOf(markup: string): Element {
  return document.importNode(new DOMParser().parseFromString(markup, 'image/svg+xml').documentElement, true);
}

/** Names the rules of the style sheets that have the size of this paper. */
export function paperName({ name, orientation }: Paper): string {
  return `${name.toLowerCase()}-${orientation}`;
}
