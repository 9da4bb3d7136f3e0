/** What it takes to guess a lock, as its form says it: how many codes are left at each moment, how long trying takes, what it skips. */
import type { Guess, GuessedBy, GuessStage } from '../engine/guess/guess.ts';
import type { NodeId } from '../game/model.ts';
import { anyLength, symbolCount } from './lock-codes.ts';
import { list, minutes } from './numbers.ts';
import { capital, type Say, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

export const GUESS = {
  heading: 'Can it be guessed?',
  noCode: 'No code yet',
  never: 'It never comes to hand, so nobody can try.',
  skipsNothing: 'Found by chance, it skips nothing.',
};

const HUNDRED_YEARS = 100 * 365 * 24 * 60;

/** '1,000', '12 million'; beyond that nobody cares. */
function figure(n: number): string {
  if (n >= 1e12) return 'more than a trillion';
  if (n >= 1e9) return `${Math.round(n / 1e9)} billion`;
  if (n >= 1e6) return `${Math.round(n / 1e6)} million`;
  return String(Math.round(n)).replace(/\B(?=(\d{3})+$)/gu, ',');
}

/** An expected time of trying: to five seconds, then as minutes, hours and days. */
export function triedFor(value: number): string {
  const seconds = Math.max(5, Math.round((value * 60) / 5) * 5);
  if (seconds < 60) return `about ${seconds} s`;
  if (value < 120) return `about ${minutes(value)}`;
  if (value < 48 * 60) return `about ${Math.round(value / 60)} hours`;
  return value < HUNDRED_YEARS ? `about ${figure(value / 60 / 24)} days` : 'more than a lifetime';
}

const NOUNS: Readonly<Record<GuessedBy, readonly [string, string]>> = {
  codes: ['code', 'codes'],
  words: ['word', 'words'],
  locks: ['lock', 'locks'],
};

function leftOf({ by, left }: Pick<GuessStage, 'by' | 'left'>): string {
  if (left === Number.POSITIVE_INFINITY) return 'more codes than can be counted';
  return `${figure(left)} ${NOUNS[by][left === 1 ? 0 : 1]}`;
}

export interface CodeLike {
  readonly type: string | undefined;
  /** In symbols; 0 while there is no code. */
  readonly length: number;
}

/** How many codes there are is not known before there is one: the lock leaves open how long it is. */
export function isOpen({ by, codes }: Pick<Guess, 'by' | 'codes'>, length: number): boolean {
  return by === 'code' && length === 0 && codes === Number.POSITIVE_INFINITY;
}

/** '1,000 codes, about 42 min of trying': what stands beside the heading while it is folded. */
export function guessSaid({ by, codes, stages }: Guess, { length }: CodeLike): string {
  const [first] = stages;
  if (isOpen({ by, codes }, length)) return GUESS.noCode;
  if (!first) return GUESS.never;
  if (first.left === Number.POSITIVE_INFINITY) return `${capitalText(leftOf(first))}.`;
  return `${leftOf(first)}, ${triedFor(first.minutes)} of trying`;
}

/** 'It has 1,000 codes. One try takes 5 s.', 'With 5 moves: 1,024 codes. One try takes 8 s.' */
export function codesInAll({ by, codes, trySeconds }: Guess, { type, length }: CodeLike): string {
  const seconds = `One try takes ${trySeconds} s.`;
  if (by === 'key') return `A key is tried on one lock after another. ${seconds}`;
  if (isOpen({ by, codes }, length)) return `${GUESS.noCode}. ${seconds}`;
  if (codes === Number.POSITIVE_INFINITY) return `Nobody can count its codes. ${seconds}`;
  const has = anyLength(type) ? `With ${symbolCount(type, length)}:` : 'It has';
  return `${has} ${leftOf({ by: 'codes', left: codes })}. ${seconds}`;
}

function whenOf(at: number): string {
  return at > 0 ? `after ${minutes(at)}` : 'from the start';
}

export interface StageTold {
  /** Without the steps that it skips where these are told beside it. */
  readonly skips: readonly NodeId[];
  /** Positions of the code. */
  readonly length: number;
}

/** 'After 12 min, with positions 1 and 2 known: 10 codes, about 30 s of trying. Quicker than solving it. It skips Weigh, 5.5 min.' */
export function stageTold(say: Say, stage: GuessStage, { skips, length }: StageTold): Sentence {
  const { at, known, by, left, quicker, minutesSkipped } = stage;
  if (by === 'codes' && length > 0 && known.length >= length) {
    return capital([`${whenOf(at)} all of it is known.`]);
  }
  const knowing =
    known.length === 0
      ? ''
      : `, with ${known.length === 1 ? 'position' : 'positions'} ${list(known.map(String))} known`;
  const what =
    left === Number.POSITIVE_INFINITY
      ? leftOf(stage)
      : `${leftOf(stage)}, ${triedFor(stage.minutes)} of trying`;
  return capital(
    sentence(
      `${whenOf(at)}${knowing}: ${what}.`,
      quicker ? ' Quicker than solving it.' : skips.length > 0 ? ' Solving it is quicker.' : '',
      ...(quicker && skips.length > 0
        ? [
            ' It skips ',
            say.names(skips),
            `, ${minutes(minutesSkipped)}${skips.length > 1 ? ' in all' : ''}.`,
          ]
        : []),
    ),
  );
}

function capitalText(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
