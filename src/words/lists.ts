/** What stands on the lists behind the map. */
import { giversOf } from '../engine/handed-over.ts';
import { parentInUse } from '../engine/left-out.ts';
import type { Assessment } from '../findings/assess.ts';
import type { Finding } from '../findings/finding.ts';
import { isForFun, lessonOf } from '../game/defaults.ts';
import type { Game, GameNode, NodeId } from '../game/model.ts';
import { isGivenOut } from '../map/caption.ts';
import type { Caption } from '../map/layout.ts';
import { ownCopies } from '../sheets/copies.ts';
import type { SpotEntry } from '../sheets/lists/hidden.ts';
import type { Whereabouts } from '../sheets/lists/whereabouts.ts';
import type { Opener } from '../sheets/locks.ts';
import { fieldCaption, noteText, ownCaption } from './canvas.ts';
import { cautionNote } from './cautions.ts';
import { findingSentence } from './findings/index.ts';
import { kindOf } from './kinds.ts';
import { ownLockName } from './lock-name.ts';
import { list, minutesOf, numberWord } from './numbers.ts';
import { inHolderOf } from './places.ts';
import { capital, lockLabel, sayer, sentence } from './say.ts';
import { PANEL } from './screen.ts';
import type { Part, Sentence } from './sentence.ts';
import { stepNumbers } from './sheets.ts';

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

/** `fewer`: of something on the list there are fewer than teams. */
export const INTRO = {
  codes: (teams: number, ticks: Ticks, fewer: boolean): Sentence =>
    sentence(
      'Set each lock, shut it and open it again before its box is packed.',
      ...sets(teams, ` every lock is there ${teams} times`, ticks, fewer),
    ),
  contents: (teams: number, ticks: Ticks, fewer: boolean): Sentence =>
    sentence(
      'The box that is opened last is packed first, so that none is shut before all that belongs in it is inside.',
      ...sets(teams, ` every box is packed ${teams} times`, ticks, fewer),
    ),
  /** `later`: something is handed over or given out in play. */
  hidden: (teams: number, ticks: Ticks, fewer: boolean, later: boolean): Sentence =>
    sentence(
      later
        ? 'What lies in the room when the game begins, and what the teacher keeps to give out in play.'
        : 'What lies in the room when the game begins.',
      ...sets(teams, ` each thing is there ${teams} times`, ticks, fewer),
    ),
  order: (rescue: boolean, notes: boolean, total: string): Sentence =>
    sentence(
      'One way through the game, the quickest; teams may take another.',
      total,
      rescue
        ? ` Under each step: ${notes ? 'its note, then ' : ''}what to do when a team is stuck there.`
        : '',
    ),
};

/** What the times on the page mean, and for a game that can be won what they come to; empty for a page without times. */
export function timesTold({ game, measures, canBeWon }: Assessment, times: boolean): string {
  if (!times) return '';
  const each = ' Times are what one team is expected to take';
  if (!canBeWon) return `${each}.`;
  return `${each}; without a hitch ${minutesOf(measures.shortest, lessonOf(game).minutes)} in all.`;
}

/** Ticks: one for each set, one for all, none. */
export type Ticks = 'each' | 'one' | 'none';

const TICKED: Readonly<Record<Ticks, string>> = {
  each: ', with a tick for each set.',
  one: '; tick when all are done.',
  none: '.',
};

/** '6 sets:' and what that means; nothing where one is enough. */
function sets(teams: number, meaning: string, ticks: Ticks, fewer: boolean): Part[] {
  const many = `${meaning}${fewer ? ', fewer where it says so' : ''}`;
  return teams > 1 ? [' ', { strong: `${teams} sets:` }, `${many}${TICKED[ticks]}`] : [];
}

/** How many there are where not every team has its own: "one for all teams". Empty where each has. */
export function sharedText(copies: number | undefined): string {
  return copies === undefined ? '' : `${numberWord(copies)} for all teams`;
}

/** Where a thing is at the start: "in Red tin, in Window sill", "on the tables". Empty for a place. */
export function whereText(
  { game }: Assessment,
  { holders, caption, givenBy, minute }: Whereabouts,
): Sentence {
  const say = sayer(game);
  const parts = holders.map((holder) => inHolderOf(game, holder));
  if (givenBy.length > 0) parts.push(sentence('given after ', say.names(givenBy)));
  if (minute > 0) parts.push([noteText({ note: 'atMinute', minute, givenOut: givenBy.length === 0 })]);
  if (caption === 'tables' || caption === 'hand') parts.push([ownCaption(caption)]);
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

/** Of what leads to a lock not all is needed. */
export function anyOf(need: number): string {
  return `any ${need} of these`;
}

/** Under the name of what leads to a lock: "position 1, in Lens tin, in Low book shelf", "step 5". */
export function openerTold(assessment: Assessment, { node, at }: Opener, whereabouts: Whereabouts): Sentence {
  const { network, measures } = assessment;
  const number = measures.number[network.index.get(node) ?? -1] ?? 0;
  const parts: Sentence[] = [];
  if (at !== undefined) parts.push([positions(at)]);
  if (number > 0) parts.push([stepNumbers([number])]);
  const where = whereText(assessment, whereabouts);
  if (where.length > 0) parts.push(where);
  return sentence(...parts.flatMap((part, i) => [i === 0 ? '' : ', ', part]));
}

/** What is counted out is counted in, and what is shut can be opened by somebody. */
export const KEYS_AT_HAND =
  'Count keys and small parts out and in again. Keep the spare keys and these pages on you, so that every box can be opened at any time.';

export const NOTHING_TO_SET = 'nothing to set';
export const NO_LOCKS = 'There are no locks.';
export const NO_BOXES = 'There are no boxes.';
export const NOTHING_HIDDEN = 'Nothing lies in the room yet.';

/** Beside the name of a thing: its kind, and what else a teacher has to know of it. */
export function thingText({ game, network }: Assessment, id: NodeId): string {
  const node = game.nodes.get(id);
  if (!node) return '';
  const isHandedOver = giversOf(network, network.index.get(id) ?? -1).length > 0;
  return [
    kindOf(node),
    sharedText(ownCopies(game, id)),
    node.decoy === true ? noteText({ note: 'redHerring' }) : '',
    minuteText(node, isGivenOut(node, parentInUse(game, id) !== undefined, isHandedOver)),
    cautionNote(game, id),
  ]
    .filter((text) => text !== '')
    .join(', ');
}

function minuteText({ atMinute: minute = 0 }: GameNode, givenOut: boolean): string {
  return minute > 0 ? noteText({ note: 'atMinute', minute, givenOut }) : '';
}

export const PACKING = {
  empty: 'Nothing lies in it.',
  /** Behind a box in a box. */
  packed: (copies: number | undefined) =>
    copies === undefined ? 'packed before' : `packed before, ${sharedText(copies)}`,
} as const;

/** What the program has to say, with how grave it is: colour alone does not tell on a grey page. */
export function findingTold(game: Game, finding: Finding): Sentence {
  const level = finding.level === 'stops' ? PANEL.stops : PANEL.look;
  return sentence({ strong: `${level}: ` }, findingSentence(game, finding));
}

/** Under a lock: "word lock"; where the teacher has a name for it, "Small red padlock, key lock". */
export function lockTold(assessment: Assessment, lock: NodeId): Sentence {
  const node = assessment.game.nodes.get(lock);
  const own = node?.kind === 'fastener' ? ownLockName(assessment.game, node) : undefined;
  const fun = node && isForFun(node) ? `, ${noteText({ note: 'forFun' })}` : '';
  if (own === undefined || !node) return [`${lockText(assessment, lock)}${fun}`];
  return sentence({ node: lock, text: own }, `, ${kindOf(node)}${fun}`);
}

/** Beside a lock of a box: "shut Small red padlock (key lock); it opens with Red tag (in Lens tin)" */
export function lockShut(
  assessment: Assessment,
  lock: NodeId,
  keys: readonly { readonly key: NodeId; readonly where: Sentence }[],
): Sentence {
  const say = sayer(assessment.game);
  const node = assessment.game.nodes.get(lock);
  const own = node?.kind === 'fastener' ? ownLockName(assessment.game, node) : undefined;
  return sentence(
    own === undefined || !node
      ? `shut the ${lockText(assessment, lock)}`
      : sentence('shut ', { node: lock, text: own }, ` (${kindOf(node)})`),
    ...keys.map(({ key, where }, i) =>
      sentence(
        i === 0 ? '; it opens with ' : ' and ',
        say.name(key),
        where.length > 0 ? sentence(' (', where, ')') : '',
      ),
    ),
  );
}

/** How a place is opened: "found only after Walk the plan (step 12)". Empty for one that can be searched from the start. */
export function spotOpens(assessment: Assessment, { openers, need }: SpotEntry): Sentence {
  if (openers.length === 0) return [];
  return sentence(
    'Found only after ',
    need === undefined ? '' : `any ${need} of `,
    numbered(assessment, openers),
    '.',
  );
}

/** "Walk the plan (step 12) and Floor plan" */
function numbered({ game, network, measures }: Assessment, ids: readonly NodeId[]): Sentence {
  const say = sayer(game);
  const named = ids.map((id) => {
    const number = measures.number[network.index.get(id) ?? -1] ?? 0;
    return sentence(say.name(id), number > 0 ? ` (${stepNumbers([number])})` : '');
  });
  return sentence(
    ...named.flatMap((name, i) => [i === 0 ? '' : i === named.length - 1 ? ' and ' : ', ', name]),
  );
}

/** When the teacher hands it over: "given after Start the pump (step 8)". */
export function givenAfter(assessment: Assessment, puzzles: readonly NodeId[]): Sentence {
  return sentence('given after ', numbered(assessment, puzzles));
}

/** Under the name of a box: where it lies, how many there are where not each team has one, then the teacher's note. */
export function boxTold(where: Sentence, copies: number | undefined, note: string | undefined): Sentence {
  return sentence(capital(shared(where, copies)), '.', note === undefined ? '' : ` ${note}`);
}

/** Under the name of a place or box: "Caution: ways out stay free." Empty where it has none of its own. */
export function cautionTold(game: Game, id: NodeId): Sentence {
  const note = cautionNote(game, id);
  return note === '' ? [] : sentence(capital([note]), '.');
}

/** "in Red tin, one for all teams" */
export function shared(where: Sentence, copies: number | undefined): Sentence {
  return copies === undefined ? where : sentence(where, `, ${sharedText(copies)}`);
}

/** Under the name of a place: "One for all teams." Empty where each team has its own. */
export function placeShared(copies: number | undefined): Sentence {
  return copies === undefined ? [] : sentence(capital([sharedText(copies)]), '.');
}

/** The heading over what lies in no place. */
export function spotCaption(spot: Caption): string {
  return fieldCaption(spot);
}

export const HIDDEN = {
  empty: 'Nothing is hidden here.',
};

export const ORDER = {
  noSteps: 'No step can be done yet.',
  neverReached: 'Never reached',
};

/** A note that begins so is a hint, and needs no word before it. */
const IF_STUCK = /^(if (?:you are |they are |a team is )?stuck\b[:,]?)\s*/iu;

/** The teacher's own note under a step: "Note: Taped to its back.", "If stuck: shine at the margin." */
export function noteTold(note: string): Sentence {
  const begins = IF_STUCK.exec(note);
  if (begins === null) return sentence({ strong: 'Note:' }, ` ${note}`);
  return sentence({ strong: begins[1] ?? '' }, ` ${note.slice(begins[0].length)}`);
}

/** What to do at a step where a team is stuck. After a note that says so too, it is what is left to do. */
export function rescueTold(note: string | undefined, rescue: Sentence): Sentence {
  const isHint = note !== undefined && /\bstuck\b/iu.test(note);
  return sentence({ strong: isHint ? 'Still stuck:' : 'If stuck:' }, ' ', rescue);
}

/** Every name, however many: this is where they are looked up. */
export function neverReachedText({ game }: Assessment, ids: readonly NodeId[]): Sentence {
  const say = sayer(game);
  return sentence(capital(say.names(ids, ids.length)), ids.length === 1 ? ' is' : ' are', ' never reached.');
}
