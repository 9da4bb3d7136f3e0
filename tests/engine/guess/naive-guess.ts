/** Short cuts by the meaning alone: the document is changed and everything worked out anew by tests/engine/naive.ts. */
import { expectedMinutes } from '../../../src/game/defaults.ts';
import type { Game, GameLink, GameNode, NodeId } from '../../../src/game/model.ts';
import { fixed } from '../../game-of.ts';
import {
  codePoints,
  expectedOf,
  type NaiveGame,
  naiveGame,
  naiveOrder,
  naiveShortest,
  naiveSolvable,
  naiveTimes,
} from '../naive.ts';

export function naiveMustDo(game: NaiveGame): NodeId[] {
  if (!naiveSolvable(game)) return [];
  return game.steps.filter((step) => naiveReaches(game, step) && !naiveSolvable(game, new Set([step])));
}

function naiveReaches(game: NaiveGame, id: NodeId): boolean {
  return naiveTimes(game, expectedOf(game)).finish.has(id);
}

/** The document in which this node waits for the given ones instead of its links, and takes so many minutes. */
export function withShortCut(game: Game, id: NodeId, given: readonly NodeId[], minutes: number): Game {
  const node = game.nodes.get(id);
  if (!node) throw new Error(`no node ${id}`);
  const { need: _, ...rest } = node;
  // A latch needs nothing; its minutes stand beside it.
  const type = node.kind === 'fastener' ? { type: given.length === 0 ? 'latch' : 'number' } : {};
  const changed: GameNode = Object.assign({}, rest, type, fixed(minutes));
  const links = new Map<string, GameLink>(
    [...game.links].filter(([, link]) => link.to !== id).map(([key, link]) => [`old ${key}`, link]),
  );
  for (const from of given) links.set(`given ${from}`, { id: `given ${from}`, from, to: id });
  return { ...game, nodes: new Map(game.nodes).set(id, changed), links };
}

export interface NaiveShortCut {
  readonly at: number;
  readonly skips: readonly NodeId[];
  readonly minutesSkipped: number;
  readonly saved: number;
  readonly solvedAt: number;
}

export function naiveShortCut(
  game: Game,
  id: NodeId,
  given: readonly NodeId[],
  minutes: number,
): NaiveShortCut {
  const before = naiveGame(game);
  const times = naiveTimes(before, expectedOf(before));
  const changed = naiveGame(withShortCut(game, id, given, minutes));
  // With nothing between at hand and open, the start of the changed node is when it can be begun.
  const at = naiveBegins(game, before, id, given);
  const skips = naiveMustDo(before).filter(
    (step) => step !== id && times.finish.has(id) && naiveSolvable(changed, new Set([step])),
  );
  const minutesOfStep = (step: NodeId) => {
    const node = before.nodes.get(step);
    return node ? expectedMinutes(node) : 0;
  };
  const shortest = naiveShortest(before, expectedOf(before));
  const after = naiveShortest(changed, new Map([...expectedOf(changed), [id, minutes]]));
  const held = new Map(game.nodes);
  for (const step of skips) {
    const node = game.nodes.get(step);
    if (node) held.set(step, { ...node, atMinute: Math.max(node.atMinute ?? 0, at) });
  }
  const late = naiveGame({ ...game, nodes: held });
  return {
    at,
    skips,
    minutesSkipped: skips.reduce((sum, step) => sum + minutesOfStep(step), 0),
    saved: times.finish.has(id) && naiveSolvable(before) ? Math.max(0, shortest - after) : 0,
    solvedAt: naiveTimes(late, expectedOf(late)).finish.get(id) ?? Infinity,
  };
}

/** A lock can be begun when a copy of its box that nothing shuts would open; a place at once. */
function naiveBegins(game: Game, before: NaiveGame, id: NodeId, given: readonly NodeId[]): number {
  const { finish } = naiveTimes(before, expectedOf(before));
  const node = game.nodes.get(id);
  const box = node?.kind === 'fastener' ? game.nodes.get(node.on) : undefined;
  const ends = given.map((other) => finish.get(other) ?? Infinity);
  const own = node?.atMinute ?? 0;
  if (!box) return Math.max(own, ...ends);
  const copy = 'the same box';
  const nodes = new Map(game.nodes).set(copy, Object.assign({}, box, { id: copy }, fixed(0)));
  const links = new Map(game.links);
  for (const [key, link] of game.links) {
    if (link.to === box.id) links.set(`copy ${key}`, { ...link, id: `copy ${key}`, to: copy });
  }
  const doubled = naiveGame({ ...game, nodes, links });
  const hand = naiveTimes(doubled, expectedOf(doubled)).finish.get(copy) ?? Infinity;
  return Math.max(own, hand, ...ends);
}

export interface NaiveStage {
  readonly at: number;
  readonly known: readonly number[];
  readonly left: number;
  readonly skips: readonly NodeId[];
  readonly saved: number;
  readonly quicker: boolean;
}

/** Every code of so many digits, written out. */
export function allCodes(length: number): string[] {
  return Array.from({ length: 10 ** length }, (_, code) => String(code).padStart(length, '0'));
}

/** The stages of a number lock with a code, as guess.ts states them, from the document; every code is written out and looked at. */
export function naiveStages(game: Game, id: NodeId): NaiveStage[] {
  const lock = game.nodes.get(id);
  if (lock?.kind !== 'fastener' || lock.code === undefined) throw new Error(`no lock with a code: ${id}`);
  const code = lock.code;
  const before = naiveGame(game);
  const { finish } = naiveTimes(before, expectedOf(before));
  const end = (other: NodeId) => finish.get(other) ?? Infinity;
  const needs = before.needs.get(id) ?? [];
  const allNeeded = lock.need === undefined || lock.need === 'all' || lock.need >= needs.length;
  const hand = naiveBegins(game, before, id, []);
  const tools = needs.filter((need) => allNeeded && before.nodes.get(need)?.kind === 'tool');
  if (hand === Infinity || tools.some((tool) => end(tool) === Infinity)) return [];
  const answerOf = (node: GameNode | undefined) =>
    node?.kind === 'clue' || node?.kind === 'puzzle' ? node.answer : undefined;
  const order = naiveOrder(before);
  const sources = [...game.links.values()]
    .flatMap((link) => {
      const answer = answerOf(before.nodes.get(link.from));
      if (link.to !== id || answer === undefined || end(link.from) === Infinity) return [];
      if (link.at !== undefined && !allNeeded) return [];
      // A part gives as many positions as it has symbols.
      const at = link.at?.slice(0, answer.length) ?? [...code].map((_, i) => i + 1);
      return [{ node: link.from, at }];
    })
    .sort((a, b) => {
      const gap = end(a.node) - end(b.node);
      return Math.abs(gap) > 1e-6
        ? gap
        : order.indexOf(a.node) - order.indexOf(b.node) || codePoints(a.node, b.node);
    });
  const known = new Set<number>();
  const given: NodeId[] = [...tools];
  const take = ({ node, at }: (typeof sources)[number]) => {
    if (at.every((position) => known.has(position))) return false;
    for (const position of at) known.add(position);
    given.push(node);
    return true;
  };
  const stage = (): NaiveStage => {
    const left = allCodes(code.length).filter((other) =>
      [...known].every((at) => other[at - 1] === code[at - 1]),
    );
    const guess = naiveShortCut(game, id, given, ((left.length + 1) / 2) * (5 / 60));
    const at = sorted(known);
    if (left.length === 1) return { at: guess.at, known: at, left: 1, skips: [], saved: 0, quicker: false };
    const minutes = ((left.length + 1) / 2) * (5 / 60);
    const solved = guess.skips.length > 0 ? guess.solvedAt : end(id);
    const gains = guess.skips.length > 0 || guess.saved > expectedMinutes(lock) + 1e-6;
    const saved = guess.at + minutes < end(id) ? guess.saved : 0;
    const quicker = gains && solved - (guess.at + minutes) > 1e-6;
    return { at: guess.at, known: at, left: left.length, skips: guess.skips, saved, quicker };
  };
  const early = sources.filter(({ node }) => hand - end(node) > 1e-6);
  for (const source of early) if (known.size < code.length) take(source);
  const stages = [stage()];
  for (const source of sources.slice(early.length)) {
    if (known.size >= code.length || !take(source) || known.size >= code.length) continue;
    stages.push(stage());
  }
  return stages;
}

function sorted(positions: ReadonlySet<number>): number[] {
  return [...positions].sort((a, b) => a - b);
}
