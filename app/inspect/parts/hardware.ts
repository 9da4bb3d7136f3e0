/** What the form reads and writes of a lock's hardware. */
import type { NodeOf } from '../../../src/game/model.ts';
import { WRONG_HARDWARE } from '../../../src/words/form-hardware.ts';
import { useGame } from '../../store/game.ts';
import type { Reading } from '../draft.ts';
import { parseCount } from '../numbers.ts';

export type Hardware = NonNullable<NodeOf<'fastener'>['hardware']>;

export type Alphabet = 'digits' | 'letters' | 'own';

const SYMBOLS: Readonly<Record<'digits' | 'letters', string>> = {
  digits: '0123456789',
  letters: 'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
};

/** No lock has more wheels, and no dial more marks. */
const MOST_WHEELS = 12;
const MOST_MARKS = 1000;
const LONGEST_TRY = 3600;

/** What all wheels have; undefined where nothing is said of them. */
export function alphabetOf(wheels: Hardware['wheels']): Alphabet | undefined {
  if (wheels === undefined) return undefined;
  const all = (alphabet: 'digits' | 'letters') => wheels.every((wheel) => wheel === SYMBOLS[alphabet]);
  return all('digits') ? 'digits' : all('letters') ? 'letters' : 'own';
}

/** What a wheel of this type has as a rule; a picture wheel has what its code shows, since nothing else is known. */
export function usualWheel(type: string | undefined, code: string | undefined): string | undefined {
  if (type === 'number') return SYMBOLS.digits;
  if (type === 'word') return SYMBOLS.letters;
  const pictures = new Set((code ?? '').trim().split(/\s+/u));
  return code?.trim() ? [...pictures].join(' ') : undefined;
}

/** So many wheels; those that are new are as the last one. */
export function withCount(
  wheels: Hardware['wheels'],
  count: number | undefined,
  usual: string,
): readonly string[] | undefined {
  if (count === undefined) return undefined;
  const last = wheels?.at(-1) ?? usual;
  return Array.from({ length: count }, (_, i) => wheels?.[i] ?? last);
}

export function filledWith(wheels: readonly string[], alphabet: 'digits' | 'letters'): readonly string[] {
  return wheels.map(() => SYMBOLS[alphabet]);
}

/** Takes the whole field away when nothing is said of the lock any more. With a tag, what is typed into one field is one undo. */
export function setHardware(
  { id, hardware }: NodeOf<'fastener'>,
  change: { readonly [Field in keyof Hardware]?: Hardware[Field] | undefined },
  tag?: string,
): void {
  const next = { ...hardware, ...change };
  const isEmpty = Object.values(next).every((value) => value === undefined);
  const edit = {
    type: 'setFields' as const,
    id,
    fields: { hardware: isEmpty ? undefined : change },
  };
  useGame.getState().apply([edit], tag);
}

function readWhole(raw: string, least: number, most: number, wrong: string): Reading<number | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const count = parseCount(raw, least);
  return count === undefined || count > most ? { wrong } : { value: count };
}

export function readWheelCount(raw: string): Reading<number | undefined> {
  return readWhole(raw, 1, MOST_WHEELS, WRONG_HARDWARE.wheels);
}

export function readMarks(raw: string): Reading<number | undefined> {
  return readWhole(raw, 2, MOST_MARKS, WRONG_HARDWARE.marks);
}

/** '2', '1,5', '2 s'. */
export function readSeconds(raw: string): Reading<number | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const [, digits] = /^\s*(\d{1,4}(?:[.,]\d{1,3})?)\s*(?:s|sec|seconds)?\s*$/iu.exec(raw) ?? [];
  const seconds = digits === undefined ? 0 : Number(digits.replace(',', '.'));
  return seconds > 0 && seconds <= LONGEST_TRY ? { value: seconds } : { wrong: WRONG_HARDWARE.seconds };
}

export function readWheel(raw: string): Reading<string> {
  return raw.trim() === '' ? { wrong: WRONG_HARDWARE.emptyWheel } : { value: raw };
}
