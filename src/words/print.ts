/** What stands on the print preview, and what is said when something cannot be printed or saved as a picture. */
import type { Orientation, PaperName } from '../sheets/paper.ts';
import { count } from './numbers.ts';

export const PRINT = {
  title: 'Print',
  print: 'Print',
  /** On the button, once it has been pressed before all is laid out. */
  printsLater: 'Prints when laid out',
  close: 'Close',
  pages: 'Pages',
  options: 'What is printed',
};

export const PRINT_OPTIONS = {
  paper: 'Paper',
  /** Lists are always portrait. */
  map: 'The map',
  sheets: 'Sheets',
  onThem: 'On the sheets',
  codes: 'Codes and answers',
  times: 'Minutes',
  rescue: 'If stuck',
  ticks: 'Ticks',
  ink: 'Ink',
  colour: 'In colour',
  grey: 'In grey',
  withoutCodes: 'A page without codes may lie about. The list of codes is left out.',
};

export const PAPER_NAMES: Readonly<Record<PaperName, string>> = { A4: 'A4', Letter: 'US Letter' };

export const ORIENTATION_NAMES: Readonly<Record<Orientation, string>> = {
  portrait: 'Portrait',
  landscape: 'Landscape',
};

export function pageName(sheet: string, page: number, pages: number): string {
  return pages === 1 ? sheet : `${sheet}, page ${page} of ${pages}`;
}

export const PRINT_STATUS = {
  starting: 'The pages are being laid out.',
  wanted: 'The pages are being laid out, then printed. Press again and they are not.',
  noSheet: 'No sheet is chosen.',
  failed:
    'The pages could not be laid out. Try fewer sheets, or another paper. The game itself is as it was.',
  improving: (pages: number) => `${count(pages, 'page')}. The map is still being improved.`,
  ready: (pages: number) => `${count(pages, 'page')}.`,
};

export const PICTURE_PROBLEMS = {
  tooLarge: (pages: number) =>
    `The map has ${count(pages, 'page')}, too many for one PNG. SVG holds them all.`,
  failed: 'This browser could not make the picture. SVG may work, or print to a PDF.',
  noFaces:
    'The typefaces for the picture could not be loaded: the connection is gone. The game is safe. Try again when the connection is back.',
  notLaidOut: 'The map could not be laid out, so there is no picture of it.',
};

/** Added to the title of the game: "The tea tin map.svg". */
export const MAP_FILE = 'map';

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
const time = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** "25 November 2026, 13:40", from milliseconds since 1970. */
export function printedAt(when: number): string {
  return `${day.format(when)}, ${time.format(when)}`;
}
