/** What a teacher chose for printing, remembered in the browser; the first paper is that of the reader's region. */
import { SHEET_NAMES, type SheetOptions } from '../../src/sheets/sheet.ts';

const KEY = 'latchmap.print';

/** Regions that print on US Letter: Unicode CLDR, supplemental data, paperSize. All others take A4. */
const LETTER_REGIONS: ReadonlySet<string> = new Set([
  'BZ',
  'CA',
  'CL',
  'CO',
  'CR',
  'GT',
  'MX',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'US',
  'VE',
]);

function regionOf(language: string): string | undefined {
  try {
    return new Intl.Locale(language).maximize().region;
  } catch {
    return undefined;
  }
}

/** `language`: a language tag such as en-GB, as the browser gives it. */
export function firstOptions(language: string): SheetOptions {
  return {
    paper: LETTER_REGIONS.has(regionOf(language) ?? '') ? 'Letter' : 'A4',
    orientation: 'portrait',
    codes: true,
    times: true,
    rescue: true,
    ticks: true,
    colour: true,
    sheets: SHEET_NAMES,
  };
}

/** To be remembered: of sheets, those that are off, so that one that is new to the program is printed at first. */
export function writeOptions({ sheets, ...others }: SheetOptions): string {
  return JSON.stringify({ ...others, off: SHEET_NAMES.filter((name) => !sheets.includes(name)) });
}

/** What was remembered, as far as it can be understood; the rest as at first. */
export function readOptions(text: string | null, language: string): SheetOptions {
  const first = firstOptions(language);
  const kept = parsed(text);
  const whether = (name: string, otherwise: boolean) => {
    const value = kept.get(name);
    return typeof value === 'boolean' ? value : otherwise;
  };
  const paper = kept.get('paper');
  const orientation = kept.get('orientation');
  const off = kept.get('off');
  return {
    paper: paper === 'A4' || paper === 'Letter' ? paper : first.paper,
    orientation: orientation === 'portrait' || orientation === 'landscape' ? orientation : first.orientation,
    codes: whether('codes', first.codes),
    times: whether('times', first.times),
    rescue: whether('rescue', first.rescue),
    ticks: whether('ticks', first.ticks),
    colour: whether('colour', first.colour),
    sheets: Array.isArray(off) ? SHEET_NAMES.filter((name) => !off.includes(name)) : first.sheets,
  };
}

function parsed(text: string | null): ReadonlyMap<string, unknown> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return new Map(typeof value === 'object' && value !== null ? Object.entries(value) : []);
  } catch {
    return new Map();
  }
}

/** A setting is a convenience: where storage is refused it is simply not remembered. */
export function rememberedOptions(): SheetOptions {
  try {
    return readOptions(localStorage.getItem(KEY), navigator.language);
  } catch {
    return firstOptions(navigator.language);
  }
}

export function rememberOptions(options: SheetOptions): void {
  try {
    localStorage.setItem(KEY, writeOptions(options));
  } catch {
    return;
  }
}
