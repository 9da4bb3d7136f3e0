/** Times as a teacher types them. Values are minutes. */
import { MAX_MINUTES } from '../../src/game/schema.ts';
import { WRONG } from '../../src/words/screen-form.ts';
import type { Reading } from './draft.ts';

const SECONDS = /^(\d+(?:[.,]\d+)?)\s*(?:s|sec|secs|second|seconds)$/;
const MINUTES = /^(\d+(?:[.,]\d+)?)\s*(?:m|min|mins|minute|minutes)?$/;
const CLOCK = /^(\d+):([0-5]\d)$/;
const BOTH = /^(\d+)\s*(?:m|min|mins|minutes)\s*(\d+)\s*(?:s|sec|secs|seconds)$/;

const number = (digits: string | undefined) => Number((digits ?? '').replace(',', '.'));

/** '45 s', '1.5', '1,5 min', '1:30' and '1 min 30 s' in minutes; undefined when it is no time. */
export function parseMinutes(raw: string): number | undefined {
  const typed = raw.trim().toLowerCase();
  const seconds = SECONDS.exec(typed);
  if (seconds) return number(seconds[1]) / 60;
  const minutes = MINUTES.exec(typed);
  if (minutes) return number(minutes[1]);
  const pair = CLOCK.exec(typed) ?? BOTH.exec(typed);
  if (pair) return number(pair[1]) + number(pair[2]) / 60;
  return undefined;
}

/** A field of one time; empty means that the game says none. `wrong`: what is said of what is no time. */
export function readMinutes(raw: string, wrong: string): Reading<number | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const minutes = parseMinutes(raw);
  if (minutes === undefined) return { wrong };
  return minutes > MAX_MINUTES ? { wrong: WRONG.tooLong } : { value: minutes };
}

/** The same time as it stands in a field: whole seconds below a minute, 1:30 where seconds are whole, else the number. Read back, it is within half a second of a hundredth. */
export function typedMinutes(minutes: number): string {
  const seconds = minutes * 60;
  const whole = Math.round(seconds);
  if (Math.abs(seconds - whole) > 1e-6) return `${Number(minutes.toFixed(4))}`;
  if (minutes > 0 && whole < 60) return `${whole} s`;
  if (whole % 60 === 0) return `${whole / 60} min`;
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
