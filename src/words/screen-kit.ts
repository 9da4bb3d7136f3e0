/** What stands on the pages of my kit and my room. */

import { graphemesOf } from '../game/graphemes.ts';
import type { ItemOf, KitItem, What } from '../kit/model.ts';
import { lockName } from './kinds.ts';
import { KIT_COMMAND } from './kit-command.ts';
import { count, list } from './numbers.ts';

export const KIT = {
  title: KIT_COMMAND,
  pages: 'Pages of my kit',
  page: { game: 'For this game', have: 'What I have', room: 'My room' },
  close: 'Close',
  undo: 'Undo',
  redo: 'Redo',
  files: 'Files',
  openFile: 'Open a file',
  fileLine:
    'A kit from a file is added to what is here: CSV from a spreadsheet, or JSON. It can also be dropped anywhere here.',
  saveAll: 'Save everything (JSON)',
  saveItems: 'Save what I have (CSV)',
  savePlaces: 'Save my room (CSV)',
  added: (file: string, things: number, places: number) => {
    const parts = [
      ...(things > 0 ? [count(things, 'thing')] : []),
      ...(places > 0 ? [count(places, 'hiding place')] : []),
    ];
    if (parts.length === 0) return `All that is in “${file}” was here already.`;
    return `Added from “${file}”: ${list(parts)}. What was here stays.`;
  },
  onlyFile: 'Keep only what is in the file',
  replaced: (file: string, things: boolean, places: boolean) => {
    const what = things && places ? 'What I have and my room are' : things ? 'What I have is' : 'My room is';
    return `${what} now as “${file}” says. Undo brings the rest back.`;
  },
  notTaken: (file: string) => `“${file}” was not taken.`,
  saveRaw: 'Save what is there',
  here: 'Let go to add what is in the file. What is here stays.',
  dismiss: 'Close the message',
};

/** How safe the last changes are. */
export const KIT_STORED = {
  kept: 'Kept in this browser, beside the games',
  storing: 'Being kept',
  refused: 'This browser keeps nothing after the page is closed: save the kit to a file.',
  full: 'The browser has no room left and the last changes are only on this page: save the kit to a file.',
  failed: 'The browser could not keep the last changes: save the kit to a file.',
};

export const KIT_DAMAGED =
  'What the browser kept of my kit cannot be read. It is put by and nothing is written over it. The games are not affected.';

/** The file names of what is saved. */
export const KIT_FILES = {
  all: 'my-kit.json',
  items: 'my-kit.csv',
  places: 'my-room.csv',
  damaged: 'my-kit-damaged.txt',
};

export const HAVE = {
  add: 'Tap what is there',
  addHint: 'Each tap is one more.',
  here: 'In my kit',
  none: 'Nothing yet. Tap a lock on the left for each one that is there, or take them from a game.',
  groups: { lock: 'Locks', box: 'Boxes', hasp: 'Hasps', tool: 'Lamps and tools' } satisfies Record<
    What,
    string
  >,
  plates: { code: 'Code locks', key: 'Key locks', box: 'Boxes and hasps', tool: 'Lamps and tools' },
  fewer: (title: string) => `One fewer: ${title}`,
  more: (title: string) => `One more: ${title}`,
  count: (title: string) => `How many: ${title}`,
  details: 'Details',
  detailsOf: (title: string) => `Details: ${title}`,
  remove: (title: string) => `Remove ${title}`,
  label: 'Label to find it by',
  labelHint: 'What is written or painted on it, such as ‘red’ or ‘A’.',
  kind: 'What it is',
  wheels: 'Wheels',
  wheelsHint: 'How many wheels it has. Empty: any number.',
  symbols: 'What each wheel shows',
  symbolsHint: 'A line for each wheel; a single line holds for all. Empty: any signs.',
  marks: 'Marks on the dial',
  marksHint: 'Empty: 40, from 0 to 39.',
  shackle: 'Shackle, mm thick',
  clearance: 'Room in the shackle, mm',
  keyedAlike: 'Key group',
  keyedAlikeHint: 'For locks with like keys a word, such as ‘blue bag’. One key opens all locks of a group.',
  keys: 'Keys for each lock',
  takes: 'Kept shut by',
  takesNames: { '': 'anything', nothing: 'nothing but its lid', lock: 'one lock', hasp: 'a hasp' },
  hole: 'Hole, mm wide',
  round: 'Staple thickness, mm',
  holes: 'Holes for locks',
  batteries: 'Needs batteries',
  note: 'Note',
  toBuy: (n: number) => `${n} to buy`,
  bought: 'Bought',
  boughtNamed: (title: string) => `Bought: ${title}`,
  from: 'Take it from a game',
  fromHint: 'Adds what the teams of the game need and is not here yet.',
  notRead: (title: string) => `“${title}” could not be read, so nothing was taken from it.`,
  noGames: 'No game is kept here yet.',
  taken: (title: string) => `What “${title}” needs is in my kit now. Take away what is not there.`,
  takenAlready: (title: string) => `All that “${title}” needs was in my kit already.`,
};

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** On the plates to tap. */
export const TEMPLATE_NAMES = {
  number3: 'number lock, 3 wheels',
  number4: 'number lock, 4 wheels',
  word4: 'word lock, 4 wheels',
  word5: 'word lock, 5 wheels',
  direction: 'direction lock',
  dial: 'dial lock',
  picture: 'picture lock',
  key: 'key lock',
  typed: 'typed-code lock',
  box: 'box, tin or bag',
  hasp: 'hasp',
  uvLamp: 'UV lamp',
  torch: 'torch',
  magnifier: 'magnifier',
  mirror: 'mirror',
};

/** Why something typed into a field of the kit cannot be taken. */
export const WRONG_KIT = {
  count: 'A whole number from 0 to 1000.',
  fromOne: 'A whole number from 1 to 1000, or nothing.',
  holes: 'A whole number from 1.',
  wheels: 'A whole number from 1 to 20, or nothing.',
  millimetres: 'Millimetres, such as 6 or 6.5, or nothing.',
};

export const ROOM = {
  add: 'Add a hiding place',
  addAct: 'Add',
  placeholder: 'Lowest shelf by the window',
  hint: 'In the order of the walk that sets the room up.',
  there: (name: string) => `${name} is there already.`,
  none: 'No hiding place yet. Type the first, and press Enter.',
  name: 'Name',
  zone: 'Zone',
  zoneHint: 'Reading corner, group tables …',
  nameOf: (n: number) => `Name of place ${n}`,
  zoneOf: (name: string) => `Zone of ${name}`,
  offLimits: 'Off limits',
  offLimitsOf: (name: string) => `Off limits: ${name}`,
  earlier: (name: string) => `Earlier on the walk: ${name}`,
  later: (name: string) => `Later on the walk: ${name}`,
  remove: (name: string) => `Remove ${name}`,
  moved: (name: string, place: number) => `${name} is number ${place} on the walk.`,
  nameless: 'a place without a name',
};

function wheelsText(item: ItemOf<'lock'>): string | undefined {
  if (item.wheels) return count(item.wheels.length, 'wheel');
  return item.marks === undefined ? undefined : `${item.marks} marks`;
}

/** What it is: "number lock, 3 wheels", "hasp, 6 holes". */
export function itemKind(item: KitItem): string {
  switch (item.what) {
    case 'lock':
      return [lockName(item.type), wheelsText(item)].filter((part) => part !== undefined).join(', ');
    case 'box':
      return item.takes === undefined ? 'box' : `box, kept shut by ${HAVE.takesNames[item.takes]}`;
    case 'hasp':
      return `hasp, ${count(item.holes, 'hole')}`;
    case 'tool':
      return 'lamp or tool';
  }
}

/** Its label, else what it is. */
export function itemTitle(item: KitItem): string {
  return item.label.trim() || itemKind(item);
}

const isWholeAlphabet = (wheel: string) => graphemesOf(wheel).join('') === ALPHABET;

/** What the wheels of a word lock carry: taps take all letters for granted, and few locks have them. */
function lettersText(wheels: readonly string[]): string {
  const other = wheels.findIndex((wheel) => !isWholeAlphabet(wheel));
  return other < 0
    ? 'A to Z on each wheel: see whether the lock has them'
    : `wheel ${other + 1}: ${graphemesOf(wheels[other] ?? '').join(' ')}`;
}

/** What else is known of it, on one line; empty for a thing of which nothing is. */
export function itemFacts(item: KitItem): string {
  const facts: string[] = [];
  if (item.what === 'lock') {
    if (item.wheels && item.type === 'word') facts.push(lettersText(item.wheels));
    if (item.keyedAlike) facts.push(`key group: ${item.keyedAlike}`);
    if (item.shackleMm !== undefined) facts.push(`shackle ${item.shackleMm} mm`);
  }
  if (item.what === 'box' && item.holeMm !== undefined) facts.push(`hole ${item.holeMm} mm`);
  if (item.what === 'tool' && item.batteries) facts.push('needs batteries');
  if (item.note) facts.push(item.note);
  return facts.join(' · ');
}

/** What there is of a sort: "12 locks of 4 kinds". */
export function kitSum(items: readonly KitItem[]): string {
  const total = (what: What) => items.reduce((sum, item) => (item.what === what ? sum + item.count : sum), 0);
  const parts = [
    count(total('lock'), 'lock'),
    ...(total('box') > 0 ? [count(total('box'), 'box', 'boxes')] : []),
    ...(total('hasp') > 0 ? [count(total('hasp'), 'hasp')] : []),
    ...(total('tool') > 0 ? [count(total('tool'), 'lamp or tool', 'lamps or tools')] : []),
  ];
  return list(parts);
}
