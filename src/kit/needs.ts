/**
 * What a game needs of a cupboard, from the document alone. What is left out needs nothing.
 *
 * Copies. Of a thing that the teams share, or that lies in one or hangs on one that they share, there are as many as the nearest of these, from
 * the thing itself upwards, says (`shared`); of everything else one for each team.
 * Locks. Every fastener needs a lock of its type, or a key lock where a key leads to it; a latch is a part of its box and needs nothing.
 * Locks that *hang* are all but latches and typed answers: what is typed on a device shuts nothing.
 * Boxes. Every container needs one that takes nothing, one lock or a hasp, as none, one or several locks hang on it; with several it needs a hasp
 * with a hole for each besides. Two sorts need none: a container with typed answers and nothing that hangs, which is the device
 * itself; and one that only latches shut, one of them `checked`, which the teacher hands over (an envelope will do).
 * Tools. Every tool, but one that is `checked`: that is the teacher's to show or to lend.
 * Cost: linear in nodes and links, times the depth of holders.
 */
import { isLeftOut, parentInUse } from '../engine/left-out.ts';
import { fastenerType } from '../fasteners/index.ts';
import { lessonOf, sharedOf } from '../game/defaults.ts';
import type { Game, NodeId, NodeOf } from '../game/model.ts';

/** The type that is typed on a device. */
export const TYPED = 'typed';

export interface LockNeed {
  readonly node: NodeOf<'fastener'>;
  readonly copies: number;
  /** The type of lock; empty where the game does not say. */
  readonly type: string;
}

export interface BoxNeed {
  readonly node: NodeOf<'container'>;
  readonly copies: number;
  /** How many locks hang on it. */
  readonly locks: number;
}

export interface ToolNeed {
  readonly node: NodeOf<'tool'>;
  readonly copies: number;
}

/** Each list by id, as in the game's file. */
export interface Needs {
  readonly locks: readonly LockNeed[];
  readonly boxes: readonly BoxNeed[];
  readonly tools: readonly ToolNeed[];
}

function byId<N extends { readonly node: { readonly id: NodeId } }>(needs: N[]): N[] {
  return needs.sort((a, b) => (a.node.id < b.node.id ? -1 : 1));
}

/** How many there are to be of a node that is used. */
export function copiesOf(game: Game, id: NodeId, teams: number): number {
  for (let at: NodeId | undefined = id; at !== undefined; at = parentInUse(game, at)) {
    const node = game.nodes.get(at);
    const shared = node && sharedOf(node);
    if (shared !== undefined) return Math.min(shared, teams);
  }
  return teams;
}

/** The type of lock that a fastener needs: what a key leads to is a key lock, whatever it says. */
function lockTypes(game: Game): (node: NodeOf<'fastener'>) => string {
  const takesKey = new Set<NodeId>();
  for (const { from, to } of game.links.values()) {
    if (game.nodes.get(from)?.kind === 'key' && !isLeftOut(game, from)) takesKey.add(to);
  }
  return ({ id, type = '' }) =>
    takesKey.has(id) && fastenerType(type).opensWith !== 'nothing' ? 'key' : type;
}

export function hangs(type: string): boolean {
  return fastenerType(type).opensWith !== 'nothing' && type !== TYPED;
}

/** For more teams than any class has, nothing is worked out. */
const MOST_TEAMS = 50;

/** How many teams the cupboard has to serve: those of the lesson where nothing else is asked, at least 1 and at most MOST_TEAMS. */
export function teamsOf(game: Game, teams = lessonOf(game).teams): number {
  return Math.max(1, Math.min(MOST_TEAMS, Math.floor(teams)));
}

/** @param teams from teamsOf */
export function needsOf(game: Game, teams: number): Needs {
  const locks: LockNeed[] = [];
  const boxes: BoxNeed[] = [];
  const tools: ToolNeed[] = [];
  const typeOf = lockTypes(game);
  const on = new Map<NodeId, NodeOf<'fastener'>[]>();
  for (const node of game.nodes.values()) {
    if (isLeftOut(game, node.id)) continue;
    const copies = copiesOf(game, node.id, teams);
    if (node.kind === 'tool' && node.checked !== true) tools.push({ node, copies });
    if (node.kind !== 'fastener') continue;
    const type = typeOf(node);
    on.set(node.on, [...(on.get(node.on) ?? []), node]);
    if (fastenerType(type).opensWith !== 'nothing') locks.push({ node, copies, type });
  }
  for (const node of game.nodes.values()) {
    if (node.kind !== 'container' || isLeftOut(game, node.id)) continue;
    const fasteners = on.get(node.id) ?? [];
    const hanging = fasteners.filter((fastener) => hangs(typeOf(fastener))).length;
    const isDevice = hanging === 0 && fasteners.some((fastener) => typeOf(fastener) === TYPED);
    const isHandedOver =
      fasteners.some(({ checked }) => checked === true) &&
      fasteners.every((fastener) => fastenerType(typeOf(fastener)).opensWith === 'nothing');
    if (isDevice || isHandedOver) continue;
    boxes.push({ node, copies: copiesOf(game, node.id, teams), locks: hanging });
  }
  return { locks: byId(locks), boxes: byId(boxes), tools: byId(tools) };
}
