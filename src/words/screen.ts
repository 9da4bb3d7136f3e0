/** What stands on the page itself: its parts, buttons and captions. */
import type { LessonPlan } from '../game/defaults.ts';
import type { Kind } from '../game/model.ts';
import { count } from './numbers.ts';

const PRODUCT = 'Latchmap';

/** The plain word for each kind, as it stands under the things to drag. */
export const KIND_NAMES: Readonly<Record<Kind, string>> = {
  place: 'Place',
  container: 'Box',
  fastener: 'Lock',
  key: 'Key',
  clue: 'Clue',
  tool: 'Tool',
  puzzle: 'Puzzle',
  prize: 'Prize',
};

export const PALETTE = {
  label: 'Things to drag onto the map',
  add: (name: string) => `${name}: drag it onto the map, or press to add it`,
};

export const PAGE = {
  map: 'Map of the game',
  panel: 'What is true of the game, and the form of what is selected',
  verdict: 'Can it be won?',
  /** In its place until what works it out has been fetched. */
  unknown: 'Working out whether it can be won …',
  dismiss: 'Close',
  firstThing: 'Drag a place or a box from the left onto this map, or press it there.',
  documentTitle: (title: string) => (title === '' ? PRODUCT : `${title} – ${PRODUCT}`),
};

export const BREAKDOWN = {
  what: 'The page has stopped.',
  next: 'Something in it failed that should not have. What was kept in this browser is still there. Save the open game to a file to be sure of it, then load the page again.',
  save: 'Save to a file',
  again: 'Load the page again',
};

export const TITLE = {
  nameless: 'Game without a title',
  label: 'Title of the game',
  change: (title: string) => `${title}: change the title`,
};

/** The form itself has its words in lesson.ts, which loads with it. */
export const LESSON_OPEN = 'Change the lesson';

/**
 * '24 pupils in 6 teams', ', each with its own set', ' · 40 minutes': the middle is left out where there is no room, and where the
 * teams share something.
 */
export function lessonLine(
  lesson: LessonPlan,
  shares: boolean,
): readonly [who: string, sets: string, time: string] {
  const pupils = count(lesson.pupils, 'pupil');
  const time = ` · ${count(lesson.minutes, 'minute')}`;
  return lesson.teams > 1
    ? [`${pupils} in ${count(lesson.teams, 'team')}`, shares ? '' : ', each with its own set', time]
    : [pupils, '', time];
}

export const SHARE = {
  share: 'Share',
  line: 'The file holds the whole game. A colleague opens it on this page under Games, or drops it onto the page. Nothing is sent by itself.',
  save: 'Save to a file',
};

export const PANEL = {
  tab: { overview: 'Findings and order of play', form: 'Form', lift: 'What falls' },
  close: 'Map',
  stops: 'Stops the game',
  look: 'Worth a look',
  empty:
    'What stops the game, what is worth a look and the order of play stand here as soon as something lies on the map.',
  order: 'Order of play',
  steps: (n: number) => count(n, 'step'),
  stopsAfter: (n: number) => `stops after ${n}`,
  noSteps: 'No step can be done yet.',
  show: 'Show',
  longestChain: (n: number) => `Longest chain: ${count(n, 'step')} one after another`,
  needed: (n: number) => (n === 1 ? '1 step cannot be skipped' : `${n} steps cannot be skipped`),
  inChain: ', in the chain',
  cannotSkip: ', cannot be skipped',
  mark: 'Mark them in the list',
  unmark: 'Mark them no longer',
};

export const LIFT = {
  inClass: 'If stuck',
  heading: (name: string) => `Without ${name}`,
  putBack: 'Put it back',
  notUsed: 'It is not used today.',
};
