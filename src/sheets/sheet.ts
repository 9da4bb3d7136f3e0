/** What a print run holds, and what a teacher chooses for it. */
import type { Drawing } from './drawing.ts';
import type { Orientation, PaperName } from './paper.ts';

export const SHEET_NAMES = ['map', 'codes', 'contents', 'hidden', 'order'] as const;
/** Facilitator map; codes of all locks; what lies in what; what is hidden where; order of play in sentences. */
export type SheetName = (typeof SHEET_NAMES)[number];

export interface SheetOptions {
  readonly paper: PaperName;
  /** Of the map; lists are upright. */
  readonly orientation: Orientation;
  /** Without codes and answers a page may lie about. */
  readonly codes: boolean;
  readonly times: boolean;
  readonly rescue: boolean;
  readonly ticks: boolean;
  readonly colour: boolean;
  /** Which sheets are printed; always in the order of SHEET_NAMES. */
  readonly sheets: readonly SheetName[];
}

/** When it is printed, as the reader's clock has it: given in, so that the same document makes the same page. */
export interface Printing {
  /** "25 November 2026, 13:40" */
  readonly date: string;
}

export interface Sheet {
  readonly name: SheetName;
  readonly pages: readonly Drawing[];
}
