/** Everything that is printed at once: the chosen sheets in their order, pages numbered right over all. */
import type { Assessment } from '../findings/assess.ts';
import { titleOf } from '../words/keep.ts';
import { CODE_SET, WITHOUT_CODES } from '../words/sheets.ts';
import { withFoot } from './foot.ts';
import { type ListName, listOf } from './lists/index.ts';
import { contentOf } from './map/content-of.ts';
import { drawMap, frameOf } from './map/draw-map.ts';
import { planMap } from './map/plan/plan-map.ts';
import type { MapPlan } from './map/plan.ts';
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
  const names = sheetsOf(options);
  const upright = paperOf(options.paper, 'portrait');
  const frame = { assessment, options, paper: upright };
  const lists = names
    .filter((name): name is ListName => name !== 'map')
    .map((name): Sheet => ({ name, pages: listOf(name, frame) }));
  const text = {
    title: titleOf(assessment.game.head.title),
    codes: options.codes ? CODE_SET : WITHOUT_CODES,
    date: printing.date,
  };
  const numbered = (sheets: readonly Sheet[]): Sheet[] => {
    const pages = sheets.reduce((sum, sheet) => sum + sheet.pages.length, 0);
    let page = 0;
    return sheets.map(({ name, pages: drawings }) => {
      const paper = name === 'map' ? paperOf(options.paper, options.orientation) : upright;
      return {
        name,
        pages: drawings.map((drawing) => {
          page += 1;
          return withFoot(drawing, paper, text, page, pages);
        }),
      };
    });
  };
  if (!names.includes('map')) {
    const run = numbered(lists);
    yield run;
    return run;
  }
  const paper = paperOf(options.paper, options.orientation);
  const content = contentOf(assessment, options);
  let plan: MapPlan | undefined;
  let run: readonly Sheet[] = [];
  const planning = planMap(content, frameOf(content, options, paper));
  for (let step = planning.next(); ; step = planning.next()) {
    if (step.value !== plan) {
      plan = step.value;
      run = numbered([{ name: 'map', pages: drawMap(content, plan, options, paper) }, ...lists]);
    }
    if (step.done) return run;
    yield run;
  }
}
