/** What is said about keeping, saving, opening and sharing games. Moments are milliseconds since 1970, as the clock gives them. */

import { TITLE } from './screen.ts';

/** The title that a list, a sentence or a printed page shows. */
export function titleOf(title: string | undefined): string {
  const written = title?.trim();
  return written ? written : TITLE.nameless;
}

export function copyTitle(title: string | undefined): string {
  return `${titleOf(title)} (copy)`;
}

const time = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long' });
const dayOfYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** 'at 14:05' today, 'on 12 March' this year, 'on 12 March 2025' before. */
export function moment(when: number, now: number): string {
  const [then, today] = [new Date(when), new Date(now)];
  if (then.toDateString() === today.toDateString()) return `at ${time.format(then)}`;
  return `on ${(then.getFullYear() === today.getFullYear() ? day : dayOfYear).format(then)}`;
}

function changesSince(changes: number): string {
  return changes === 1 ? '1 change since' : `${changes} changes since`;
}

/** The clock of the page may be a minute old; a moment further ahead than this means that the clock was set back. */
const AHEAD = 2 * 60_000;

/** When the open game was last saved to a file, and what has changed since. */
export function savedToFile(filed: number | undefined, changes: number, now: number): string {
  if (filed === undefined) return 'Not yet saved to a file';
  const saved = filed > now + AHEAD ? 'Saved to a file' : `Saved to a file ${moment(filed, now)}`;
  return changes > 0 ? `${saved}; ${changesSince(changes)}` : saved;
}

/** One line under a title in the list of games. */
export function keptLine(edited: number, filed: number | undefined, changes: number, now: number): string {
  return `Changed ${moment(edited, now)}. ${savedToFile(filed, changes, now)}.`;
}

export const KEEP = {
  save: 'Save to a file',
  elsewhere: 'Another window has this game.',
  takeOver: 'Take it over',
  refused: 'This browser keeps nothing after the page is closed: save the game to a file.',
  full: 'The browser has no room left and the last changes are only on this page: save the game to a file.',
  failed: 'The browser could not keep the last changes: save the game to a file.',
};

export const GAMES = {
  games: 'Games',
  fresh: 'New game',
  open: 'Open a file',
  save: 'Save to a file',
  kept: 'Kept in this browser',
  none: 'No game is kept here yet.',
  isOpen: 'Open now. ',
  examples: 'Examples',
  deleted: 'Deleted, kept for seven days',
  duplicate: 'Duplicate',
  remove: 'Delete',
  bringBack: 'Bring back',
  openNamed: (title: string) => `Open ${title}`,
  duplicateNamed: (title: string) => `Duplicate ${title}`,
  removeNamed: (title: string) => `Delete ${title}`,
  bringBackNamed: (title: string) => `Bring ${title} back`,
};

export const BEGIN = {
  label: 'Ways to begin',
  line: 'Nothing is hidden yet. Drag a thing from the left edge, or begin in one of three ways.',
  nothing: 'From nothing',
  nothingLine: 'Hiding places first, then boxes with locks on them, and what opens each lock.',
  nothingAct: 'Begin empty',
  example: 'From an example',
  exampleLine: 'It opens as a copy that is yours to change.',
  file: 'From a file',
  fileLine: 'A game that you or a colleague saved. It can also be dropped anywhere on the page.',
  fileAct: 'Open a file',
};

export const DROP = {
  here: 'Let go to open the file. The open game stays as it is.',
};

export const READ = {
  label: 'What happened to a game',
  notOpened: (file: string) => `“${file}” was not opened.`,
  dismiss: 'Close',
  saveRaw: 'Save what is there',
};

export const UNREADABLE = 'The browser could not read the file.';

/** What has just happened to a game, and is not seen on the map. */
export const NEWS = {
  here: (title: string) => `“${title}” is already here, just as in the file.`,
  beside: (title: string) => `“${title}” was opened as a copy beside the one that was here.`,
  several: (count: number) => `${count} games were opened; all are in the list of games.`,
  damaged: (title: string) =>
    `“${title}” cannot be read: what the browser kept of it is damaged. The other games are not affected.`,
  storeSilent:
    'The browser does not answer from its store of games. What is on this page can still be saved to a file.',
  noRoom: 'The browser has no room left for games. What is on this page can still be saved to a file.',
  noRoomFor: (title: string) =>
    `“${title}” is open, but the browser has no room left to keep it: save it to a file after a change.`,
  notStored: (title: string) =>
    `“${title}” is open, but the browser could not keep it: save it to a file after a change.`,
  onlyHere: (title: string) =>
    `The last changes of “${title}” are only on this page. Save it to a file before another game is opened.`,
  heldElsewhere: (title: string) => `“${title}” is being changed in another window, so it stays.`,
  notHere: 'The game of this address is not kept in this browser.',
  noAnswer: 'The other window does not answer. Close it, and this one takes the game over.',
  exampleMissing: (title: string) => `The example “${title}” could not be loaded.`,
  deleted: (title: string) => `“${title}” was deleted. It stays in Games for seven days.`,
};
