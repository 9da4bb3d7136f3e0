/**
 * What is true of a game, said again as plainly as possible and straight from the document: sets, maps and repetition, no network.
 * Slow, and shares nothing with src/engine but the defaults of the document: the oracle of the random tests.
 */
import { expectedMinutes, isStep } from '../../src/game/defaults.ts';
import { type Game, type GameNode, type NodeId, parentOf } from '../../src/game/model.ts';

export interface NaiveGame {
  readonly nodes: ReadonlyMap<NodeId, GameNode>;
  readonly parent: ReadonlyMap<NodeId, NodeId | undefined>;
  readonly needs: ReadonlyMap<NodeId, readonly NodeId[]>;
  readonly prizes: readonly NodeId[];
  readonly steps: readonly NodeId[];
}

/** The game without what is left out. */
export function naiveGame(game: Game): NaiveGame {
  const isOut = (node: GameNode | undefined): boolean =>
    node === undefined ||
    node.leftOut === true ||
    (node.kind === 'fastener' && game.nodes.get(node.on)?.leftOut === true);
  const nodes = new Map(
    [...game.nodes].filter(([, node]) => !isOut(node)).sort(([a], [b]) => codePoints(a, b)),
  );
  const parent = new Map<NodeId, NodeId | undefined>();
  const needs = new Map<NodeId, NodeId[]>();
  for (const node of nodes.values()) {
    let above = parentOf(node);
    while (above !== undefined && !nodes.has(above)) {
      const holder = game.nodes.get(above);
      above = holder && parentOf(holder);
    }
    parent.set(node.id, above);
    needs.set(node.id, []);
  }
  for (const link of game.links.values()) if (nodes.has(link.from)) needs.get(link.to)?.push(link.from);
  const list = [...nodes.values()];
  return {
    nodes,
    parent,
    needs,
    prizes: list.filter((node) => node.kind === 'prize').map((node) => node.id),
    steps: list.filter(isStep).map((node) => node.id),
  };
}

export function codePoints(a: string, b: string): number {
  const left = Array.from(a, (sign) => sign.codePointAt(0) ?? 0);
  const right = Array.from(b, (sign) => sign.codePointAt(0) ?? 0);
  for (const [i, point] of left.entries()) {
    const other = right[i];
    if (other === undefined) return 1;
    if (point !== other) return point - other;
  }
  return left.length - right.length;
}

function needed(game: NaiveGame, node: GameNode): number {
  return node.need === undefined || node.need === 'all' ? (game.needs.get(node.id)?.length ?? 0) : node.need;
}

function fastenersOf(game: NaiveGame, id: NodeId): NodeId[] {
  return [...game.nodes.values()]
    .filter((node) => node.kind === 'fastener' && node.on === id)
    .map((node) => node.id);
}

/** Ids reached when those in `never` never are. */
export function naiveReach(game: NaiveGame, never: ReadonlySet<NodeId> = new Set()): Set<NodeId> {
  const reached = new Set<NodeId>();
  const has = (id: NodeId | undefined) => id === undefined || reached.has(id);
  const met = (node: GameNode) => (game.needs.get(node.id) ?? []).filter(has).length >= needed(game, node);
  const atHand = (node: GameNode | undefined) =>
    node !== undefined && has(game.parent.get(node.id)) && met(node);
  for (let before = -1; before !== reached.size; ) {
    before = reached.size;
    for (const node of game.nodes.values()) {
      if (never.has(node.id)) continue;
      let comes = met(node);
      if (node.kind === 'container') comes = atHand(node) && fastenersOf(game, node.id).every(has);
      else if (node.kind === 'fastener') {
        const isLatch = node.type === 'latch';
        comes &&= atHand(game.nodes.get(node.on)) && (isLatch || (game.needs.get(node.id) ?? []).length > 0);
      } else comes &&= has(game.parent.get(node.id));
      if (comes) reached.add(node.id);
    }
  }
  return reached;
}

export function naiveSolvable(game: NaiveGame, never?: ReadonlySet<NodeId>): boolean {
  const reached = naiveReach(game, never);
  return game.prizes.length > 0 && game.prizes.every((prize) => reached.has(prize));
}

export function expectedOf(game: NaiveGame): Map<NodeId, number> {
  return new Map([...game.nodes.values()].map((node) => [node.id, expectedMinutes(node)]));
}

export interface NaiveTimes {
  readonly start: ReadonlyMap<NodeId, number>;
  readonly finish: ReadonlyMap<NodeId, number>;
}

/** Again and again the earliest finish of what could start by what has finished; what is left never comes. */
export function naiveTimes(game: NaiveGame, minutes: ReadonlyMap<NodeId, number>, timed = true): NaiveTimes {
  const start = new Map<NodeId, number>();
  const finish = new Map<NodeId, number>();
  const end = (id: NodeId | undefined) => (id === undefined ? 0 : (finish.get(id) ?? Infinity));
  const kth = (node: GameNode): number => {
    const k = needed(game, node);
    const ends = (game.needs.get(node.id) ?? []).map(end).sort((a, b) => a - b);
    return k === 0 ? 0 : (ends[k - 1] ?? Infinity);
  };
  const release = (node: GameNode) => (timed ? (node.atMinute ?? 0) : 0);
  const atHand = (node: GameNode | undefined) =>
    node === undefined ? Infinity : Math.max(release(node), end(game.parent.get(node.id)), kth(node));
  const startOf = (node: GameNode): number => {
    if (node.kind === 'container') return Math.max(atHand(node), ...fastenersOf(game, node.id).map(end));
    if (node.kind !== 'fastener') return atHand(node);
    if (node.type !== 'latch' && (game.needs.get(node.id) ?? []).length === 0) return Infinity;
    return Math.max(release(node), kth(node), atHand(game.nodes.get(node.on)));
  };
  for (;;) {
    let next: GameNode | undefined;
    let best = Infinity;
    for (const node of game.nodes.values()) {
      if (finish.has(node.id)) continue;
      const then = startOf(node) + (minutes.get(node.id) ?? 0);
      if (then >= best) continue;
      best = then;
      next = node;
    }
    if (next === undefined) return { start, finish };
    start.set(next.id, startOf(next));
    finish.set(next.id, best);
  }
}

export function naiveShortest(game: NaiveGame, minutes: ReadonlyMap<NodeId, number>): number {
  const { finish } = naiveTimes(game, minutes);
  return Math.max(...game.prizes.map((prize) => finish.get(prize) ?? Infinity));
}

/** The shortest time with other minutes for some steps. */
export function naiveShortestWith(game: NaiveGame, changes: ReadonlyMap<NodeId, number>): number {
  return naiveShortest(game, new Map([...expectedOf(game), ...changes]));
}

export function naiveLongestChain(game: NaiveGame): number {
  const steps = new Set(game.steps);
  const ones = new Map([...game.nodes.keys()].map((id) => [id, steps.has(id) ? 1 : 0]));
  const { finish } = naiveTimes(game, ones, false);
  return Math.max(...game.prizes.map((prize) => finish.get(prize) ?? Infinity));
}

/** The order of play, step by step as it is defined. */
export function naiveOrder(game: NaiveGame): NodeId[] {
  const { start, finish } = naiveTimes(game, expectedOf(game));
  const steps = new Set(game.steps);
  const taken: NodeId[] = [];
  /** What could be reached: reached when every step not taken, but the one asked for, never is. */
  const possible = (): Set<NodeId> => {
    const closed = naiveReach(game, new Set(game.steps.filter((id) => !taken.includes(id))));
    return new Set(
      game.steps.filter(
        (id) =>
          !taken.includes(id) &&
          finish.has(id) &&
          naiveReach(game, new Set(game.steps.filter((s) => !closed.has(s) && s !== id))).has(id),
      ),
    );
  };
  let before = possible();
  for (let now = before; now.size > 0; ) {
    const fresh = [...now].filter((id) => taken.length > 0 && !before.has(id));
    const first = fresh.filter((id) => ['fastener', 'place'].includes(game.nodes.get(id)?.kind ?? ''));
    const [next] = (first.length > 0 ? first : [...now]).sort((a, b) => {
      const byStart = (start.get(a) ?? 0) - (start.get(b) ?? 0);
      const byFinish = (finish.get(a) ?? 0) - (finish.get(b) ?? 0);
      if (Math.abs(byStart) > 1e-6) return byStart;
      if (Math.abs(byFinish) > 1e-6) return byFinish;
      return codePoints(game.nodes.get(a)?.name ?? '', game.nodes.get(b)?.name ?? '') || codePoints(a, b);
    });
    if (next === undefined || !steps.has(next)) break;
    taken.push(next);
    before = now;
    now = possible();
  }
  return taken;
}

/** Every subset of the reached steps, smallest first. Only for a dozen steps or so. */
export function naiveFewest(game: NaiveGame): number {
  const reached = naiveReach(game);
  const steps = game.steps.filter((id) => reached.has(id));
  let best = Infinity;
  for (let mask = 0; mask < 2 ** steps.length; mask++) {
    const size = steps.filter((_, i) => (mask >> i) & 1).length;
    if (size >= best) continue;
    if (naiveSolvable(game, new Set(steps.filter((_, i) => !((mask >> i) & 1))))) best = size;
  }
  return best;
}
