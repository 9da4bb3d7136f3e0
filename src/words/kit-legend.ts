/** What is written on the things that a remedy adds to a game: legends, puzzles that use them, tags in place of keys. They are the game's own from then on. */
import { fastenerType } from '../fasteners/index.ts';
import type { Game, NodeOf } from '../game/model.ts';
import type { Translation } from '../kit/remedies/translation.ts';
import { lockName } from './kinds.ts';
import { count, numberWord } from './numbers.ts';
import { sayer } from './say.ts';
import { plain } from './sentence.ts';

const MOVES: ReadonlyMap<string, string> = new Map([
  ['U', 'up'],
  ['D', 'down'],
  ['L', 'left'],
  ['R', 'right'],
]);

export interface NewWords {
  readonly name: string;
  readonly text: string;
  readonly note: string;
}

function box(game: Game, lock: NodeOf<'fastener'>): string {
  return plain(sayer(game).name(lock.on));
}

/** A sign of a code in words: a direction as its word. */
function sign(type: string, symbol: string): string {
  return fastenerType(type).directions ? (MOVES.get(symbol) ?? symbol) : symbol;
}

/** "2, 3 and 1" is not for codes: signs follow each other with spaces where they are words or numbers. */
function signs(type: string, symbols: readonly string[]): string {
  const shown = symbols.map((symbol) => sign(type, symbol));
  return shown.join(shown.some((one) => one.length > 1) ? ' ' : '');
}

export function legendWords(
  game: Game,
  lock: NodeOf<'fastener'>,
  before: string,
  after: string,
  { signs: table }: Translation,
): NewWords {
  const lines = table.map(([symbol, stands]) => `${sign(before, symbol)}: ${signs(after, stands)}`);
  return {
    name: `Legend of ${box(game, lock)}`,
    text: [`LEGEND OF ${box(game, lock).toUpperCase()}`, '', ...lines].join('\n'),
    note: `Lies beside ${box(game, lock)}: its lock is a ${lockName(after)} today.`,
  };
}

export function puzzleWords(
  game: Game,
  lock: NodeOf<'fastener'>,
  before: string,
  after: string,
  old: readonly string[],
  { code, counted }: Translation,
): NewWords {
  const only = counted < old.length ? ` Only the first ${numberWord(counted)} count.` : '';
  const long =
    code.length < counted * Math.ceil(code.length / counted)
      ? ` Stop after ${count(code.length, 'sign')}.`
      : '';
  return {
    name: `Signs for ${box(game, lock)}`,
    text: `Turn what opens ${box(game, lock)} into the signs of its lock, in the order that you found. The legend says what each stands for.${only}${long}`,
    note: `${signs(before, old)} becomes ${signs(after, code)}.`,
  };
}

export function tagWords(
  game: Game,
  lock: NodeOf<'fastener'>,
  type: string,
  code: readonly string[],
): NewWords {
  return {
    name: `Tag for ${box(game, lock)}`,
    text: signs(type, code),
    note: `In place of a key: ${box(game, lock)} has a ${lockName(type)} today.`,
  };
}

/** For the teacher, on a tool that the kit lacks. */
export function lentNote(): string {
  return 'Not from the kit today: pupils ask the teacher, who lends one or shows what it would show.';
}

/** For the teacher, on a fastener that has no real lock. `answer`: what would open it, where that is a code. */
export function standInNote(answer: string | undefined): string {
  return answer === undefined
    ? 'No lock today: pupils show the teacher what would open it.'
    : `No lock today: pupils tell the teacher the code, ${answer}.`;
}
