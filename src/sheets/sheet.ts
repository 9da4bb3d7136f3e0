/** What a print run holds, and what a teacher chooses for it. */
import type { Drawing } from './drawing.ts';
import { type Orientation, type Paper, type PaperName, paperOf } from './paper.ts';

export const SHEET_NAMES = ['map', 'cautions', 'codes', 'contents', 'hidden', 'order'] as const;
/** Facilitator map; cautions; codes of all locks; what lies in what; what is hidden where; order of play in sentences. */
export type SheetName = (typeof SHEET_NAMES)[number];

/** All that says what stands on the pages, and where: another one makes other pages. */
export interface LayoutOptions {
  readonly paper: PaperName;
  /** Of the map; lists are upright. */
  readonly orientation: Orientation;
  /** Without codes and answers a page may lie about. */
  readonly codes: boolean;
  readonly times: boolean;
  readonly rescue: boolean;
  readonly ticks: boolean;
  /** Which sheets are printed; always in the order of SHEET_NAMES. */
  readonly sheets: readonly SheetName[];
}

export interface SheetOptions extends LayoutOptions {
  /** The same pages, drawn in colour or in grey. */
  readonly colour: boolean;
}

/** When it is printed, as the reader's clock has it: given in, so that the same document makes the same page. */
export interface Printing {
  /** "25 November 2026, 13:40" */
  readonly date: string;
}

export interface Sheet {
  readonly name: SheetName;
  /** Of all its pages. */
  readonly paper: Paper;
  readonly pages: readonly Drawing[];
}

/** The list of codes is left out of a run without codes. */
export function sheetsOf({ sheets, codes }: Pick<LayoutOptions, 'sheets' | 'codes'>): SheetName[] {
  return SHEET_NAMES.filter((name) => sheets.includes(name) && (codes || name !== 'codes'));
}

/** The map alone may lie. */
export function paperOfSheet(
  name: SheetName,
  { paper, orientation }: Pick<LayoutOptions, 'paper' | 'orientation'>,
): Paper {
  return paperOf(paper, name === 'map' ? orientation : 'portrait');
}
