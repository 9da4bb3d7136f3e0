/** Figures and lists as a person reads them. */

/** "1 thing", "2 things". The plural is given where it is not the singular with an s. */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

const NUMBER_WORDS = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A whole number: to ten in words, then in figures. */
export function numberWord(n: number): string {
  return NUMBER_WORDS[n] ?? String(n);
}

/** "A", "A and B", "A, B and C"; with 'or' for a choice. */
export function list(parts: readonly string[], word: 'and' | 'or' = 'and'): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} ${word} ${parts[parts.length - 1]}`;
}

/** A figure of minutes without its unit: below ten to one decimal, else whole. */
function figure(minutes: number): string {
  const tenths = Math.round(minutes * 10) / 10;
  return String(tenths < 10 ? tenths : Math.round(minutes));
}

/** Under a minute in seconds ("43 s"), below ten minutes to one decimal ("2.3 min"), else whole ("21 min"). */
export function minutes(value: number): string {
  const seconds = Math.round(value * 60);
  return seconds < 60 ? `${seconds} s` : `${figure(value)} min`;
}

/** The same in running text: "43 seconds", "2.3 minutes". */
export function minutesInWords(value: number): string {
  const seconds = Math.round(value * 60);
  if (seconds < 60) return count(seconds, 'second');
  return lessonInWords(value);
}

/** The minutes of a lesson, never as seconds: "0 minutes", "40 minutes". */
export function lessonInWords(value: number): string {
  const text = figure(value);
  return `${text} ${text === '1' ? 'minute' : 'minutes'}`;
}

/** "21 of 40 minutes": a time against the lesson. */
export function minutesOf(value: number, lesson: number): string {
  const seconds = Math.round(value * 60);
  return `${seconds < 60 ? `${seconds} s` : figure(value)} of ${lessonInWords(lesson)}`;
}
