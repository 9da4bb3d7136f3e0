/** What stands on every printed page: its foot, and what the sheets are called. */
import { lessonOf, sharesAnything } from '../game/defaults.ts';
import type { Game } from '../game/model.ts';
import type { SheetName } from '../sheets/sheet.ts';
import { list } from './numbers.ts';
import { lessonLine } from './screen.ts';

export const SHEET_TITLES: Readonly<Record<SheetName, string>> = {
  map: 'Facilitator map',
  cautions: 'Cautions',
  codes: 'Codes of all locks',
  contents: 'What lies in what',
  hidden: 'What is hidden where',
  order: 'Order of play',
};

export function pageOf(page: number, pages: number): string {
  return `page ${page} of ${pages}`;
}

/** Which codes are on the locks. The document has one set. */
export const CODE_SET = 'Codes as in the game';

export const WITHOUT_CODES = 'Without codes';

export function printedOn(date: string): string {
  return `Printed ${date}`;
}

/** '24 pupils in 6 teams, each with its own set · 40 minutes' */
export function lessonText(game: Game): string {
  return lessonLine(lessonOf(game), sharesAnything(game)).join('');
}

/** '7', '7 and 12' */
export function stepNumbers(numbers: readonly number[]): string {
  return `${numbers.length === 1 ? 'step' : 'steps'} ${list(numbers.map(String))}`;
}
