import { SHEET_NAMES, type SheetOptions } from '../../src/sheets/sheet.ts';

/** Every sheet with everything on it, on A4, the map upright. */
export const ALL_ON: SheetOptions = {
  paper: 'A4',
  orientation: 'portrait',
  codes: true,
  times: true,
  rescue: true,
  ticks: true,
  colour: true,
  sheets: SHEET_NAMES,
};
