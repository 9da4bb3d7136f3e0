/**
 * A colleague's game against one's own cupboard and room: one list, in the order in which a teacher goes down it. What is done is read off the game as it is, held against the
 * game as it came, so that undo, the map and this list never disagree. Only what cannot be read off it (a name that is kept, a text that was found right) is a choice.
 */
import { isLeftOut } from '../../engine/left-out.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { Edit } from '../../game/edits/edit.ts';
import type { Game, GameNode, NodeId } from '../../game/model.ts';
import { type Fitting, fitKit } from '../fit/index.ts';
import type { Kit, KitItem, RoomPlace } from '../model.ts';
import { type Shortage, shortagesOf } from '../remedies/index.ts';
import { recolouredName } from './colours.ts';
import { freePlaces, matchPlaces, namesake } from './match-places.ts';
import { matchThings } from './match-things.ts';
import { type Renamer, type Renaming, renamer } from './renaming.ts';
import { type Planned, type Reread, rereadsOf } from './rereading.ts';
import type { Spare } from './spare.ts';
import { setText, textAt } from './texts.ts';
import { normalisedName, tellingWords } from './wording.ts';

/** Tells one line from another, in every state of the game. */
export type LineKey = string;

/** open: to be done; done: changed; kept: stays as it is by choice. */
export type LineState = 'open' | 'done' | 'kept';

export interface Choices {
  /** Lines of which the teacher has said that nothing is to be changed. */
  readonly kept: ReadonlySet<LineKey>;
}

interface LineBase {
  readonly key: LineKey;
  readonly state: LineState;
}

export interface PlaceLine extends LineBase {
  readonly sort: 'place';
  readonly place: NodeId;
  /** In the game as it came. */
  readonly was: string;
  readonly now: string;
  /** The place of the room that stands for it; undefined where all have been given. */
  readonly room: RoomPlace | undefined;
  /** The place of the room that has its name, and where nothing may be hidden. */
  readonly offLimits: RoomPlace | undefined;
  readonly free: readonly RoomPlace[];
}

export interface ThingLine extends LineBase {
  readonly sort: 'thing';
  readonly thing: NodeId;
  readonly was: string;
  readonly now: string;
  /** What it would be called. */
  readonly to: string;
  /** Which of the cupboard stands for it; undefined where the name was changed and none does any more. */
  readonly item: KitItem | undefined;
}

export interface RereadLine extends LineBase, Reread {
  readonly sort: 'reread';
}

export interface SpareLine extends LineBase, Spare {
  readonly sort: 'spare';
}

/** Something of the cupboard is short. What can be done about it is asked line by line (src/kit/remedies/), since each remedy is tried. */
export interface ShortLine extends LineBase {
  readonly sort: 'short';
  /** As it is now; what was missing in the game as it came where it is no more. */
  readonly shortage: Shortage;
}

export type Line = ShortLine | PlaceLine | ThingLine | RereadLine | SpareLine;

export interface Plan {
  readonly lines: readonly Line[];
  /** Hiding places that are called now as a place of the room is. */
  readonly placesHere: readonly NodeId[];
  /** Boxes, tools and key locks for which something of the same name is in the cupboard. */
  readonly thingsHere: readonly NodeId[];
  readonly renamer: Renamer;
}

export interface PlanInput {
  /** As it came. */
  readonly original: Assessment;
  readonly current: Assessment;
  readonly kit: Kit;
  readonly choices: Choices;
  /** Of the kit and the game as it is; undefined where the cupboard is empty. */
  readonly fitting: Fitting | undefined;
  /** What can be left out (spare.ts), of the game as it came and as it is; undefined while that is tried. */
  readonly spares: Spares | undefined;
}

export interface Spares {
  readonly came: readonly Spare[];
  readonly now: readonly Spare[];
}

const keyOf = (sort: Line['sort'], id: NodeId): LineKey => JSON.stringify([sort, id]);

function stateOf(key: LineKey, isDone: boolean, { kept }: Choices): LineState {
  if (isDone) return 'done';
  return kept.has(key) ? 'kept' : 'open';
}

/** In the order of play of the game as it came; what has no number comes last, by id. */
function inPlay({ network, measures }: Assessment, nodes: readonly GameNode[]): readonly GameNode[] {
  const number = ({ id }: GameNode) =>
    measures.number[network.index.get(id) ?? -1] || Number.POSITIVE_INFINITY;
  return [...nodes].sort((a, b) =>
    number(a) === number(b) ? (a.id < b.id ? -1 : 1) : number(a) - number(b),
  );
}

const used = (game: Game, kinds: readonly GameNode['kind'][]): GameNode[] =>
  [...game.nodes.values()].filter((node) => kinds.includes(node.kind) && !isLeftOut(game, node.id));

const nameIn = (game: Game, { id, name }: GameNode): string => game.nodes.get(id)?.name ?? name;

function placeLines({ original, current, kit, choices }: PlanInput): {
  lines: PlaceLine[];
  here: NodeId[];
} {
  if (kit.places.length === 0) return { lines: [], here: [] };
  const places = inPlay(original, used(current.game, ['place']));
  const keyed = places.map((node) => ({ node, key: keyOf('place', node.id) }));
  const isKept = ({ node, key }: (typeof keyed)[number]) =>
    choices.kept.has(key) && node.name === nameIn(original.game, node);
  const matched = matchPlaces(
    keyed.filter((one) => !isKept(one)).map(({ node }) => node),
    kit.places,
  );
  const free = freePlaces(
    kit.places,
    places.map(({ name }) => name),
  );
  const lines: PlaceLine[] = [];
  const here: NodeId[] = [];
  for (const { node, key } of keyed) {
    const was = nameIn(original.game, node);
    const room = matched.get(node.id);
    const isNamesake = room !== undefined && normalisedName(room.name) === normalisedName(node.name);
    if (isNamesake) here.push(node.id);
    if (was === node.name && isNamesake) continue;
    const same = namesake(kit.places, node.name);
    const isOff = same?.offLimits === true;
    lines.push({
      sort: 'place',
      key,
      state: stateOf(key, was !== node.name && !isOff, choices),
      place: node.id,
      was,
      now: node.name,
      room,
      offLimits: isOff ? same : undefined,
      free,
    });
  }
  return { lines, here };
}

function thingsOf({ original, current, kit }: PlanInput): ReadonlyMap<NodeId, KitItem> {
  const match = (nodes: readonly GameNode[], items: readonly KitItem[]) =>
    matchThings(
      inPlay(original, nodes).map((node) => ({
        id: node.id,
        name: nameIn(original.game, node),
      })),
      items,
    );
  const keyLocks = used(current.game, ['fastener']).filter(
    (node) => node.kind === 'fastener' && node.type === 'key',
  );
  return new Map([
    ...match(
      used(current.game, ['container']),
      kit.items.filter(({ what }) => what === 'box'),
    ),
    ...match(
      used(current.game, ['tool']),
      kit.items.filter(({ what }) => what === 'tool'),
    ),
    ...match(
      keyLocks,
      kit.items.filter((item) => item.what === 'lock' && item.type === 'key'),
    ),
  ]);
}

function thingLines(input: PlanInput): { lines: ThingLine[]; here: NodeId[] } {
  const { original, current, choices } = input;
  const items = thingsOf(input);
  const lines: ThingLine[] = [];
  const here: NodeId[] = [];
  for (const node of inPlay(original, used(current.game, ['container', 'tool', 'fastener']))) {
    const was = nameIn(original.game, node);
    const item = items.get(node.id);
    const recoloured = item && recolouredName(was, item.label);
    if (item && !recoloured && normalisedName(item.label) === normalisedName(was)) here.push(node.id);
    if (!recoloured && was === node.name) continue;
    const key = keyOf('thing', node.id);
    // A name that was changed because another is quoted in it is no line of its own.
    if (!recoloured) continue;
    lines.push({
      sort: 'thing',
      key,
      state: stateOf(key, was !== node.name, choices),
      thing: node.id,
      was,
      now: node.name,
      to: recoloured.name,
      item,
    });
  }
  return { lines, here };
}

function plannedOf(places: readonly PlaceLine[], things: readonly ThingLine[]): Planned[] {
  const planned = (id: NodeId, was: string, to: string | undefined): Planned[] => {
    if (to === undefined || to === was) return [];
    const renaming: Renaming = { id, from: was, to };
    const colour = recolouredName(was, to);
    return [{ renaming, colour: colour && { from: colour.from, to: colour.to } }];
  };
  return [
    ...places.flatMap(({ place, state, was, now, room }) =>
      state === 'kept' ? [] : planned(place, was, state === 'done' ? now : room?.name),
    ),
    ...things.flatMap(({ thing, state, was, now, to }) =>
      state === 'kept' ? [] : planned(thing, was, state === 'done' ? now : to),
    ),
  ];
}

function rereadLines(
  { original, current, kit, choices }: PlanInput,
  planned: readonly Planned[],
  toRename: Renamer,
  own: ReadonlySet<NodeId>,
): RereadLine[] {
  const room =
    kit.places.length === 0
      ? undefined
      : new Set([
          ...kit.places.flatMap(({ name, zone = '' }) => [...tellingWords(`${name} ${zone}`)]),
          // What a teacher calls a place is there, whether the list has it or not.
          ...planned.flatMap(({ renaming }) => [...tellingWords(renaming.to)]),
        ]);
  const look = (game: Game, made: readonly Renaming[]) => {
    const rereads = rereadsOf({ game, planned, renamer: toRename, room, made, except: own });
    return new Map(rereads.map((one) => [one.of, one]));
  };
  const before = look(original.game, []);
  const now = look(current.game, toRename.made);
  const lines: RereadLine[] = [];
  for (const node of current.game.nodes.values()) {
    const one = now.get(node.id) ?? before.get(node.id);
    if (!one || isLeftOut(current.game, node.id)) continue;
    const key = keyOf('reread', node.id);
    lines.push({ sort: 'reread', key, state: stateOf(key, !now.has(node.id), choices), ...one });
  }
  return lines;
}

function spareLines({ current, choices, spares = { came: [], now: [] } }: PlanInput): SpareLine[] {
  const { came, now } = spares;
  const isOutNow = ({ nodes }: Spare) => nodes.every((id) => isLeftOut(current.game, id));
  const first = (spare: Spare) => spare.nodes[0] ?? '';
  const nowBy = new Map(now.map((spare) => [first(spare), spare]));
  const lines: SpareLine[] = [];
  const told = new Set<NodeId>();
  for (const spare of came) {
    const isOut = isOutNow(spare);
    const shown = isOut ? spare : nowBy.get(first(spare));
    if (!shown) continue;
    told.add(first(spare));
    const key = keyOf('spare', first(spare));
    lines.push({ sort: 'spare', key, state: stateOf(key, isOut, choices), ...shown });
  }
  for (const spare of now) {
    if (told.has(first(spare))) continue;
    const key = keyOf('spare', first(spare));
    lines.push({ sort: 'spare', key, state: stateOf(key, isOutNow(spare), choices), ...spare });
  }
  return lines;
}

const shortKey = ({ part, node }: Shortage): LineKey => JSON.stringify(['short', part, node]);

function shortLines({ original, current, kit, choices, fitting }: PlanInput): ShortLine[] {
  if (!fitting) return [];
  const came = original === current ? [] : shortagesOf(fitKit(original.game, kit));
  const now = new Map(shortagesOf(fitting).map((shortage) => [shortKey(shortage), shortage]));
  const all = new Map([...came.map((shortage) => [shortKey(shortage), shortage] as const), ...now]);
  return [...all]
    .filter(([, { node }]) => current.game.nodes.has(node))
    .map(([key, shortage]) => ({
      sort: 'short',
      key,
      state: stateOf(key, !now.has(key), choices),
      shortage,
    }));
}

/** Places, boxes and tools that came with the name of one of these: theirs does not change with it. */
function namesakesOf({ original: { game } }: PlanInput, ids: ReadonlySet<NodeId>): readonly NodeId[] {
  const nameOf = ({ name }: GameNode) => normalisedName(name);
  const names = new Set([...game.nodes.values()].filter(({ id }) => ids.has(id)).map(nameOf));
  const found = used(game, ['place', 'container', 'tool']).filter((node) => names.has(nameOf(node)));
  return found.map(({ id }) => id);
}

/** Cost: two fittings; an assignment of places; the texts once for each new name. */
export function planOf(input: PlanInput): Plan {
  const places = placeLines(input);
  const things = thingLines(input);
  const lined = new Set([
    ...places.lines.map(({ place }) => place),
    ...places.here,
    ...things.lines.map(({ thing }) => thing),
    ...things.here,
  ]);
  const own = new Set([...lined, ...namesakesOf(input, lined)]);
  const toRename = renamer(input.original.game, input.current.game, own);
  const placesOwn = new Set(places.lines.map(({ place }) => place));
  const rereads = rereadLines(input, plannedOf(places.lines, things.lines), toRename, placesOwn);
  return {
    lines: [...shortLines(input), ...places.lines, ...things.lines, ...rereads, ...spareLines(input)],
    placesHere: places.here,
    thingsHere: things.here,
    renamer: toRename,
  };
}

/** The texts of a line to be read again as they were, with the names that have been changed since. */
export function rereadBack({ renamer: made }: Plan, current: Game, { passages }: Reread): readonly Edit[] {
  return passages.flatMap(({ spot }) => {
    const text = made.expected(spot);
    return text === textAt(current, spot) ? [] : [setText(spot, text)];
  });
}
