/**
 * The wheels of a lock in one cell: "4 × 0123456789", "2 × ABCDE / 2 × KLMNO", "1 × FOX SUN BELL / 1 × CUP SUN BELL". The count in front keeps a spreadsheet
 * from taking the symbols for a number. Read are also a bare number of wheels ("4") for types whose wheels are usually alike, and wheels
 * with spaces, commas or bars between them.
 */
import { fastenerType } from '../../fasteners/index.ts';

/** More wheels than any lock has. */
const MOST_WHEELS = 20;

export function writeWheels(wheels: readonly string[]): string {
  const runs: { readonly wheel: string; count: number }[] = [];
  for (const wheel of wheels) {
    const last = runs.at(-1);
    if (last?.wheel === wheel) last.count += 1;
    else runs.push({ wheel, count: 1 });
  }
  return runs.map(({ wheel, count }) => `${count} × ${wheel}`).join(' / ');
}

/** Undefined where it is none of these. */
export function readWheels(cell: string, type: string): string[] | undefined {
  const text = cell.trim();
  if (/^\d{1,2}$/u.test(text)) {
    const count = Number(text);
    const usual = fastenerType(type).wheel(0)?.join('');
    const isUsual = usual !== undefined && (type === 'number' || type === 'word');
    return isUsual && count >= 1 && count <= MOST_WHEELS ? Array<string>(count).fill(usual) : undefined;
  }
  const parts = text.split(/\s+\/\s+/u);
  const isCounted = parts.some((part) => COUNTED.test(part));
  // With names as symbols, spaces stand between symbols and not between wheels.
  const loose = parts.length > 1 || isCounted || type === 'picture' ? parts : text.split(/[\s,;|/]+/u);
  const wheels = loose.flatMap((part) => {
    const counted = COUNTED.exec(part);
    return counted ? Array<string>(Number(counted[1])).fill((counted[2] ?? '').trim()) : [part.trim()];
  });
  const isRight = wheels.length > 0 && wheels.length <= MOST_WHEELS && wheels.every((wheel) => wheel !== '');
  return isRight ? wheels : undefined;
}

const COUNTED = /^\s*(\d{1,2})\s*[×x*]\s*(\S.*)$/u;
