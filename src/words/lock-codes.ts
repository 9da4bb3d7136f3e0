/** What is wrong with a code as it was typed, and why a lock cannot show one. */
import type { CodeTrouble, Misfit } from '../fasteners/index.ts';
import { lockName } from './kinds.ts';
import { count, list } from './numbers.ts';

/** Letters that are taken for digits. */
const LIKE_DIGIT: ReadonlyMap<string, string> = new Map([
  ['O', '0'],
  ['I', '1'],
  ['L', '1'],
  ['Z', '2'],
  ['S', '5'],
  ['B', '8'],
]);

/** "A number lock takes only digits: ‘O’ at position 2 is none. Is 0 meant?" */
export function codeTroubleText({ trouble, position, symbol }: CodeTrouble): string {
  const here = `‘${symbol}’ at position ${position} is none`;
  switch (trouble) {
    case 'digitWanted': {
      const digit = LIKE_DIGIT.get(symbol);
      return `A number lock takes only digits: ${here}.${digit === undefined ? '' : ` Is ${digit} meant?`}`;
    }
    case 'letterWanted':
      return `A word lock takes only letters: ${here}.`;
    case 'moveWanted':
      return `The lock takes only up, down, left and right: ${here} of these.`;
    case 'numberWanted':
      return `A dial takes only numbers, as in 32 14 25: ${here}.`;
    case 'numbersRunTogether':
      return `Write the numbers of a dial apart, as in 32 14 25: ‘${symbol}’ at position ${position} is too long for one.`;
    case 'turning':
      return 'Write the numbers alone, as in 32 14 25. They stand for right, left, right: the directions that are written are others.';
  }
}

/** What one symbol of a code is called. */
export function symbolName(type: string | undefined): string {
  switch (type) {
    case 'number':
      return 'digit';
    case 'word':
      return 'letter';
    case 'direction':
      return 'move';
    case 'dial':
      return 'number';
    case 'picture':
      return 'picture';
    default:
      return 'symbol';
  }
}

/** The lock leaves open how long its code is, so its number of codes is that of one length. */
export function anyLength(type: string | undefined): boolean {
  return type === 'direction' || type === 'typed';
}

/** "4 letters" */
export function symbolCount(type: string | undefined, n: number): string {
  return count(n, symbolName(type));
}

/** Symbols beyond so many are counted. */
const MOST = 12;

/** "0 to 9", "A, C and E", "A to F and S": neighbours in the order of the alphabet or of numbers run together. */
export function shownText(symbols: readonly string[]): string {
  const runs: string[][] = [];
  for (const symbol of symbols) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last !== undefined && follows(last, symbol)) run.push(symbol);
    else runs.push([symbol]);
  }
  const parts = runs.flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run.at(-1)}`] : run));
  const rest = parts.length - MOST;
  return list(rest > 1 ? [...parts.slice(0, MOST), `${rest} more`] : parts);
}

function follows(before: string, after: string): boolean {
  if (/^\d+$/u.test(before) && /^\d+$/u.test(after)) return Number(after) === Number(before) + 1;
  return /^[A-Z]{2}$/u.test(before + after) && after.charCodeAt(0) === before.charCodeAt(0) + 1;
}

/** What is said once of all that it holds for, and what of each: "a number lock usually shows 0 to 9, and", "position 2 is K". */
type Clause = readonly [ofAll: string, ofEach: string];

function misfitClause(misfit: Misfit, type: string | undefined): Clause {
  if (misfit.misfit === 'length') {
    const { wanted, got, assumed } = misfit;
    if (assumed)
      return ['', `a ${lockName(type)} usually takes ${symbolCount(type, wanted)}, and the code has ${got}`];
    return ['', `the lock has ${count(wanted, 'wheel')}, and the code has ${symbolCount(type, got)}`];
  }
  const { position, symbol, wheel, assumed } = misfit;
  if (type === 'direction') return ['', `move ${position}, ${symbol}, is not up, down, left or right`];
  if (type === 'dial') {
    const dial = assumed ? 'a dial usually' : 'the dial';
    return [`${dial} goes from ${wheel[0]} to ${wheel.at(-1)}, and`, `number ${position} is ${symbol}`];
  }
  if (assumed)
    return [
      `a ${lockName(type)} usually shows ${shownText(wheel)}, and`,
      `position ${position} is ${symbol}`,
    ];
  return ['', `wheel ${position} has no ${symbol} (it shows ${shownText(wheel)})`];
}

/** So many reasons are told. */
const TOLD = 2;

/** Why a lock cannot show a code: "wheel 2 has no Q (it shows A, C and E)", with at most one more and the rest counted. */
export function misfitsClause(misfits: readonly Misfit[], type: string | undefined): string {
  const told = misfits.slice(0, misfits.length <= TOLD + 1 ? misfits.length : TOLD);
  let last = '';
  const clauses = told.map((misfit) => {
    const [ofAll, ofEach] = misfitClause(misfit, type);
    const clause = ofAll === '' || ofAll === last ? ofEach : `${ofAll} ${ofEach}`;
    last = ofAll;
    return clause;
  });
  const rest = misfits.length - told.length;
  return rest > 0 ? `${clauses.join(', ')} and ${rest} more do not fit` : list(clauses);
}
