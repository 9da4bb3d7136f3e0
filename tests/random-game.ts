/**
 * Random legal games for tests and the bench: rings, any-of, things left out, boxes in boxes, several fasteners on one box.
 * A game is assembled from one plan of plain numbers for each node. fast-check shrinks by dropping plans and lowering
 * numbers (0 is always the plainest choice); `randomGame` draws the same plans from a seed alone.
 */
import fc from 'fast-check';
import { LEGAL_TARGETS } from '../src/game/links.ts';
import type { Game, GameLink, GameNode, Kind, NodeId } from '../src/game/model.ts';

export interface RandomGameOptions {
  /** At most so many nodes before the prizes; for `gameArbitrary` alone. Default 24. */
  readonly size?: number;
  /** Lets things wait for each other in rings. Default true. */
  readonly rings?: boolean;
  /** Lets nodes be left out. Default true. */
  readonly leftOut?: boolean;
  /** Gives every need as 'all'. Default false. */
  readonly allNeeded?: boolean;
  /** Ids and names that trip up objects and code units: `__proto__`, `constructor`, signs beyond the basic plane. Default true. */
  readonly nastyIds?: boolean;
  /** How many prizes: a whole number, or undefined for none to three. */
  readonly prizes?: number;
}

interface NodePlan {
  readonly kind: number;
  readonly parent: number;
  readonly sources: readonly number[];
  readonly need: number;
  readonly minutes: number;
  readonly atMinute: number;
  readonly flags: number;
  readonly code: number;
}

const KINDS: readonly Kind[] = [
  'place',
  'puzzle',
  'container',
  'fastener',
  'clue',
  'key',
  'fastener',
  'clue',
  'puzzle',
  'container',
  'tool',
];
const FASTENER_TYPES = ['number', 'key', 'word', 'latch', 'direction', 'unheard-of', undefined] as const;
const NASTY = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '\uFF5E',
  '\u{1F511}',
  'é',
  'e\u0301',
];
const ESTIMATES = [
  undefined,
  { low: 1, likely: 1, high: 1 },
  { low: 0, likely: 0, high: 0 },
  { low: 0.1, likely: 0.2, high: 0.3 },
  { low: 1, likely: 2, high: 3 },
  { low: 2, likely: 3, high: 10 },
  { low: 0, likely: 0, high: 1 },
] as const;
const RANGE = 1 << 20;

/** One of the list, or undefined from an empty one. */
function pick<T>(list: readonly T[], number: number): T | undefined {
  return list[number % list.length];
}

function isFlag(plan: NodePlan, from: number, oneIn: number): boolean {
  return Math.floor(plan.flags / from) % oneIn === oneIn - 1;
}

/** Builds a legal game from the plans. Without rings everything waits only for what stands before it in the list. */
function assemble(plans: readonly NodePlan[], prizeCount: number, options: RandomGameOptions): Game {
  const { rings = true, leftOut = true, allNeeded = false, nastyIds = true } = options;
  const kinds: Kind[] = [];
  for (const plan of plans) {
    const kind = pick(KINDS, plan.kind) ?? 'place';
    kinds.push(kind === 'fastener' && !kinds.includes('container') ? 'container' : kind);
  }
  for (let prize = 0; prize < prizeCount; prize++) kinds.push('prize');

  const idOf = (index: number): NodeId =>
    nastyIds && index % 5 === 4 ? (NASTY[(index - 4) / 5] ?? `n${index}`) : `n${index}`;
  const nodes = new Map<NodeId, GameNode>();
  const links = new Map<string, GameLink>();
  /** Containers that something already depends on being open: without rings they take no more fasteners. */
  const sealed = new Set<number>();
  const indicesOf = (wanted: (kind: Kind, index: number) => boolean): number[] =>
    kinds.flatMap((kind, index) => (wanted(kind, index) ? [index] : []));

  for (const [index, drawn] of kinds.entries()) {
    const plan: NodePlan = plans[index % Math.max(1, plans.length)] ?? {
      kind: 0,
      parent: 0,
      sources: [],
      need: 0,
      minutes: 0,
      atMinute: 0,
      flags: 0,
      code: 0,
    };
    let kind = drawn;
    let on: number | undefined;
    if (kind === 'fastener') {
      const ringed = rings && plan.parent % 40 === 39;
      on = pick(
        indicesOf((other, i) => other === 'container' && (ringed || (i < index && !sealed.has(i)))),
        plan.parent,
      );
      if (on === undefined) kind = 'place';
      kinds[index] = kind;
    }
    const mayBackward = rings && plan.parent % 40 === 39;
    let holder: number | undefined;
    if (['container', 'key', 'clue', 'tool', 'prize'].includes(kind) && plan.parent % 4 !== 0) {
      holder = pick(
        indicesOf(
          (other, i) =>
            (other === 'place' ||
              (other === 'container' && (i < index || (mayBackward && kind !== 'container')))) &&
            (rings || i < index),
        ),
        Math.floor(plan.parent / 4),
      );
      if (holder !== undefined) sealed.add(holder);
    }
    const isChoice = plan.need % 3 === 2 && !allNeeded;
    const sources = new Set<number>();
    for (const [place, source] of plan.sources.entries()) {
      const backward = rings && (isChoice && place > 0 ? source % 3 === 2 : source % 200 === 199);
      const candidates = indicesOf(
        (other, i) => i !== index && (backward || i < index) && LEGAL_TARGETS[other].includes(kind),
      );
      const near = place === 0 && !backward ? candidates.slice(-6) : candidates;
      const chosen = pick(near, Math.floor(source / 8));
      if (chosen === undefined || sources.has(chosen)) continue;
      sources.add(chosen);
      sealed.add(chosen);
    }
    const type = pick(FASTENER_TYPES, Math.floor(plan.code / 8));
    const beyond = plan.need % 150 === 2 ? 1 : 0;
    const common = {
      id: idOf(index),
      name: nastyIds && plan.flags % 7 === 6 ? (pick(NASTY, plan.code) ?? '') : `${kind} ${plan.code % 9}`,
      ...spread('minutes', pick(ESTIMATES, plan.minutes)),
      ...spread(
        'need',
        isChoice && sources.size + beyond > 0
          ? 1 + (plan.need % 4 === 3 || beyond > 0 ? Math.floor(plan.need / 12) % (sources.size + beyond) : 0)
          : undefined,
      ),
      ...spread('atMinute', plan.atMinute % 12 === 11 ? (plan.atMinute % 40) / 4 : undefined),
      ...spread('leftOut', leftOut && isFlag(plan, 7, 12) ? true : undefined),
      ...spread('decoy', isFlag(plan, 84, 10) ? true : undefined),
    };
    const held = spread('in', holder === undefined ? undefined : idOf(holder));
    const answer = spread('answer', plan.code % 3 === 0 ? undefined : `${plan.code % 4}7`);
    const node: GameNode =
      kind === 'fastener'
        ? {
            ...common,
            kind,
            on: idOf(on ?? 0),
            ...spread('type', type),
            ...spread('code', plan.code % 5 === 0 ? undefined : `${plan.code % 4}7`),
          }
        : kind === 'puzzle'
          ? { ...common, kind, ...answer }
          : kind === 'place'
            ? { ...common, kind }
            : kind === 'clue'
              ? { ...common, kind, ...held, ...answer }
              : { ...common, kind, ...held };
    nodes.set(node.id, node);
    for (const source of sources) {
      const id = `l${links.size}`;
      links.set(id, { id, from: idOf(source), to: node.id });
    }
  }
  return { head: { title: 'Random' }, nodes, links, positions: new Map() };
}

function spread<K extends string, V>(key: K, value: V | undefined): { [key in K]?: V } {
  const entry: { [key in K]?: V } = {};
  if (value !== undefined) entry[key] = value;
  return entry;
}

const number = fc.nat(RANGE);

const planArbitrary: fc.Arbitrary<NodePlan> = fc.record({
  kind: number,
  parent: number,
  sources: fc.array(number, { minLength: 0, maxLength: 4, size: 'max' }),
  need: number,
  minutes: number,
  atMinute: number,
  flags: number,
  code: number,
});

/** Legal games that shrink well. */
export function gameArbitrary(options: RandomGameOptions = {}): fc.Arbitrary<Game> {
  const { size = 24, prizes } = options;
  return fc
    .tuple(
      fc.array(planArbitrary, { maxLength: size, size: 'max' }),
      prizes === undefined ? fc.nat(3) : fc.constant(prizes),
    )
    .map(([plans, prizeCount]) => assemble(plans, prizeCount, options));
}

/** Uniform numbers in [0, 1) from a 32-bit seed: a Weyl sequence through a mixing function. For tests only. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let word = state;
    word = Math.imul(word ^ (word >>> 16), 0x21f0aaad);
    word = Math.imul(word ^ (word >>> 15), 0x735a2d97);
    return ((word ^ (word >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** One legal game of `size` nodes and its prizes (one, unless the options say otherwise): the same for the same arguments. */
export function randomGame(seed: number, size: number, options: RandomGameOptions = {}): Game {
  const random = seededRandom(seed);
  const draw = () => Math.floor(random() * RANGE);
  const plans = Array.from({ length: size }, (): NodePlan => {
    const sources = Array.from({ length: 1 + Math.floor(random() * 3) }, draw);
    return {
      kind: draw(),
      parent: draw(),
      sources,
      need: draw(),
      minutes: draw(),
      atMinute: draw(),
      flags: draw(),
      code: draw(),
    };
  });
  return assemble(plans, options.prizes ?? 1, options);
}
