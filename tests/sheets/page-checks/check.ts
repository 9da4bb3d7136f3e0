/**
 * Printed pages measured from outside: from their marks alone, and from what the engine says of the game. Shares no code with what
 * lays the pages out.
 */
import type { Assessment } from '../../../src/findings/assess.ts';
import type { Drawing, TextMark } from '../../../src/sheets/drawing.ts';
import type { Sheet, SheetName, SheetOptions } from '../../../src/sheets/sheet.ts';
import { areaFaults } from './areas.ts';
import { contentFaults, givenAway } from './contents.ts';
import type { Fault } from './fault.ts';
import { crossingsOf, lineFaults } from './lines.ts';
import { countLinks, linkFaults } from './links.ts';
import { markFaults, pageNumberFaults } from './marks.ts';
import { type Page, pageOf } from './page.ts';
import { usedOf } from './used.ts';

export interface MapReport {
  readonly faults: readonly Fault[];
  /** Of the map; and so are crossings and links. */
  readonly pages: number;
  /** Smallest type size on any sheet, in points. */
  readonly smallest: number;
  /** The same of names on the map. */
  readonly names: number;
  readonly crossings: number;
  readonly drawn: number;
  readonly told: number;
}

function smallestOf(pages: readonly Page[], counts: (mark: TextMark) => boolean): number {
  return Math.min(
    ...pages.flatMap(({ texts }) => texts.flatMap(({ mark }) => (counts(mark) ? [mark.size] : []))),
  );
}

/** A whole print run, in its order. The map is checked in everything, other sheets in what can be said without knowing what they are about. */
export function checkRun(
  sheets: readonly Pick<Sheet, 'name' | 'pages'>[],
  assessment: Assessment,
  options: SheetOptions,
): MapReport {
  const used = usedOf(assessment);
  const all: { readonly name: SheetName; readonly page: Page }[] = [];
  for (const { name, pages } of sheets) {
    for (const drawing of pages) all.push({ name, page: pageOf(drawing, all.length + 1) });
  }
  const pages = all.map(({ page }) => page);
  const map = all.filter(({ name }) => name === 'map').map(({ page }) => page);
  const lists = pages.filter((page) => !map.includes(page));
  const hasMap = sheets.some(({ name }) => name === 'map');
  return {
    faults: [
      ...pages.flatMap(markFaults),
      ...map.flatMap((page) => [...areaFaults(page, used), ...lineFaults(page, used)]),
      ...(hasMap ? [...linkFaults(map, used), ...contentFaults(map, used, options)] : []),
      ...(options.codes ? [] : givenAway(lists, used)),
      ...pageNumberFaults(pages),
    ],
    pages: map.length,
    smallest: smallestOf(pages, () => true),
    names: smallestOf(map, ({ role, of }) => role === 'name' && of !== undefined),
    crossings: map.reduce((sum, page) => sum + crossingsOf(page, used), 0),
    ...countLinks(map, used),
  };
}

/** The facilitator map alone: all its pages, and no other sheet. */
export function checkMap(
  pages: readonly Drawing[],
  assessment: Assessment,
  options: SheetOptions,
): MapReport {
  return checkRun([{ name: 'map', pages }], assessment, options);
}
