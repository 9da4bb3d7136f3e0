/** What stands on the map itself: captions, states, tabs, and how things are named to a screen reader. */
import { isForFun, sharedOf } from '../game/defaults.ts';
import type { GameNode, Kind } from '../game/model.ts';
import type { Caption, Note } from '../map/layout.ts';
import { kindName, kindOf, kindPlural } from './kinds.ts';
import { count, minutes } from './numbers.ts';

const CAPTIONS: Readonly<Record<Caption, string>> = {
  tables: 'On the tables from the start',
  hand: 'In hand from the start',
  given: 'Given by the teacher',
};

/** Above a field that several things share. */
export function fieldCaption(caption: Caption): string {
  return CAPTIONS[caption];
}

const OWN_CAPTIONS: Readonly<Record<Caption, string>> = {
  tables: 'on the tables',
  hand: 'in hand from the start',
  given: 'given by the teacher',
};

/** Above a thing that stands alone. */
export function ownCaption(caption: Caption): string {
  return OWN_CAPTIONS[caption];
}

export function noteText(note: Note): string {
  switch (note.note) {
    case 'need':
      return `any ${note.need} of ${note.of}`;
    case 'redHerring':
      return 'red herring';
    case 'forFun':
      return 'for fun';
    case 'shared':
      return `${note.copies} for all`;
    case 'checked':
      return 'teacher checks';
    case 'notToday':
      return 'not today';
    case 'atMinute':
      return note.givenOut ? `given out at minute ${note.minute}` : `from minute ${note.minute}`;
  }
}

/** '2 clues, 1 key': what lies in a tray that is not drawn open. */
export function holdsText(holds: readonly { readonly kind: Kind; readonly count: number }[]): string {
  if (holds.length === 0) return 'empty';
  return holds.map((entry) => count(entry.count, kindName(entry.kind), kindPlural(entry.kind))).join(', ');
}

/** After the numbers of some steps: so many more. */
export const moreSteps = (more: number) => `+${more}`;

/** Before a puzzle's answer. */
export const GIVES = 'gives';

/** Beside a lock: it never opens, with or without a prize behind it; the code on it is not the one that is found out; it stays shut while a thing is lifted. */
export const LOCK_STATES = {
  cannotOpen: 'cannot open',
  keptShut: 'cannot open',
  wrongCode: 'wrong code',
  staysShut: 'stays shut',
} as const;

export const FOLDING = { foldUp: (name: string) => `Fold up ${name}` };

export const HEAT = {
  show: 'Show where the time goes',
  minutes: (value: number) => minutes(value),
};

export const ZOOM = {
  label: 'Size of the map',
  in: 'Larger',
  out: 'Smaller',
  reset: 'Back to full size',
  fit: 'Fit',
  fitLong: 'The whole map in view',
  percent: (zoom: number) => `${Math.round(zoom * 100)} %`,
  overview: 'Overview of the map',
};

export const DRAGGING = {
  into: (name: string) => `Into ${name}`,
  onto: (name: string) => `Onto ${name}`,
  takeOut: (name: string) => `Out of ${name}`,
  link: 'Needed for …',
  linkTo: (name: string) => `Needed for ${name}`,
  drawLink: (name: string) => `Drag to what ${name} is needed for`,
};

/** The name that a thing has until it gets one of its own. */
export function newName(kind: Kind): string {
  return `New ${kindName(kind)}`;
}

/** What the map says to a screen reader about one thing: 'Green tin, box, step 4, in Window sill'. */
export function spokenName(
  node: GameNode,
  told: {
    readonly number: number;
    /** Of the steps in a folded box. */
    readonly steps: readonly number[] | undefined;
    readonly code: string | undefined;
    readonly parent: string | undefined;
    readonly holds: string | undefined;
    readonly state: string | undefined;
    readonly time: string | undefined;
    readonly inChain: boolean;
    readonly pinned: boolean;
  },
): string {
  const kind = kindOf(node);
  const shared = sharedOf(node);
  const parts = [
    node.name.trim() === '' ? undefined : node.name.trim(),
    kind,
    told.number > 0 ? `step ${told.number}` : undefined,
    told.code === undefined
      ? undefined
      : node.kind === 'fastener'
        ? `code ${told.code}`
        : `gives ${told.code}`,
    told.parent === undefined ? undefined : `${node.kind === 'fastener' ? 'on' : 'in'} ${told.parent}`,
    told.holds,
    told.steps && told.steps.length > 0
      ? `with ${told.steps.length === 1 ? 'step' : 'steps'} ${told.steps.join(', ')}`
      : undefined,
    told.state,
    told.time,
    told.inChain ? 'decides the end' : undefined,
    node.leftOut === true ? 'not today' : undefined,
    node.decoy === true ? 'red herring' : undefined,
    isForFun(node) ? 'for fun' : undefined,
    shared === undefined ? undefined : `${shared} for all teams`,
    node.checked === true ? 'checked by the teacher' : undefined,
    told.pinned ? 'pinned' : undefined,
  ];
  return parts.filter((part) => part !== undefined).join(', ');
}

/** What each thing is to a screen reader, before its name. */
export const THING_ROLE = 'thing on the map';
