/**
 * A drawing as SVG, the one form from which preview, print and files are made. True to size: the view box is in points, width and
 * height in millimetres. Everything is told by attributes, which a strict content security policy lets pass; what no attribute
 * can say of text (kerning, features of the typeface) comes as a style sheet, from the page or with the file.
 */
import { isMeasured } from '../type/text.ts';
import { type Colours, coloursOf } from './colour.ts';
import type { AreaMark, Drawing, LineMark, Mark, SignMark, Spot, TextMark } from './drawing.ts';
import { pathOf, pointsOf, short } from './path.ts';
import { SIGN_PATHS, SIGN_STROKE } from './signs.ts';

export interface SvgOptions {
  readonly colour: boolean;
  /** Rules of a style sheet, for a file that stands alone. */
  readonly css?: string;
  /** What a file that stands alone is called. */
  readonly title?: string;
  /**
   * How wide a text with signs outside the bundled typefaces is where it is drawn, in points. Its letters are squeezed when they
   * need more than was measured, and not spread when they need less. Without it they are fitted to what was measured.
   */
  readonly naturalWidth?: (text: TextMark) => number;
}

export const FAMILIES = { words: 'Atkinson Hyperlegible Next', codes: 'Atkinson Hyperlegible Mono' } as const;
const FALLBACK = { words: 'sans-serif', codes: 'monospace' } as const;
/** Weight 680 is that of the table of widths. */
export const WEIGHTS = { regular: 400, strong: 680 } as const;

const ANCHORS = { start: 'start', middle: 'middle', end: 'end' } as const;
/** Where a text is written from right to left, it begins at its right. */
const ANCHORS_TURNED = { start: 'end', middle: 'middle', end: 'start' } as const;

const FIRST_LETTER = /\p{L}/u;
const RIGHT_TO_LEFT =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}]/u;

/** Not in XML: controls but for white space, halves of surrogate pairs, two that are no characters. */
const NOT_XML = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

function escaped(text: string): string {
  return text
    .replace(NOT_XML, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

type Attributes = Readonly<Record<string, string | number | undefined>>;

function attributes(values: Attributes): string {
  let text = '';
  for (const [name, value] of Object.entries(values)) {
    if (value !== undefined)
      text += ` ${name}="${typeof value === 'number' ? short(value) : escaped(value)}"`;
  }
  return text;
}

const path = (values: Attributes) => `<path${attributes(values)}/>`;

function textOf(mark: TextMark, colours: Colours, naturalWidth: SvgOptions['naturalWidth']): string {
  const turned = mark.role === 'name' && RIGHT_TO_LEFT.test(FIRST_LETTER.exec(mark.text)?.[0] ?? '');
  const anchor = (turned ? ANCHORS_TURNED : ANCHORS)[mark.align];
  const length = isMeasured(mark.text) ? undefined : Math.min(mark.width, naturalWidth?.(mark) ?? mark.width);
  return `<text${attributes({
    x: mark.x,
    y: mark.y,
    fill: colours[mark.ink],
    'font-size': mark.size,
    'font-family': mark.family === 'codes' ? `${FAMILIES.codes}, ${FALLBACK.codes}` : undefined,
    'font-weight': mark.weight === 'strong' ? WEIGHTS.strong : undefined,
    'font-style': mark.italic ? 'italic' : undefined,
    'letter-spacing': mark.spacing || undefined,
    'text-anchor': anchor === 'start' ? undefined : anchor,
    direction: turned ? 'rtl' : undefined,
    textLength: length || undefined,
    lengthAdjust: length ? 'spacingAndGlyphs' : undefined,
  })}>${escaped(mark.text)}</text>`;
}

/** How far the strokes of an arrowhead reach back, and to each side, for a line of this thickness. */
const headLength = (width: number) => 2.2 + 2.4 * width;
const HEAD_SPREAD = 0.6;

function arrowhead({ points, width }: LineMark): string {
  const tip = points.at(-1);
  const before = points.findLast((spot) => spot.x !== tip?.x || spot.y !== tip.y);
  if (!tip || !before) return '';
  const far = Math.hypot(tip.x - before.x, tip.y - before.y);
  const back = headLength(width);
  const dx = ((tip.x - before.x) / far) * back;
  const dy = ((tip.y - before.y) / far) * back;
  return pointsOf([
    { x: tip.x - dx - dy * HEAD_SPREAD, y: tip.y - dy + dx * HEAD_SPREAD },
    tip,
    { x: tip.x - dx + dy * HEAD_SPREAD, y: tip.y - dy - dx * HEAD_SPREAD },
  ]);
}

/** The same without a stretch at each end, where it meets what it comes from and goes to. */
function withoutEnds(points: readonly Spot[], stretch: number): readonly Spot[] {
  const moved = (end: Spot | undefined, next: Spot | undefined) => {
    if (!end || !next) return [];
    const length = Math.hypot(next.x - end.x, next.y - end.y);
    const part = length === 0 ? 0 : Math.min(stretch / length, 0.5);
    return [{ x: end.x + (next.x - end.x) * part, y: end.y + (next.y - end.y) * part }];
  };
  return [...moved(points[0], points[1]), ...points.slice(1, -1), ...moved(points.at(-1), points.at(-2))];
}

/** Of the casing, so that it does not take a bite out of the wall that its line begins at. */
const CASING_STARTS = 1.5;

function lineOf(mark: LineMark, colours: Colours): string {
  const rounded = mark.rounded ?? 0;
  const d = pathOf(mark.points, rounded, false);
  const stroke = colours[mark.ink];
  const width = mark.width;
  const casing = mark.casing
    ? path({
        d: pathOf(withoutEnds(mark.points, CASING_STARTS), rounded, false),
        fill: 'none',
        stroke: colours.paper,
        'stroke-width': width + 2 * mark.casing,
      })
    : '';
  const line = path({
    d,
    fill: 'none',
    stroke,
    'stroke-width': width,
    'stroke-dasharray': mark.dash?.map(short).join(' '),
  });
  const head = mark.arrow ? arrowhead(mark) : '';
  return (
    casing +
    line +
    (head && path({ d: head, fill: 'none', stroke, 'stroke-width': width, 'stroke-linejoin': 'round' }))
  );
}

function areaOf(mark: AreaMark, colours: Colours): string {
  return path({
    d: pathOf(mark.corners, mark.rounded ?? 0, true),
    fill: mark.fill ? colours[mark.fill] : 'none',
    stroke: mark.stroke && colours[mark.stroke],
    'stroke-width': mark.stroke && (mark.width ?? 1),
    'stroke-dasharray': mark.dash?.map(short).join(' '),
  });
}

const SIGN_SQUARE = 18;

function signOf(mark: SignMark, colours: Colours): string {
  return path({
    d: SIGN_PATHS[mark.sign],
    transform: `translate(${short(mark.x)} ${short(mark.y)}) scale(${short(mark.size / SIGN_SQUARE, 4)})`,
    fill: 'none',
    stroke: colours[mark.ink],
    'stroke-width': SIGN_STROKE,
    'stroke-linecap': 'round',
    'stroke-linejoin': 'round',
  });
}

function markOf(mark: Mark, colours: Colours, { naturalWidth }: SvgOptions): string {
  switch (mark.mark) {
    case 'text':
      return textOf(mark, colours, naturalWidth);
    case 'line':
      return lineOf(mark, colours);
    case 'area':
      return areaOf(mark, colours);
    case 'sign':
      return signOf(mark, colours);
  }
}

const MILLIMETRES_PER_POINT = 25.4 / 72;
const inMillimetres = (points: number) => `${short(points * MILLIMETRES_PER_POINT, 3)}mm`;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Of the drawing, by which style sheets know it. */
const SHEET_CLASS = 'sheet';

/** Direction and white space are said here, so that they hold inside a page too, whatever surrounds it. */
function documentOf({ width, height }: Size, content: string, { title, css }: SvgOptions): string {
  const root = attributes({
    class: SHEET_CLASS,
    xmlns: 'http://www.w3.org/2000/svg',
    width: inMillimetres(width),
    height: inMillimetres(height),
    viewBox: `0 0 ${short(width, 4)} ${short(height, 4)}`,
    'font-family': `${FAMILIES.words}, ${FALLBACK.words}`,
    'font-weight': WEIGHTS.regular,
    'text-rendering': 'geometricPrecision',
    direction: 'ltr',
    'xml:space': 'preserve',
  });
  const titleElement = title === undefined ? '' : `<title>${escaped(title)}</title>`;
  const styleElement = css === undefined ? '' : `<style>${escaped(css)}</style>`;
  return `<svg${root}>${titleElement}${styleElement}${content}</svg>`;
}

function pageOf({ width, height, marks }: Drawing, options: SvgOptions): string {
  const colours = coloursOf(options.colour);
  const paper = `<rect${attributes({ width, height, fill: colours.paper })}/>`;
  return paper + marks.map((mark) => markOf(mark, colours, options)).join('\n');
}

/** As a whole SVG document. */
export function svgOf(drawing: Drawing, options: SvgOptions): string {
  return documentOf(drawing, pageOf(drawing, options), options);
}

/** Between pages that stand below one another in one picture. */
const GAP = 12;

/** Of the picture that `svgOfPages` makes, in points. */
export function sizeOfPages(pages: readonly Drawing[]): Size {
  return {
    width: Math.max(0, ...pages.map(({ width }) => width)),
    height: pages.reduce((sum, { height }) => sum + height + GAP, -GAP),
  };
}

/** Pages below one another in one SVG document. There is at least one. */
export function svgOfPages(pages: readonly Drawing[], options: SvgOptions): string {
  let top = 0;
  const content = pages.map((drawing) => {
    const placed = `<g transform="translate(0 ${short(top, 4)})">${pageOf(drawing, options)}</g>`;
    top += drawing.height + GAP;
    return placed;
  });
  return documentOf(sizeOfPages(pages), content.join('\n'), options);
}
