/** What stands on the forms of the panel: captions, choices and what is wrong with what was typed. */
import { isKnownType, type LockType } from '../fasteners/index.ts';
import type { Game, GameNode, Kind, NodeId } from '../game/model.ts';
import { list, minutes, numberWord } from './numbers.ts';
import { sayer, sentence } from './say.ts';
import { plain, type Sentence } from './sentence.ts';

/** Types of lock as the choice 'Opens with' names them. */
const LOCK_TYPES: Readonly<Record<LockType, string>> = {
  key: 'key',
  number: 'number',
  word: 'word',
  direction: 'direction',
  dial: 'dial',
  picture: 'pictures',
  typed: 'typed code',
  latch: 'nothing (a latch)',
};

/** A type that this version does not know is called what the file calls it. */
export function lockTypeName(type: string): string {
  return isKnownType(type) ? LOCK_TYPES[type] : type;
}

export const FORM = {
  label: 'Form',
  back: 'Back to the whole game',
  step: (number: number) => `step ${number}`,
  name: 'Name',
  nameMissing: 'A name tells it apart on the map.',
  opensWith: 'Opens with',
  unknownType: 'This version does not know this type of lock. It opens when what it needs is there.',
  latch: 'A latch holds the box shut and opens by hand.',
  code: 'Code',
  answer: 'Answer',
  noCode: 'No code yet',
  noAnswer: 'No answer yet',
  noAnswerNeeded: 'None needed',
  changeCode: 'change',
  directions: { U: 'up', D: 'down', L: 'left', R: 'right' },
  liesIn: 'Lies in',
  on: 'On',
  putIn: 'Put it in…',
  putOn: 'Put it on…',
  now: 'now',
  onTables: 'nothing: on the tables',
  inHand: 'nothing: in hand from the start',
  givenByTeacher: 'nothing: given by the teacher',
  pupilsRead: 'Pupils read',
  pupilsReadHint: 'The words on it, or the task.',
  forTeacher: 'For the teacher alone',
  forTeacherHint: 'The exact spot, or how it is solved.',
  howLong: 'How long it takes',
  atBest: 'at best',
  asARule: 'as a rule',
  atWorst: 'at worst',
  timesHint: '‘As a rule’ takes the other two along. Write 45 s, 1.5 or 1:30.',
  asUsual: 'As usual',
  spread: 'How much it varies',
  alwaysTheSame: 'always the same',
  canBeAnything: 'can be anything',
  hands: 'Pupils who can work at it together',
  needs: 'Needs',
  needsNothing: 'No arrow leads here.',
  lockNeedsNothing: 'Nothing opens it yet.',
  addNeed: 'Needs…',
  neededFor: 'Needed for',
  neededForNothing: 'Nothing yet.',
  addNeededFor: 'Needed for…',
  howMany: 'How many of these',
  all: (count: number) => (count === 2 ? 'both' : `all ${count}`),
  anyOf: (need: number, count: number) => `any ${need} of ${count}`,
  positions: 'Positions in the code',
  positionsHint:
    'Leave this empty where one answer is the whole code. ‘1, 3’ puts its symbols into positions 1 and 3, in this order.',
  wholeCode: 'the whole code',
  removeArrow: (name: string) => `Remove the arrow: ${name}`,
  contents: 'In it',
  behind: 'Behind it',
  nothingInside: 'Nothing.',
  locks: (count: number) => (count < 2 ? 'Locks on it' : `${capital(numberWord(count))} locks on a hasp`),
  noLocks: 'None: it opens at once.',
  inLesson: 'In the lesson',
  howManyThere: 'How many of it there are',
  eachTeam: 'one for each team',
  sharedByTeams: 'fewer, for all teams together',
  forAllTeams: 'for all teams together',
  howManyTogether: 'How many for all teams together',
  checked: 'Checked or handed over by the teacher',
  hintAfter: 'Hint after so many minutes of work',
  atMinute: 'Given out at minute',
  atMinuteHint: {
    start: 'Empty: it is there from the start.',
    inside: 'Empty: as soon as it is found where it lies.',
    given: 'Empty: as soon as it is handed over.',
  },
  byChance: 'Pupils may come upon it by chance',
  decoy: 'Red herring: leads nowhere on purpose',
  why: 'Why it can be reached',
  whyNot: 'Why it cannot be reached',
  onMap: 'On the map',
  pinned: 'It stays where it is when the map is tidied.',
  notPinned: 'Pinned, it stays where it is when the map is tidied.',
  withoutAHitch: 'Without a hitch',
  cannotSkip: 'It cannot be skipped.',
  filter: 'Find by name',
  nothingFits: 'Nothing here fits.',
  close: 'Close',
  show: 'Show',
};

/** Plural heads of the lists that things are picked from. */
export const KIND_GROUPS: Readonly<Record<Kind, string>> = {
  place: 'Places',
  container: 'Boxes',
  fastener: 'Locks',
  key: 'Keys',
  clue: 'Clues',
  tool: 'Tools',
  puzzle: 'Puzzles',
  prize: 'Prizes',
};

/** What is wrong with what was typed. */
export const WRONG = {
  minutes: 'Write a time: 45 s, 1.5 or 1:30.',
  asARule: '‘As a rule’ is missing. Until it is there, the time stays as it was.',
  order: 'At best is the shortest, at worst the longest. Until they are in order, the time stays as it was.',
  tooLong: 'That is more than a million minutes.',
  wholeNumber: 'Write a whole number.',
  fromOne: 'Write a whole number from 1.',
  positions: 'Write the positions as numbers from 1: 1, 3.',
  positionsTwice: 'A position is filled once.',
  minuteOfPlay: 'Write the minute of play: 12 or 1:30.',
  lessonMinutes: 'Write the minutes of the lesson: 40.',
};

export function usualTime(kind: Kind): string {
  const what: Readonly<Record<Kind, string>> = {
    place: 'for a hiding place',
    container: 'for a box',
    fastener: 'for a lock',
    key: 'for a key',
    clue: 'for a clue',
    tool: 'for a tool',
    puzzle: 'for a puzzle',
    prize: 'for a prize',
  };
  return `Empty: what is usual ${what[kind]}. ‘As a rule’ sets all three. Write 45 s, 1.5 or 1:30.`;
}

/** What a spread comes to, its times written as in the boxes: '3 min to 10 min', 'always 5 min'. */
export function spreadOf(low: string, high: string): string {
  return low === high ? `always ${high}` : `${low} to ${high}`;
}

export const MANY = {
  selected: (things: number, arrows: number) =>
    [
      things > 0 ? `${things} ${things === 1 ? 'thing' : 'things'}` : '',
      arrows > 0 ? `${arrows} ${arrows === 1 ? 'arrow' : 'arrows'}` : '',
    ]
      .filter((part) => part !== '')
      .join(' and '),
  mixed: 'differ',
  usual: 'usual',
  putIn: 'Put them all in',
  hands: 'Pupils who can work at each together',
};

export const ARROW = {
  heading: 'Arrow',
  from: 'From',
  to: 'Is needed for',
  handsOver: 'The teacher hands it over when the puzzle is solved.',
  remove: 'Remove the arrow',
};

/** 'Green tin', 'Number lock on Green tin': what a form is the form of. */
export function formTitle(game: Game, node: GameNode): string {
  return plain(sayer(game).title(node.id));
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What a step adds to the end when each takes its expected minutes. `partners`: numbers of the steps it is tied with. */
export function addsToEnd(drag: number, tied: boolean, partners: readonly number[]): string {
  if (tied) {
    return partners.length === 0
      ? 'Shortening it helps only if others are shortened too.'
      : `Shortening it helps only if step ${list(partners.map(String), 'or')} is shortened too.`;
  }
  return drag > 0
    ? `It adds ${minutes(drag)} to the end.`
    : 'It adds nothing to the end: others take longer.';
}

/** When a step is begun and done if each takes its expected minutes. Minutes of play. */
export function earliest(start: number, finish: number): string {
  return start > 0
    ? `Begun after ${minutes(start)}, done after ${minutes(finish)}.`
    : `Begun at once, done after ${minutes(finish)}.`;
}

/** `float`: how much longer a step may take without delaying the end, in minutes. Nothing to say of one that delays it at once. */
export function mayTakeLonger(float: number): string | undefined {
  if (float === Number.POSITIVE_INFINITY) return 'However long it takes, the end stays the same.';
  return float > 0 ? `It may take ${minutes(float)} longer without delaying the end.` : undefined;
}

/** 'Green tin, with Red tag and Bay chart'. */
export function behindIt(game: Game, box: NodeId, contents: readonly NodeId[]): Sentence {
  const say = sayer(game);
  if (contents.length === 0) return sentence(say.name(box), ', with nothing in it');
  return sentence(say.name(box), ', with ', say.names(contents, contents.length));
}
