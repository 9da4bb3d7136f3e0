/** Everything that is printed at once: the chosen sheets in their order, pages numbered right over all. */
import type { Assessment } from '../findings/assess.ts';
import { CODE_SET, WITHOUT_CODES } from '../words/sheets.ts';
import { withFoot } from './foot.ts';
import { type ListName, listOf } from './lists/index.ts';
import { titleOf } from './lists/page.ts';
import { paperOf } from './paper.ts';
import { type Printing, SHEET_NAMES, type Sheet, type SheetName, type SheetOptions } from './sheet.ts';

/** The list of codes is left out of a run without codes. */
export function sheetsOf({ sheets, codes }: Pick<SheetOptions, 'sheets' | 'codes'>): SheetName[] {
  return SHEET_NAMES.filter((name) => sheets.includes(name) && (codes || name !== 'codes'));
}

/** Each yield is a better run than the one before; the last is returned as well. Whoever stops iterating has cancelled it. */
export function* printRun(
  assessment: Assessment,
  options: SheetOptions,
  printing: Printing,
): Generator<readonly Sheet[], readonly Sheet[]> {
  const paper = paperOf(options.paper, 'portrait');
  const frame = { assessment, options, paper };
  const lists = sheetsOf(options)
    .filter((name): name is ListName => name !== 'map')
    .map((name): Sheet => ({ name, pages: listOf(name, frame) }));
  const pages = lists.reduce((sum, sheet) => sum + sheet.pages.length, 0);
  const text = {
    title: titleOf(assessment),
    codes: options.codes ? CODE_SET : WITHOUT_CODES,
    date: printing.date,
  };
  let page = 0;
  const run = lists.map(({ name, pages: drawings }) => ({
    name,
    pages: drawings.map((drawing) => {
      page += 1;
      return withFoot(drawing, paper, text, page, pages);
    }),
  }));
  yield run;
  return run;
}
