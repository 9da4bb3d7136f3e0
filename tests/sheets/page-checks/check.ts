/**
 * Printed pages measured from outside: from their marks alone, and from what the engine says of the game. Shares no code with what
 * lays the pages out.
 */
import type { Assessment } from '../../../src/findings/assess.ts';
import type { Drawing } from '../../../src/sheets/drawing.ts';
import type { SheetOptions } from '../../../src/sheets/sheet.ts';
import { areaFaults } from './areas.ts';
import { contentFaults } from './contents.ts';
import type { Fault } from './fault.ts';
import { crossingsOf, lineFaults } from './lines.ts';
import { countLinks, linkFaults } from './links.ts';
import { markFaults, pageNumberFaults } from './marks.ts';
import { type Page, pageOf } from './page.ts';
import { usedOf } from './used.ts';

export interface MapReport {
  readonly faults: readonly Fault[];
  readonly pages: number;
  /** Smallest type size on any page, in points. */
  readonly smallest: number;
  readonly crossings: number;
  readonly drawn: number;
  readonly told: number;
}

const smallestOn = (pages: readonly Page[]) =>
  Math.min(...pages.flatMap(({ texts }) => texts.map(({ mark }) => mark.size)));

/** The facilitator map alone: all its pages, and no other sheet. */
export function checkMap(
  drawings: readonly Drawing[],
  assessment: Assessment,
  options: SheetOptions,
): MapReport {
  const used = usedOf(assessment);
  const pages = drawings.map((drawing, i) => pageOf(drawing, i + 1));
  const faults = pages.flatMap((page) => [
    ...markFaults(page),
    ...areaFaults(page, used),
    ...lineFaults(page, used),
  ]);
  return {
    faults: [
      ...faults,
      ...linkFaults(pages, used),
      ...contentFaults(pages, used, options),
      ...pageNumberFaults(pages),
    ],
    pages: pages.length,
    smallest: smallestOn(pages),
    crossings: pages.reduce((sum, page) => sum + crossingsOf(page, used), 0),
    ...countLinks(pages, used),
  };
}

/** Any sheets, in the order in which they are printed: what can be said without knowing what they are about. */
export function checkSheets(drawings: readonly Drawing[]): readonly Fault[] {
  const pages = drawings.map((drawing, i) => pageOf(drawing, i + 1));
  return [...pages.flatMap(markFaults), ...pageNumberFaults(pages)];
}
