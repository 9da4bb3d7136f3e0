/** The map as a file: the same drawing as on paper, its pages below one another. */
import { fileStem } from '../../src/game/file-name.ts';
import type { Game } from '../../src/game/model.ts';
import type { Drawing } from '../../src/sheets/drawing.ts';
import type { SheetOptions } from '../../src/sheets/sheet.ts';
import { sizeOfPages, svgOfPages } from '../../src/sheets/svg.ts';
import { MAP_FILE, PICTURE_PROBLEMS, printedAt } from '../../src/words/print.ts';
import { download } from '../keep/download.ts';
import { embeddedFaces, FacesLost, loadFaces } from './faces.ts';
import { layOutPages } from './lay-out.ts';
import { naturalWidth } from './natural-width.ts';
import textRules from './sheet-text.css?raw';

export type PictureFormat = 'svg' | 'png';

/** Why there is no picture, as a sentence. */
export class PictureProblem extends Error {}

const DOTS_PER_INCH = 200;
/** Beyond these, browsers give an empty canvas or none. */
const MOST_DOTS_A_SIDE = 16_384;
const MOST_DOTS = 120_000_000;

async function svgFile(pages: readonly Drawing[], game: Game, colour: boolean): Promise<string> {
  await loadFaces(pages);
  const css = `${await embeddedFaces(pages)}${textRules}`;
  return svgOfPages(pages, { colour, css, naturalWidth, title: fileStem(game) });
}

async function pngFile(pages: readonly Drawing[], svg: string): Promise<Blob> {
  const size = sizeOfPages(pages);
  const width = Math.round((size.width / 72) * DOTS_PER_INCH);
  const height = Math.round((size.height / 72) * DOTS_PER_INCH);
  if (Math.max(width, height) > MOST_DOTS_A_SIDE || width * height > MOST_DOTS) {
    throw new PictureProblem(PICTURE_PROBLEMS.tooLarge(pages.length));
  }
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    canvas.getContext('2d')?.drawImage(image, 0, 0, width, height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    if (!blob) throw new PictureProblem(PICTURE_PROBLEMS.failed);
    return blob;
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Lays the map out alone, to the end or until it is called off. */
function mapPages(game: Game, options: SheetOptions, signal: AbortSignal): Promise<readonly Drawing[]> {
  return new Promise((resolve, reject) => {
    signal.throwIfAborted();
    const printing = { date: printedAt(Date.now()) };
    const stop = layOutPages({ game, options: { ...options, sheets: ['map'] }, printing }, (answer) => {
      if ('failed' in answer) reject(new PictureProblem(PICTURE_PROBLEMS.notLaidOut));
      else if (answer.final) resolve(answer.sheets.flatMap(({ pages }) => pages));
    });
    signal.addEventListener('abort', () => {
      stop();
      reject(signal.reason);
    });
  });
}

interface Saving {
  /** Those that are shown, where they are final; else the map is laid out first. */
  readonly pages?: readonly Drawing[] | undefined;
  /** Calls it off: nothing is saved, and nothing is said. */
  readonly signal?: AbortSignal;
}

/**
 * Saves the map as a file.
 * Gives the sentence that says why it could not be, or nothing.
 */
export async function saveMap(
  format: PictureFormat,
  game: Game,
  options: SheetOptions,
  { pages, signal = new AbortController().signal }: Saving = {},
): Promise<string | undefined> {
  try {
    const drawn = pages ?? (await mapPages(game, options, signal));
    const svg = await svgFile(drawn, game, options.colour);
    const content = format === 'svg' ? new Blob([svg], { type: 'image/svg+xml' }) : await pngFile(drawn, svg);
    if (signal.aborted) return undefined;
    download(`${fileStem(game)} ${MAP_FILE}.${format}`, content);
    return undefined;
  } catch (error) {
    if (signal.aborted) return undefined;
    if (error instanceof FacesLost) return PICTURE_PROBLEMS.noFaces;
    return error instanceof PictureProblem ? error.message : PICTURE_PROBLEMS.failed;
  }
}
