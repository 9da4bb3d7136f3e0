/**
 * Random games as a teacher might bring them to a printed page: hiding places, boxes in boxes, several locks on a box, any-of, keys,
 * tools, things handed over, names and codes of every length and script. Most can be won: everything is made in the order in which
 * it is found. Seeded; the same for the same arguments.
 */
import type { Estimate, Game, GameLink, GameNode, NodeId } from '../src/game/model.ts';
import { seededRandom } from './random-game.ts';

export interface PageGameOptions {
  /** What pupils spend time on, about. */
  readonly steps: number;
  /** How often a name is long, unbreakable, a picture or from right to left: 0 … 1. */
  readonly oddNames?: number;
  /** How often a code is longer than eight symbols: 0 … 1. */
  readonly longCodes?: number;
  /** Two things that wait for each other. */
  readonly ring?: boolean;
  readonly leftOut?: boolean;
}

const ADJECTIVES = ['Red', 'Old', 'Folded', 'Second', 'Wooden', 'Small', 'Torn', 'Blue', 'Round', 'Heavy'];
const THINGS = ['letter', 'map', 'list', 'photo', 'card', 'poster', 'receipt', 'diagram', 'page', 'ticket'];
const TOOLS = ['lens', 'ruler', 'magnet', 'lamp', 'mirror', 'compass', 'scale', 'stencil'];
const PLACES = [
  'shelf',
  'window sill',
  'drawer',
  'teacher’s desk',
  'coat hooks',
  'cupboard',
  'plant pot',
  'piano',
];
const BOXES = ['tin', 'crate', 'chest', 'bag', 'case', 'toolbox', 'jar', 'safe'];
const TASKS = [
  'Add up the',
  'Sort the',
  'Read the',
  'Weigh the',
  'Put in order the',
  'Compare the',
  'Measure the',
];
const OBJECTS = ['grains', 'orders', 'strips', 'stones', 'tides', 'shadows', 'voices', 'angles', 'seeds'];
const LONG =
  'The very long and winding instruction that an early owner of the lighthouse wrote for whoever would come after him, in a hand that nobody reads easily';
const UNBREAKABLE = 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft';
const SCRIPTS = [
  'מפת האוצר הישנה',
  'صندوق الأدوات الأحمر',
  '🔑🗝️ two keys 👩‍🔬',
  '👨‍👩‍👧‍👦🧪📐📏🧭',
  '灯塔管理员的日记',
  'Vůně růží – ždímačka',
  'गणित की किताब',
  '<b>&amp;"quoted"</b>',
  '__proto__',
];
const CODE_WORDS = ['KNEAD', 'OWLET', 'PRISM', 'QUARTZ', 'FJORD', 'BYLAW', 'NYMPH', 'VEXED', 'GLYPH'];

/** Minutes of the kind's default where undefined. */
const ESTIMATES: readonly (Estimate | undefined)[] = [
  undefined,
  undefined,
  { low: 1, likely: 2, high: 3 },
  { low: 2, likely: 4, high: 9 },
  { low: 0.2, likely: 0.5, high: 1 },
];

type Dice = ReturnType<typeof diceOf>;

function diceOf(seed: number) {
  const random = seededRandom(seed);
  const below = (count: number) => Math.floor(random() * count);
  const chance = (share: number) => random() < share;
  /** One of a list that is not empty. */
  const one = <T>(list: readonly [T, ...T[]] | readonly T[]): T => {
    const item = list[below(list.length)];
    if (item === undefined) throw new RangeError('nothing to choose from');
    return item;
  };
  return { below, chance, one };
}

function nameOf(dice: Dice, plain: string, odd: number): string {
  if (!dice.chance(odd)) return plain;
  switch (dice.below(4)) {
    case 0:
      return LONG.slice(0, 40 + dice.below(LONG.length - 40));
    case 1:
      return dice.chance(0.5) ? UNBREAKABLE : `${plain} ${UNBREAKABLE.slice(0, 30)}`;
    default:
      return dice.one(SCRIPTS);
  }
}

const LOCK_TYPES = ['number', 'number', 'word', 'direction', 'picture', 'typed', 'dial', 'unheard-of'];

function codeFor(dice: Dice, type: string, long: boolean): string {
  const length = long ? 9 + dice.below(32) : 3 + dice.below(3);
  const from = (signs: readonly string[], between = '') =>
    Array.from({ length }, () => dice.one(signs)).join(between);
  if (type === 'direction') return from(dice.chance(0.5) ? ['U', 'D', 'L', 'R'] : ['↑', '↓', '←', '→']);
  if (type === 'picture') return from(['🌲', '🔔', '⭐', '🐟', '🍎']);
  if (type === 'word' && !long) return dice.one(CODE_WORDS);
  if (type === 'word' || type === 'typed' || type === 'unheard-of') return from([...'ABCDEGHKMNPSTVXZ']);
  return String(1 + dice.below(9)) + from([...'0123456789']);
}

/** A game of about so many steps, with at least one prize. */
export function randomPageGame(seed: number, options: PageGameOptions): Game {
  const { steps, oddNames = 0, longCodes = 0, ring = false, leftOut = false } = options;
  const dice = diceOf(seed);
  const nodes = new Map<NodeId, GameNode>();
  const links = new Map<string, GameLink>();
  let made = 0;
  const nextId = (letter: string): NodeId => `${letter}${nodes.size}`;
  const link = (from: NodeId, to: NodeId) => {
    if (from === to || [...links.values()].some((one) => one.from === from && one.to === to)) return;
    const id = `l${links.size}`;
    links.set(id, { id, from, to });
  };
  const name = (plain: string) => nameOf(dice, plain, oddNames);
  const minutes = () => {
    const estimate = dice.one(ESTIMATES.map((one) => [one]))[0];
    return estimate === undefined ? {} : { minutes: estimate };
  };
  const inside = (holder: NodeId | undefined) => (holder === undefined ? {} : { in: holder });

  /** Where something may lie that is to be found now. */
  const places: NodeId[] = [];
  const opened: NodeId[] = [];
  /** Found and not yet used; and all that was found. */
  const unused: NodeId[] = [];
  const found: NodeId[] = [];
  const keys: NodeId[] = [];
  const puzzles: NodeId[] = [];

  const addPlace = (opener?: NodeId): NodeId => {
    const id = nextId('p');
    nodes.set(id, {
      id,
      kind: 'place',
      name: name(`${dice.one(ADJECTIVES)} ${dice.one(PLACES)}`),
      ...minutes(),
    });
    if (opener !== undefined) link(opener, id);
    places.push(id);
    made++;
    return id;
  };
  const holder = (): NodeId | undefined =>
    dice.chance(0.1)
      ? undefined
      : dice.chance(0.6) && opened.length > 0
        ? dice.one(opened.slice(-3))
        : places.length > 0
          ? dice.one(places.slice(-4))
          : undefined;
  const addThing = (where: NodeId | undefined): NodeId => {
    const isTool = dice.chance(0.2);
    const id = nextId('c');
    const plain = `${dice.one(ADJECTIVES)} ${dice.one(isTool ? TOOLS : THINGS)}`;
    const common = { id, name: name(plain), ...inside(where) };
    if (isTool) nodes.set(id, { ...common, kind: 'tool' });
    else if (dice.chance(0.06)) nodes.set(id, { ...common, kind: 'clue', decoy: true });
    else nodes.set(id, { ...common, kind: 'clue' });
    if (nodes.get(id)?.decoy === true) {
      made++;
      return id;
    }
    if (!isTool && dice.chance(0.08) && found.length > 0) link(dice.one(found), id);
    unused.push(id);
    found.push(id);
    return id;
  };
  const addKey = (where: NodeId | undefined) => {
    const id = nextId('k');
    nodes.set(id, {
      id,
      kind: 'key',
      name: name(`${dice.one(ADJECTIVES)} key ${nodes.size}`),
      ...inside(where),
    });
    keys.push(id);
    return id;
  };
  const addPuzzle = (): NodeId => {
    const id = nextId('z');
    const wanted = 1 + dice.below(dice.chance(0.15) ? 6 : 3);
    const inputs = new Set<NodeId>();
    while (inputs.size < wanted && unused.length > 0) {
      const at = Math.max(0, unused.length - 1 - dice.below(6));
      const [taken] = unused.splice(at, 1);
      if (taken !== undefined) inputs.add(taken);
    }
    if (inputs.size < wanted && found.length > 0 && dice.chance(0.4)) inputs.add(dice.one(found));
    if (dice.chance(0.06) && places.length > 0) inputs.add(dice.one(places));
    if (dice.chance(0.12) && puzzles.length > 0) inputs.add(dice.one(puzzles.slice(-3)));
    const isChoice = inputs.size > 1 && dice.chance(0.2);
    nodes.set(id, {
      id,
      kind: 'puzzle',
      name: name(`${dice.one(TASKS)} ${dice.one(OBJECTS)}`),
      ...minutes(),
      ...(isChoice && { need: 1 + dice.below(inputs.size - 1) }),
    });
    for (const input of inputs) link(input, id);
    puzzles.push(id);
    made++;
    return id;
  };
  const giveAnswer = (puzzle: NodeId, answer: string) => {
    const node = nodes.get(puzzle);
    if (node?.kind === 'puzzle' && node.answer === undefined) nodes.set(puzzle, { ...node, answer });
  };
  const addLock = (box: NodeId, opener: NodeId | undefined) => {
    const id = nextId('f');
    made++;
    const lockName = name('');
    const named = { id, name: lockName, on: box, ...(dice.chance(0.1) && minutes()) };
    if (opener === undefined && dice.chance(0.3)) {
      nodes.set(id, { ...named, kind: 'fastener', type: 'latch' });
    } else if (opener === undefined || dice.chance(0.25)) {
      const key = keys.length > 0 && dice.chance(0.7) ? dice.one(keys) : addKey(holder());
      nodes.set(id, { ...named, kind: 'fastener', type: 'key' });
      link(key, id);
    } else {
      const type = dice.one(LOCK_TYPES);
      const opening = nodes.get(opener);
      const code =
        (opening?.kind === 'puzzle' ? opening.answer : undefined) ??
        codeFor(dice, type, dice.chance(longCodes));
      nodes.set(id, { ...named, kind: 'fastener', type, ...(dice.chance(0.95) && { code }) });
      giveAnswer(opener, code);
      link(opener, id);
    }
  };
  /** A box, locked by these, with something in it that is found when it opens. */
  const addBox = (openers: readonly (NodeId | undefined)[]) => {
    const id = nextId('b');
    const where = dice.chance(0.2) ? undefined : holder();
    nodes.set(id, {
      id,
      kind: 'container',
      name: name(`${dice.one(ADJECTIVES)} ${dice.one(BOXES)}`),
      ...inside(where),
    });
    for (const opener of openers) addLock(id, opener);
    opened.push(id);
    for (let i = 0, count = 1 + dice.below(4); i < count; i++) addThing(id);
    if (dice.chance(0.3)) addKey(id);
  };

  for (let i = 0, count = 2 + dice.below(4); i < count; i++) addPlace();
  for (let i = 0, count = 3 + dice.below(5); i < count; i++) addThing(holder());
  while (made < steps) {
    if (unused.length < 2) for (let i = 0; i < 3; i++) addThing(holder());
    const puzzle = addPuzzle();
    const turn = dice.below(20);
    if (turn < 10) {
      const second = dice.chance(0.35) ? addPuzzle() : undefined;
      const third = dice.chance(0.3) ? [undefined] : [];
      addBox([puzzle, ...(second === undefined ? [] : [second]), ...third]);
    } else if (turn < 13) {
      addThing(addPlace(puzzle));
    } else if (turn < 15) {
      unused.push(puzzle);
    } else if (turn < 17) {
      // Handed over by the teacher.
      const given = dice.chance(0.5) ? addThing(undefined) : addKey(undefined);
      link(puzzle, given);
    } else if (turn < 18) {
      const id = nextId('b');
      nodes.set(id, { id, kind: 'container', name: name(`Handed over ${dice.one(BOXES)}`) });
      link(puzzle, id);
      opened.push(id);
      addThing(id);
    } else if (turn < 19) {
      addThing(addPlace());
    } else {
      addBox([puzzle]);
      addBox([puzzle]);
    }
  }
  for (let i = 0, count = dice.chance(0.2) ? 2 : 1; i < count; i++) {
    const id = nextId('w');
    const last = puzzles.at(-1 - i);
    const where = dice.chance(0.6) ? opened.at(-1) : undefined;
    nodes.set(id, { id, kind: 'prize', name: name('The golden loaf'), ...inside(where) });
    if (where === undefined && last !== undefined) link(last, id);
  }
  if (ring) {
    const [first] = puzzles;
    const last = puzzles.at(-1);
    if (first !== undefined && last !== undefined) link(last, first);
  }
  if (leftOut) {
    for (const [id, node] of nodes) if (dice.chance(0.05)) nodes.set(id, { ...node, leftOut: true });
  }
  const lesson = { teams: 1 + dice.below(6), pupils: 24, minutes: 40 };
  return { head: { title: name('The lighthouse'), lesson }, nodes, links, positions: new Map() };
}

/** The game of a seed: its size and its oddities are drawn from the seed too. Of 8 to 60 steps. */
export function pageGame(seed: number): Game {
  const random = seededRandom(seed * 7919 + 13);
  const steps = 8 + Math.floor(random() * 53);
  const isOdd = random() < 0.5;
  return randomPageGame(seed, {
    steps,
    oddNames: isOdd ? random() * 0.35 : 0,
    longCodes: random() < 0.5 ? random() * 0.5 : 0,
    ring: random() < 0.1,
    leftOut: random() < 0.15,
  });
}
