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
import { type LayoutOptions, type Printing, paperOfSheet, type Sheet, sheetsOf } from './sheet.ts';

/** Each yield is a better run than the one before; the last is returned as well. Whoever stops iterating has cancelled it. */
export function* printRun(
  assessment: Assessment,
  options: LayoutOptions,
  printing: Printing,
): Generator<readonly Sheet[], readonly Sheet[]> {
  const names = sheetsOf(options);
  const lists = names
    .filter((name): name is ListName => name !== 'map')
    .map((name): Sheet => {
      const paper = paperOfSheet(name, options);
      return { name, paper, pages: listOf(name, { assessment, options, paper }) };
    });
  const text = {
    title: titleOf(assessment.game.head.title),
    codes: options.codes ? CODE_SET : WITHOUT_CODES,
    date: printing.date,
  };
  const numbered = (sheets: readonly Sheet[]): Sheet[] => {
    const pages = sheets.reduce((sum, sheet) => sum + sheet.pages.length, 0);
    let page = 0;
    return sheets.map(({ name, paper, pages: drawings }) => ({
      name,
      paper,
      pages: drawings.map((drawing) => {
        page += 1;
        return withFoot(drawing, paper, text, page, pages);
      }),
    }));
  };
  if (!names.includes('map')) {
    const run = numbered(lists);
    yield run;
    return run;
  }
  const paper = paperOfSheet('map', options);
  const content = contentOf(assessment, options);
  let plan: MapPlan | undefined;
  let run: readonly Sheet[] = [];
  const planning = planMap(content, frameOf(content, options, paper));
  for (let step = planning.next(); ; step = planning.next()) {
    if (step.value !== plan) {
      plan = step.value;
      run = numbered([{ name: 'map', paper, pages: drawMap(content, plan, options, paper) }, ...lists]);
    }
    if (step.done) return run;
    yield run;
  }
}
