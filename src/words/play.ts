/** A lesson played through: the sentence of a minute, the word on each thing, and what stands round the chart. */
import type { NodeState } from '../engine/simulation/moment.ts';
import type { Game, GameNode, Kind, NodeId } from '../game/model.ts';
import { count } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import { plain, type Sentence } from './sentence.ts';

export const PLAY = {
  title: 'A typical lesson',
  label: 'A typical lesson, minute by minute',
  close: 'Close the play-through',
  play: 'Play',
  pause: 'Pause',
  next: 'Next event',
  previous: 'Event before',
  speed: 'Speed',
  times: (speed: number) => `${speed} times as fast`,
  timesShort: (speed: number) => `${speed}×`,
  minute: 'Minute of the lesson',
  openings: 'When each box opens',
  busy: 'busy',
  waiting: 'waiting',
  bell: 'bell',
  bellAt: (minute: number) => `bell at ${figure(minute)}`,
  legend: 'Line: busy on average. In 8 lessons in 10 a box opens on its bar.',
  working: 'Being worked out.',
  again: 'being worked out anew',
  empty: 'A lesson can be played through as soon as there is a game.',
  unwinnable: 'A lesson can be played through as soon as the game can be won.',
  noSteps: 'Nothing in this game takes time: the prize is reached at once.',
} as const;

export function pupilsText(pupils: number): string {
  return count(pupils, 'pupil');
}

/** A minute to the tenth: "11", "10.5". */
function figure(minute: number): string {
  return String(Math.round(minute * 10) / 10);
}

const HAD: Readonly<Partial<Record<Kind, string>>> = {
  container: 'open',
  key: 'found',
  clue: 'found',
  tool: 'found',
  prize: 'reached',
};

/** The name of the shared thing that a step waits for; empty where that is the step itself, or its own box. */
export function waitsForName(game: Game, { node, thing }: Queue): string {
  const step = game.nodes.get(node);
  const isItself = node === thing || (step?.kind === 'fastener' && step.on === thing);
  return isItself ? '' : plain(sayer(game).name(thing));
}

/**
 * On a thing of the map: 'not yet seen', 'shut', 'can be tried', 'waits for Hand lens', '3 pupils', 'done'. What is no box and no lock
 * is not shut, but not of use yet.
 * @param waitsFor what waitsForName says
 */
export function momentText(kind: Kind, state: NodeState, pupils: number, waitsFor = ''): string {
  switch (state) {
    case 'unseen':
      return 'not yet seen';
    case 'shut':
      return kind === 'container' || kind === 'fastener' ? 'shut' : 'not yet';
    case 'open':
      return 'can be tried';
    case 'queueing':
      return waitsFor === '' ? 'with others' : `waits for ${waitsFor}`;
    case 'passedOver':
      return 'not needed';
    case 'working':
      return pupilsText(pupils);
    case 'checking':
      return 'for checking';
    case 'done':
      return HAD[kind] ?? 'done';
  }
}

export interface Worked {
  readonly node: NodeId;
  readonly pupils: number;
}

/** A step that could be taken up if other teams did not have a shared thing. */
export interface Queue {
  readonly node: NodeId;
  readonly thing: NodeId;
}

/** All that is said of one minute. */
export interface PlayedMinute {
  readonly minute: number;
  /** Minutes of play until the bell. */
  readonly bell: number;
  /** Pupils of the team. */
  readonly team: number;
  readonly waiting: number;
  readonly working: readonly Worked[];
  /** Worked, and waiting for the teacher to check it. */
  readonly checking: readonly NodeId[];
  /** Could be taken up, and nobody has. */
  readonly open: readonly NodeId[];
  readonly queueing: readonly Queue[];
  /** The prizes, once all are reached. */
  readonly prizes: readonly NodeId[] | undefined;
}

/** "minute 11: three pupils work on Take the bearing, one waits; Signal flags can be tried". */
export function minuteSentence(game: Game, at: PlayedMinute): Sentence {
  const late = at.minute > at.bell ? ', after the bell: ' : ': ';
  return sentence(`minute ${figure(at.minute)}`, late, whatHappens(game, at));
}

/** The same as it is read aloud, with what it is about before it. */
export function minuteAloud(game: Game, at: PlayedMinute): string {
  return plain(capital(minuteSentence(game, at)));
}

function whatHappens(game: Game, at: PlayedMinute): Sentence {
  const say = sayer(game);
  if (at.prizes) {
    return sentence(say.names(at.prizes, 2), at.prizes.length === 1 ? ' is reached' : ' are reached');
  }
  const groups = [...work(game, at), ...waiting(game, at)];
  const pieces = groups.flatMap((group, i) => (i === 0 ? [group] : [', ', group]));
  const then = [canBeTried(game, at.open), isWaitedFor(game, at)].filter((words) => words.length > 0);
  const rest = then.flatMap((words, i) => (i === 0 ? [words] : [', ', words]));
  return sentence(...pieces, pieces.length > 0 && rest.length > 0 ? '; ' : '', ...rest);
}

/** So many groups are told one by one. */
const GROUPS = 2;

function work(game: Game, { working, checking }: PlayedMinute): Sentence[] {
  const say = sayer(game);
  const told = working.length <= GROUPS + 1 ? working : working.slice(0, GROUPS);
  const rest = working.slice(told.length);
  const groups: Sentence[] = told.map(({ node, pupils }, i) =>
    sentence(
      i === 0 ? inWords(pupils, 'pupil') : inWords(pupils),
      ` ${verb(game.nodes.get(node), pupils)} `,
      say.name(node),
    ),
  );
  if (rest.length > 0) {
    const others = rest.reduce((sum, { pupils }) => sum + pupils, 0);
    groups.push([`${inWords(others)} ${others === 1 ? 'is' : 'are'} at ${count(rest.length, 'other step')}`]);
  }
  if (checking.length > 0) {
    groups.push(
      sentence(say.names(checking, 1), checking.length === 1 ? ' waits' : ' wait', ' for the teacher'),
    );
  }
  return groups;
}

function verb(node: GameNode | undefined, pupils: number): string {
  const one = pupils === 1;
  switch (node?.kind) {
    case 'place':
      return one ? 'searches' : 'search';
    case 'fastener':
      return one ? 'opens' : 'open';
    case 'clue':
      return one ? 'reads' : 'read';
    case 'container':
      return one ? 'looks into' : 'look into';
    case 'key':
      return one ? 'tries' : 'try';
    case 'tool':
      return one ? 'uses' : 'use';
    default:
      return one ? 'works on' : 'work on';
  }
}

/** "all six wait", "two wait for Hand lens". */
function waiting(game: Game, { waiting: waits, team, queueing }: PlayedMinute): Sentence[] {
  if (waits === 0) return [];
  const who = waits < team ? inWords(waits) : team === 1 ? 'the pupil' : `all ${inWords(team)}`;
  const things = sharedThings(queueing);
  const what = things.length === 0 ? [] : sentence(' for ', sayer(game).names(things, 1));
  return [sentence(who, waits === 1 ? ' waits' : ' wait', what)];
}

const sharedThings = (queueing: readonly Queue[]) => [...new Set(queueing.map(({ thing }) => thing))];

/** What other teams have while nobody of this one waits for it: "Under the lens waits for Hand lens". */
function isWaitedFor(game: Game, { waiting: waits, queueing }: PlayedMinute): Sentence {
  if (waits > 0 || queueing.length === 0) return [];
  const say = sayer(game);
  const steps = queueing.filter((queue) => waitsForName(game, queue) !== '');
  const nodes = (steps.length > 0 ? steps : queueing).map(({ node }) => node);
  const one = nodes.length === 1;
  if (steps.length === 0) return sentence(say.names(nodes, 1), one ? ' is' : ' are', ' with other teams');
  return sentence(say.names(nodes, 1), one ? ' waits for ' : ' wait for ', say.names(sharedThings(steps), 1));
}

function canBeTried(game: Game, open: readonly NodeId[]): Sentence {
  if (open.length === 0) return [];
  const places = open.every((id) => game.nodes.get(id)?.kind === 'place');
  return sentence(sayer(game).names(open, 1), places ? ' can be searched' : ' can be tried');
}

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "three", "one pupil", "12 pupils". */
function inWords(n: number, noun?: string): string {
  const word = WORDS[n] ?? String(n);
  return noun === undefined ? word : `${word} ${noun}${n === 1 ? '' : 's'}`;
}

/** When a box or the game ends: in this lesson, and in eight lessons in ten. */
export interface Opening {
  readonly name: string;
  /** Undefined where it does not come to it in this lesson. */
  readonly minute: number | undefined;
  readonly low: number;
  /** Undefined where more than one lesson in ten does not come so far. */
  readonly high: number | undefined;
}

/** "Green tin opens at minute 8.5; in 8 lessons in 10 from 7 to 11". */
export function openingText({ name, minute, low, high }: Opening): string {
  const here = minute === undefined ? `${name} stays shut` : `${name} opens at minute ${figure(minute)}`;
  const until =
    high === undefined ? `from ${figure(low)} on, or never` : `from ${figure(low)} to ${figure(high)}`;
  return `${here}; in 8 lessons in 10 ${until}`;
}

/** The last mark of the chart. */
export const THE_END = 'the end';

export function endText({ minute, low, high }: Omit<Opening, 'name'>): string {
  const here = minute === undefined ? '' : `It ends at minute ${figure(minute)}; `;
  return `${here}in 8 lessons in 10 from ${figure(low)} to ${figure(high ?? low)}`;
}
