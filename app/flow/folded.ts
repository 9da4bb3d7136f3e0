/** What a folded box shows of the steps in it: their numbers, and of how they stand the one that most wants to be seen. */
import { type Game, type NodeId, parentOf } from '../../src/game/model.ts';
import type { Heat, LockState, Look, Moment } from './card.ts';

export interface FoldedLook {
  readonly look: Look;
  /** Of all steps in it at any depth, ascending. */
  readonly steps: readonly number[];
}

/** What lies in a box, at any depth, and the locks on it and on the boxes in it. */
export type InsideOf = (box: NodeId) => readonly NodeId[];

const lastInside = new WeakMap<Game['nodes'], InsideOf>();

export function insideOf({ nodes }: Pick<Game, 'nodes'>): InsideOf {
  const known = lastInside.get(nodes);
  if (known) return known;
  const children = new Map<NodeId, NodeId[]>();
  for (const node of nodes.values()) {
    const parent = parentOf(node);
    if (parent === undefined) continue;
    const siblings = children.get(parent);
    if (siblings) siblings.push(node.id);
    else children.set(parent, [node.id]);
  }
  const inside: InsideOf = (box) => (children.get(box) ?? []).flatMap((id) => [id, ...inside(id)]);
  lastInside.set(nodes, inside);
  return inside;
}

export function foldedLook(own: Look, inside: readonly (Look | undefined)[]): FoldedLook {
  const looks = inside.filter((look) => look !== undefined);
  const steps = looks.flatMap(({ number }) => (number > 0 ? [number] : [])).sort((a, b) => a - b);
  const look: Look = {
    ...own,
    state: worst(looks.map(({ state }) => state)),
    culprit: own.culprit || looks.some(({ culprit }) => culprit),
    inChain: own.inChain || looks.some(({ inChain }) => inChain),
    heat: hottest([own.heat, ...looks.map(({ heat }) => heat)]),
    moment: busiest(
      own.moment,
      looks.map(({ moment }) => moment),
    ),
  };
  return { look, steps };
}

const BAD: readonly LockState[] = ['cannotOpen', 'wrongCode', 'staysShut', 'keptShut'];

function worst(states: readonly (LockState | undefined)[]): LockState | undefined {
  return BAD.find((state) => states.includes(state));
}

function hottest(heats: readonly (Heat | undefined)[]): Heat | undefined {
  return heats.reduce((most, heat) => (heat && heat.share > (most?.share ?? -1) ? heat : most), undefined);
}

/** What is being done comes before what could be; of the rest the box itself says enough. */
const BUSY = ['working', 'checking', 'open', 'queueing'];

function busiest(own: Moment | undefined, moments: readonly (Moment | undefined)[]): Moment | undefined {
  const found = BUSY.map((state) => moments.find((moment) => moment?.state === state));
  return found.find((moment) => moment !== undefined) ?? own;
}
