/** What the panel says of how long a game takes: every figure from simulated lessons. */
import { bottleneckOf } from '../engine/simulation/bottleneck.ts';
import type { Figures } from '../engine/simulation/figures.ts';
import type { Game } from '../game/model.ts';
import { lessonsFinish, shareInTen, spreadInTen } from './chance.ts';
import { pupilsWait, whileWaiting } from './findings/timed.ts';
import { count, lessonInWords, list, minutesInWords, numberWord } from './numbers.ts';
import { sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

export const LESSON_TIME = {
  title: 'How long it takes',
  lesson: (minutes: number) => `lesson: ${lessonInWords(minutes)}`,
  working: 'It is being worked out.',
  failed: 'It cannot be worked out. That is a fault of Latchmap; the game is safe.',
  old: 'From before the change; it is being worked out anew.',
  byHints: 'In time, by the hints that a team gets',
  hints: (n: number) => (n === 0 ? 'no hint' : count(n, 'hint')),
  asSet: 'as set',
  pending: '…',
};

/** A figure of minutes between others of its kind, without its unit: whole from ten on. */
function figure(minutes: number): string {
  const tenths = Math.round(minutes * 10) / 10;
  return String(tenths < 10 ? tenths : Math.round(minutes));
}

/** "About 8 lessons in 10 finish before the bell." */
export function chanceSentence({ simulated }: Pick<Figures, 'simulated'>): string {
  const words = lessonsFinish(simulated.inTime);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} before the bell.`;
}

/** "Mostly between 24 and 33 minutes; half are done by minute 28." Eight lessons in ten lie between the two. */
export function rangeSentence({ simulated: { p10, median, p90 } }: Figures): string {
  const [low, high] = [figure(p10), figure(p90)];
  if (low === high) return `Nearly always ${minutesInWords(median)}.`;
  return `Mostly between ${low} and ${minutesInWords(p90)}; half are done by minute ${figure(median)}.`;
}

export function hintsCell(share: number): string {
  return shareInTen(share);
}

/** Where the chances with none, one and more hints are all told by one word: "Hints change little: nearly all, with none to three." */
export function hintsAlike(shares: readonly number[]): string | undefined {
  const words = new Set(shares.map(hintsCell));
  const [all] = words;
  if (all === undefined || words.size > 1) return undefined;
  return `Hints change little: ${all}, with none to ${numberWord(shares.length - 1)}.`;
}

/** By the ways in which a team may choose what it does next. */
export function choosingSentence(shares: readonly number[]): string {
  const words = spreadInTen(shares);
  const how = 'what a team takes up first: any step, a lock, or what is newest.';
  return `In time: ${words}, ${words.startsWith('between') ? 'depending on' : 'no matter'} ${how}`;
}

/** How long a pupil has nothing to do, and while what. */
export function waitingSentence(game: Game, figures: Figures): Sentence {
  const { simulated } = figures;
  const each = simulated.idle / simulated.team;
  const most = bottleneckOf(figures.clock, simulated.idleWhile, 0);
  if (each * 60 < 1) return ['Nobody has to wait.'];
  if (most === undefined) return [`A pupil waits ${minutesInWords(each)} in all.`];
  const { words, waiters } = whileWaiting(sayer(game), figures, most);
  return sentence(
    `A pupil waits ${minutesInWords(each)} in all, longest `,
    words,
    `: then ${pupilsWait(waiters, simulated.team)}.`,
  );
}

/** How it was worked out, in one sentence. */
export function methodSentence(game: Game, { simulated, clock }: Figures): string {
  const { lesson, network, shared, checked } = clock;
  const say = sayer(game);
  const things = network.ids.filter((_, i) => (shared[i] ?? 0) > 0 && lesson.teams > 1);
  const shares = things.length > 0 ? [`share ${list(things.map((id) => plainName(say.name(id))))}`] : [];
  const checks = checked.some((one) => one === 1)
    ? [`wait for ${count(lesson.adults, 'adult')} to check`]
    : [];
  const together = [...shares, ...checks];
  const pupils = count(simulated.team, 'pupil');
  const who =
    together.length > 0
      ? `${count(lesson.teams, 'team')} of ${pupils}, who ${list(together)}, take up`
      : `a team of ${pupils} takes up`;
  return `Worked out from ${simulated.runs.toLocaleString('en')} simulated lessons: each step takes a time between its estimates, and ${who} whatever can be done, without hints.`;
}

function plainName(name: Sentence): string {
  return name.map((part) => (typeof part === 'string' ? part : 'text' in part ? part.text : '')).join('');
}
