/** What stands on the lists behind the map. */
import type { Assessment } from '../findings/assess.ts';
import type { NodeId } from '../game/model.ts';
import type { Opener } from '../sheets/lists/codes.ts';
import type { SpotEntry } from '../sheets/lists/hidden.ts';
import type { Whereabouts } from '../sheets/lists/whereabouts.ts';
import { fieldCaption, noteText, ownCaption } from './canvas.ts';
import { kindOf } from './kinds.ts';
import { count, list } from './numbers.ts';
import { capital, lockLabel, sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

export const COLUMNS = {
  lock: 'Lock',
  code: 'Set to',
  openers: 'What gives it',
  set: 'set',
  tried: 'tried',
  step: 'Step',
  minutes: 'Time',
  /** Above the margin left free. */
  pencil: 'Notes',
} as const;

export const CONTINUED = 'continued';

/** '6 sets', or nothing where one is enough. */
export function sets(teams: number): string {
  return teams > 1 ? `${teams} sets` : '';
}

export const INTRO = {
  codes: (teams: number) =>
    sentences(
      'Set each lock, shut it and open it again before its box is packed.',
      teams > 1 && `Every lock is needed ${teams} times, once in each set: tick when all are done.`,
    ),
  contents: (teams: number) =>
    sentences(
      'The box that is opened last is packed first, so none is shut before all that belongs in it is inside.',
      teams > 1 && `Every box is packed ${teams} times, once for each set.`,
    ),
  hidden: (teams: number) =>
    sentences(
      'What lies in the room when the game begins.',
      teams > 1 && `Everything is needed ${teams} times, once in each set.`,
    ),
  order: (rescue: boolean, times: boolean) =>
    sentences(
      'The way through the game that takes the shortest time; teams may find another.',
      times && 'Times are expected times of one team.',
      rescue && 'Under a step stands what to do when a team does not get on.',
    ),
};

function sentences(...texts: readonly (string | false)[]): string {
  return texts.filter((text) => text !== false).join(' ');
}

/** Where a thing is at the start: "in Red tin, in Window sill", "on the tables". Empty for a place. */
export function whereText({ game }: Assessment, { holders, caption, givenBy }: Whereabouts): Sentence {
  const say = sayer(game);
  const parts = holders.map((holder) => sentence('in ', say.name(holder)));
  if (caption === 'given') parts.push(sentence('given for ', say.names(givenBy)));
  else if (caption !== undefined) parts.push([ownCaption(caption)]);
  return sentence(...parts.flatMap((part, i) => [i === 0 ? '' : ', ', part]));
}

/** "number lock", with what tells it from another of that type on the box. */
export function lockText({ game }: Assessment, lock: NodeId): string {
  const node = game.nodes.get(lock);
  return node?.kind === 'fastener' ? lockLabel(game, node) : '';
}

/** "position 2", "positions 1 and 3" */
function positions(at: readonly number[]): string {
  return `${at.length === 1 ? 'position' : 'positions'} ${list(at.map(String))}`;
}

/** What leads to a lock, one line for each: "Cube scrap: position 1"; where not all are needed, first how many. */
export function openerLines(
  { game }: Assessment,
  openers: readonly Opener[],
  need: number | undefined,
): Sentence[] {
  const say = sayer(game);
  const lines = openers.map(({ node, at }) =>
    sentence(say.name(node), at === undefined ? '' : `: ${positions(at)}`),
  );
  return need === undefined ? lines : [[`any ${need} of these:`], ...lines];
}

export const SETTINGS = {
  nothing: 'nothing to set',
  noKey: 'no key yet',
  /** Beside the dotted line. */
  missing: 'no code yet',
} as const;

/** Beside the name of a thing: its kind, and what else a teacher has to know of it. */
export function thingText({ game }: Assessment, id: NodeId): string {
  const node = game.nodes.get(id);
  if (!node) return '';
  return [
    kindOf(node),
    node.decoy === true ? noteText({ note: 'redHerring' }) : '',
    (node.atMinute ?? 0) > 0 ? noteText({ note: 'atMinute', minute: node.atMinute ?? 0 }) : '',
  ]
    .filter((text) => text !== '')
    .join(', ');
}

export const PACKING = {
  empty: 'Nothing lies in it.',
  /** Behind a box in a box. */
  packed: 'packed before',
  shut: (locks: number) => (locks === 0 ? 'No lock: shut it' : 'Shut with'),
  keyLies: ({ game }: Assessment, keys: readonly NodeId[], where: Sentence): Sentence =>
    sentence('its key ', sayer(game).names(keys), where.length > 0 ? ' goes ' : '', where),
};

/** 'A set for each team:' before the numbers of the sets. */
export const SET_NUMBERS = 'set';

/** How a place is opened: "found only after Walk the plan (step 12)". Empty for one that can be searched from the start. */
export function spotOpens(assessment: Assessment, { openers, need }: SpotEntry): Sentence {
  if (openers.length === 0) return [];
  const { game, network, measures } = assessment;
  const say = sayer(game);
  const named = openers.map((id) => {
    const number = measures.number[network.index.get(id) ?? -1] ?? 0;
    return sentence(say.name(id), number > 0 ? ` (step ${number})` : '');
  });
  return sentence(
    'Not to be searched before ',
    need === undefined ? '' : `any ${need} of `,
    ...named.flatMap((name, i) => [i === 0 ? '' : i === named.length - 1 ? ' and ' : ', ', name]),
    '.',
  );
}

/** The heading over what lies in no place. */
export function spotCaption(spot: 'tables' | 'hand' | 'given'): string {
  return fieldCaption(spot);
}

export const HIDDEN = {
  empty: 'Nothing is hidden here.',
};

export const ORDER = {
  noSteps: 'No step can be done yet.',
  neverReached: 'Never reached',
  /** Before the teacher's own note on a step. */
  note: 'Note: ',
  rescue: 'If a team does not get on: ',
};

/** Every name, however many: this is where they are looked up. */
export function neverReachedText({ game }: Assessment, ids: readonly NodeId[]): Sentence {
  const say = sayer(game);
  return sentence(capital(say.names(ids, ids.length)), ids.length === 1 ? ' is' : ' are', ' never reached.');
}

export function boxCount(boxes: number): string {
  return count(boxes, 'box', 'boxes');
}
