/** A colleague's game against my kit and my room: what is there, what is short, what is called otherwise, what is to be read again, what can be left out. */
import { isLeftOut } from '../engine/left-out.ts';
import type { Game, NodeId } from '../game/model.ts';
import type { Line, PlaceLine, Plan, RereadLine, ShortLine, SpareLine } from '../kit/adapt/plan.ts';
import type { Way } from '../kit/adapt/readings.ts';
import type { RereadReason } from '../kit/adapt/rereading.ts';
import type { Spot } from '../kit/adapt/texts.ts';
import type { Fitting } from '../kit/fit/index.ts';
import type { KitItem } from '../kit/model.ts';
import { FOR_GAME } from './kit-for-game.ts';
import { count, list, minutesInWords } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import { itemKind } from './screen-kit.ts';
import { plain, type Sentence } from './sentence.ts';

export const ADAPT = {
  title: (game: string) => `Adapt “${game}”`,
  close: 'Close',
  undo: 'Undo',
  redo: 'Redo',
  untouched: 'The first change makes a copy. The game as it came stays in Games.',
  copied: (title: string) => `This is a copy. “${title}” is in Games as it came.`,
  sections: {
    short: 'What is short',
    rename: 'What is called otherwise here',
    reread: 'To be read again',
    spare: 'What can be left out',
  },
  nothingShort: 'Nothing.',
  nothingToRename: 'Nothing: the names fit.',
  nothingToRead: 'Nothing.',
  nothingToSpare: 'Nothing without making it another game.',
  spares: {
    working: 'Working out what can be left out.',
    failed: 'What can be left out could not be worked out.',
  },
  spareHint: 'If you like. Each was tried: the game can still be won.',
  emptyKit: 'My kit is empty, so no locks are held against it.',
  fillKit: 'Fill my kit',
  emptyRoom: 'My room has no hiding places yet, so no names are held against it.',
  fillRoom: 'Describe my room',
  newName: 'Its name here',
  exactly: 'Where exactly (for the teacher)',
  rename: 'Rename',
  renameNamed: (name: string) => `Rename ${name}`,
  keep: 'Keep the name',
  keepNamed: (name: string) => `Keep the name ${name}`,
  namesHere: 'Free places of my room',
  changesToo: 'Changes with it',
  notChanged: 'Not changed, to be read',
  takeText: 'Use this text',
  takeTextNamed: (name: string) => `Use this text for ${name}`,
  right: 'Right as it is',
  rightNamed: (name: string) => `${name} is right as it is`,
  show: 'Show on the map',
  showNamed: (name: string) => `Show on the map: ${name}`,
  leaveOut: 'Leave it out',
  leaveOutNamed: (name: string) => `Leave it out: ${name}`,
  back: 'Undo',
  backNamed: (line: string) => `Undo: ${line}`,
  cannotGoBack: 'What it changed has been changed again since.',
  was: 'Now',
  state: { open: 'to do', done: 'done', kept: 'stays' },
  more: (n: number) => `${count(n, 'more way', 'more ways')}`,
} as const;

/** What the fields of a text are called here. */
export function fieldName({ field }: Spot): string {
  switch (field) {
    case 'name':
      return 'Name';
    case 'text':
      return 'Text';
    case 'note':
      return 'Note for the teacher';
    case 'otherWay':
      return 'The other way';
    case 'title':
      return 'Title';
    case 'summary':
      return 'Summary';
  }
}

/** 'The text of Floor plan'. */
export function spotSentence(game: Game, spot: Spot): Sentence {
  if (spot.of === null) return [spot.field === 'title' ? 'The title' : 'The summary'];
  const say = sayer(game);
  if (spot.field === 'name') return sentence('The name of ', say.the(spot.of));
  return sentence(say.title(spot.of), spot.field === 'note' ? ', note' : '');
}

const isToDo = ({ sort }: Line) => sort !== 'spare';

/** Which of the two lists a game is held against. */
export interface Known {
  readonly kit: boolean;
  readonly room: boolean;
}

/** What is said where nothing is to be done. */
function fits({ kit, room }: Known): string {
  if (kit && room) return 'It fits my kit and my room as it is.';
  if (kit) return 'It fits my kit as it is. My room is empty: no places compared.';
  if (room) return 'It fits my room as it is. My kit is empty: no locks compared.';
  return 'Nothing compared yet: my kit and my room are empty.';
}

/** How far down the list, in one sentence. */
export function progressSentence({ lines }: Pick<Plan, 'lines'>, canBeWon: boolean, known: Known): string {
  const all = lines.filter(isToDo);
  const open = all.filter(({ state }) => state === 'open');
  const of = (sorts: readonly Line['sort'][]) => open.filter(({ sort }) => sorts.includes(sort)).length;
  const [short, names, texts] = [of(['short']), of(['place', 'thing']), of(['reread'])];
  const left = [
    ...(short > 0 ? [count(short, 'shortage')] : []),
    ...(names > 0 ? [count(names, 'name')] : []),
    ...(texts > 0 ? [count(texts, 'text')] : []),
  ];
  const isAllThere = all.every(({ sort, state }) => sort !== 'short' || state === 'done');
  const won = canBeWon ? (isAllThere ? 'It can be won.' : FOR_GAME.withEverything) : 'It cannot be won yet.';
  if (all.length === 0) return `${fits(known)} ${won}`;
  if (open.length === 0)
    return `${all.length > 1 ? `All ${all.length} lines` : 'The one line is'} done. ${won}`;
  return `${all.length - open.length} of ${count(all.length, 'line')} done. Left: ${list(left)}. ${won}`;
}

/** What is there already, in one sentence; undefined where nothing is known. */
export function haveSentence(
  game: Game,
  { placesHere }: Plan,
  fitting: Fitting | undefined,
  placesKnown: boolean,
): Sentence | undefined {
  const say = sayer(game);
  const parts: string[] = [];
  const there = (
    one: string,
    {
      assigned,
      short,
      isCounted,
    }: { assigned: ReadonlyMap<NodeId, unknown>; short: ReadonlyMap<NodeId, number>; isCounted: boolean },
    many = `${one}s`,
  ) => {
    if (isCounted && assigned.size > 0) {
      parts.push(`${assigned.size - short.size} of ${count(assigned.size, one, many)}`);
    }
  };
  if (fitting) {
    there('lock', fitting);
    there('box', fitting.boxes, 'boxes');
    there('hasp', fitting.hasps);
    there('tool', fitting.tools);
  }
  const places = [...game.nodes.values()].filter(
    (node) => node.kind === 'place' && !isLeftOut(game, node.id),
  );
  const isRoom = placesKnown && places.length > 0;
  const room = `My room has ${placesHere.length} of ${count(places.length, 'hiding place')} by name`;
  if (parts.length === 0 && !isRoom) return undefined;
  const named = isRoom && placesHere.length > 0 ? sentence(': ', say.names(placesHere)) : '';
  const kit = parts.length > 0 ? `My kit is enough for ${list(parts)}.` : '';
  return isRoom ? sentence(`${kit} ${room}`.trim(), named, '.') : [kit];
}

/** Of a name that is, or would be, that of a place where nothing may be hidden. */
export function offLimitsSentence(name: string): string {
  return `“${name}” is off limits in my room.`;
}

export function placeSentence({ room, offLimits }: PlaceLine): string | undefined {
  if (offLimits) return offLimitsSentence(offLimits.name);
  return room ? undefined : 'No place of my room is left for it: give it a name, or leave it out on the map.';
}

export function renamedSentence(was: string, now: string): Sentence {
  return [{ strong: was }, ' is called ', { strong: now }, ' now.'];
}

export function keptSentence(was: string): Sentence {
  return [{ strong: was }, ' keeps its name.'];
}

export function thingSentence(item: KitItem): string {
  return `In my kit: ${itemKind(item)}, “${item.label.trim()}”.`;
}

const WAYS: Readonly<Record<Way, string>> = {
  initials: 'by the first letters of its words',
  lineStarts: 'by the first letters of its lines',
  lineEnds: 'by the last letters of its lines',
  letterCounts: 'by how many letters its words have',
  stated: 'as a word of it',
};

const quoted = (words: readonly string[]) => list(words.map((word) => `“${word}”`));

/** Why a text is to be read again. @param game as it is now */
export function reasonSentence(original: Game, game: Game, of: NodeId, reason: RereadReason): Sentence {
  const say = sayer(original);
  switch (reason.reason) {
    case 'reads':
      return sentence(
        'The answer ',
        { code: reason.answer },
        ` is read from it ${WAYS[reason.way]}. With another name for `,
        say.name(reason.thing),
        ' it would not be.',
      );
    case 'mayRead':
      return sentence(
        'It quotes ',
        say.name(reason.thing),
        ', and what is done with it speaks of letters, words or counting: the answer may depend on the name.',
      );
    case 'names':
      return [`It says ${quoted(reason.words)}.`];
    case 'colours':
      return [`It says ${quoted(reason.words)} of a box, a lock or a key that has another colour here.`];
    case 'fixtures':
      return [`It says ${quoted(reason.words)}, which the list of my room does not have.`];
    case 'answer': {
      const [was, now] = [original, game].map(({ nodes }) => nodes.get(reason.thing)?.name ?? '');
      return capital(
        sentence(
          say.the(of),
          ' gives ',
          { code: reason.answer },
          ', which stands for ',
          say.name(reason.thing),
          was === now || now === undefined ? '' : sentence(', called ', { strong: now }, ' now'),
          '. Under another name, whoever solves it would look for what is not there.',
        ),
      );
    }
  }
}

export function rereadTitle(game: Game, { of }: Pick<RereadLine, 'of'>): Sentence {
  return capital(sayer(game).the(of));
}

export function rereadDone(game: Game, { of, state }: RereadLine): Sentence {
  return sentence(sayer(game).title(of), state === 'done' ? ' was changed.' : ' was read again and stays.');
}

export function shortDone(game: Game, { shortage, state }: ShortLine): Sentence {
  const title = sayer(game).title(shortage.node);
  if (state === 'kept') return sentence(title, ': what is missing is on the list to buy.');
  return isLeftOut(game, shortage.node)
    ? sentence(title, ' is not used today.')
    : sentence(title, ' has what it needs.');
}

export function spareName(game: Game, { nodes }: SpareLine): string {
  return plain(sayer(game).title(nodes[0] ?? ''));
}

export function spareSentence(game: Game, { nodes, why, minutes, steps }: SpareLine): Sentence {
  const say = sayer(game);
  const [first = '', ...others] = nodes;
  const title = say.title(first);
  const loses =
    steps <= 0 && minutes < 1 / 60
      ? 'The game loses no time.'
      : minutes < 1 / 60
        ? `The game has ${count(steps, 'step')} fewer and takes as long.`
        : `The game has ${count(steps, 'step')} fewer and takes ${minutesInWords(minutes)} less at the quickest.`;
  const reason = {
    fun: ' is there for fun. ',
    herring: ' is a red herring. ',
    notNeeded: ' is not needed for the prize. ',
    shorter: ' could be done without. ',
  }[why];
  const goes =
    others.length > 0
      ? sentence(' With it ', others.length === 1 ? 'goes ' : 'go ', say.names(others), '.')
      : '';
  return sentence(title, reason, loses, goes);
}

export function spareDone(game: Game, { nodes }: SpareLine): Sentence {
  return sentence(sayer(game).title(nodes[0] ?? ''), ' is left out.');
}

/** So many signs stay on both sides of what differs. */
const AROUND = 14;

/** Where two texts differ: the part before and after, with a little of what stands around it. */
export function difference(
  before: string,
  after: string,
): { readonly before: string; readonly after: string } {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start += 1;
  let end = 0;
  while (end < most - start && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  const from = Math.max(0, before.lastIndexOf(' ', Math.max(0, start - AROUND)) + 1);
  const cut = (text: string) => {
    const to = Math.min(text.length, text.length - end + AROUND);
    return `${from > 0 ? '…' : ''}${text.slice(from, to).trim()}${to < text.length ? '…' : ''}`.replace(
      /\s+/gu,
      ' ',
    );
  };
  return { before: cut(before), after: cut(after) };
}
