/** What stands on the pages of a PDF and where, in points from the upper left corner, read by a PDF library. */
import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfText {
  /** As it would be copied, white space left out. */
  readonly text: string;
  /** Where its base line begins. */
  readonly x: number;
  readonly y: number;
}

export interface PdfPath {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** #rrggbb: of its stroke where it is stroked, else of its filling. */
  readonly colour: string;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  /** In the order in which they are painted. */
  readonly texts: readonly PdfText[];
  readonly paths: readonly PdfPath[];
  /** Typefaces that the file does not hold. */
  readonly missing: readonly string[];
}

type Matrix = readonly [number, number, number, number, number, number];

/** First `inner`, then `outer`. */
function then(inner: Matrix, outer: Matrix): Matrix {
  const [a, b, c, d, e, f] = inner;
  const [g, h, i, j, k, l] = outer;
  return [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + l];
}

function matrixOf(values: ArrayLike<number>): Matrix {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = Array.from(values);
  return [a, b, c, d, e, f];
}

interface State {
  readonly matrix: Matrix;
  readonly stroke: string;
  readonly fill: string;
  readonly lineWidth: number;
}

interface Glyph {
  readonly unicode: string;
}

const STROKED = new Set([OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.eoFillStroke]);
const FILLED = new Set([OPS.fill, OPS.eoFill]);

/** Box of a path under a matrix, with half of its line's thickness. */
function boxOf(
  [left, top, right, bottom]: readonly number[],
  { matrix, lineWidth }: State,
  stroked: boolean,
) {
  const [a, b, c, d, e, f] = matrix;
  const half = stroked ? (lineWidth / 2) * Math.hypot(a, b) : 0;
  const corners = [
    [left ?? 0, top ?? 0],
    [right ?? 0, top ?? 0],
    [left ?? 0, bottom ?? 0],
    [right ?? 0, bottom ?? 0],
  ].map(([x = 0, y = 0]) => ({ x: a * x + c * y + e, y: b * x + d * y + f }));
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return {
    left: Math.min(...xs) - half,
    right: Math.max(...xs) + half,
    low: Math.min(...ys) - half,
    high: Math.max(...ys) + half,
  };
}

async function readPage(page: PDFPageProxy): Promise<PdfPage> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const height = top - bottom;
  const { fnArray, argsArray } = await page.getOperatorList();
  const texts: PdfText[] = [];
  const paths: PdfPath[] = [];
  const fonts = new Set<string>();
  const saved: State[] = [];
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], stroke: '#000000', fill: '#000000', lineWidth: 1 };
  let run: { text: string; at: Matrix } | undefined;
  for (const [i, operation] of fnArray.entries()) {
    const args = argsArray[i];
    switch (operation) {
      case OPS.save:
        saved.push(state);
        break;
      case OPS.restore:
        state = saved.pop() ?? state;
        break;
      case OPS.transform:
        state = { ...state, matrix: then(matrixOf(args), state.matrix) };
        break;
      case OPS.setLineWidth:
        state = { ...state, lineWidth: args[0] };
        break;
      case OPS.setGState:
        for (const [key, value] of args[0]) if (key === 'LW') state = { ...state, lineWidth: value };
        break;
      case OPS.setStrokeRGBColor:
        state = { ...state, stroke: args[0] };
        break;
      case OPS.setFillRGBColor:
        state = { ...state, fill: args[0] };
        break;
      case OPS.constructPath: {
        const [paint, , extent] = args;
        const stroked = STROKED.has(paint);
        if (!extent || !(stroked || FILLED.has(paint))) break;
        const box = boxOf(Array.from<number>(extent), state, stroked);
        paths.push({
          left: box.left - left,
          right: box.right - left,
          top: height - (box.high - bottom),
          bottom: height - (box.low - bottom),
          colour: stroked ? state.stroke : state.fill,
        });
        break;
      }
      case OPS.setFont:
        fonts.add(args[0]);
        break;
      case OPS.setTextMatrix:
        run ??= { text: '', at: matrixOf(args[0]) };
        break;
      case OPS.showText:
        for (const glyph of args[0] as (Glyph | number)[]) {
          if (run && typeof glyph === 'object') run.text += glyph.unicode;
        }
        break;
      case OPS.endText:
        if (run) {
          const [, , , , x, y] = then(run.at, state.matrix);
          texts.push({ text: run.text.replace(/\s/gu, ''), x: x - left, y: height - (y - bottom) });
        }
        run = undefined;
        break;
    }
  }
  const missing = [...fonts].filter((name) => {
    const font = page.commonObjs.get(name);
    return !font.isType3Font && font.missingFile !== false;
  });
  return { width: right - left, height, texts, paths, missing };
}

export async function readPdf(file: Uint8Array): Promise<readonly PdfPage[]> {
  const task = getDocument({ data: Uint8Array.from(file), verbosity: 0 });
  try {
    const document = await task.promise;
    const pages: PdfPage[] = [];
    for (let number = 1; number <= document.numPages; number++) {
      pages.push(await readPage(await document.getPage(number)));
    }
    return pages;
  } finally {
    await task.destroy();
  }
}
