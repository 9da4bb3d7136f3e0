/** Proposals that several rules make, and where a thing is best put. Whether one really settles its finding is tried elsewhere (propose.ts). */
import type { CodeSource, FastenerCode } from '../engine/codes.ts';
import { type FastenerType, fastenerType, type Hardware } from '../fasteners/index.ts';
import { codeOf, normaliseCode } from '../game/codes.ts';
import { LEGAL_TARGETS } from '../game/links.ts';
import type { GameNode, Kind, NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Fresh } from './finding.ts';
import type { Proposal } from './proposal.ts';

export function bringBack(nodes: readonly NodeId[]): Proposal {
  return { code: 'bringBack', values: { nodes }, edits: [{ type: 'leaveOut', ids: nodes, leftOut: false }] };
}

export function linkUp(fresh: Fresh, from: NodeId, to: NodeId): Proposal {
  return { code: 'link', values: { from, to }, edits: [{ type: 'link', id: fresh.newId(), from, to }] };
}

export function putIn(thing: NodeId, holder: NodeId): Proposal {
  return {
    code: 'putIn',
    values: { thing, holder },
    edits: [{ type: 'place', ids: [thing], holder, before: null }],
  };
}

export function setCode(fastener: NodeId, code: string): Proposal {
  return {
    code: 'setCode',
    values: { fastener, code },
    edits: [{ type: 'setFields', id: fastener, fields: { code } }],
  };
}

export function setAnswer(source: NodeId, answer: string): Proposal {
  return {
    code: 'setAnswer',
    values: { source, answer },
    edits: [{ type: 'setFields', id: source, fields: { answer } }],
  };
}

/** Whether a lock can be set so; where it does not say what it is like, how many symbols it takes is left open. */
export function canBeSet(
  type: FastenerType,
  symbols: readonly string[],
  hardware: Hardware | undefined,
): boolean {
  return type.misfits(symbols, hardware).every(({ misfit, assumed }) => misfit === 'length' && assumed);
}

/** The same with the lock's code in its stored form, where it is written otherwise: whole texts are compared as they stand. */
export function withCode(proposal: Proposal, fastener: NodeId, { code, written }: FastenerCode): Proposal {
  if (normaliseCode(written) === code) return proposal;
  return { ...proposal, edits: [...proposal.edits, ...setCode(fastener, written).edits] };
}

/** The same with the answer in its stored form. */
export function withAnswer(proposal: Proposal, source: NodeId, { answer, written }: CodeSource): Proposal {
  if (normaliseCode(written) === answer) return proposal;
  return { ...proposal, edits: [...proposal.edits, ...setAnswer(source, written).edits] };
}

export function needAll(node: NodeId, possible: number): Proposal {
  return {
    code: 'needAll',
    values: { node, possible },
    edits: [{ type: 'setFields', id: node, fields: { need: undefined } }],
  };
}

/** Asks for as many as there are; where that is one or none, for all of them. */
export function lowerNeed(node: NodeId, possible: number): Proposal {
  if (possible < 2) return needAll(node, possible);
  return {
    code: 'lowerNeed',
    values: { node, need: possible },
    edits: [{ type: 'setFields', id: node, fields: { need: possible } }],
  };
}

/**
 * Holders to put a thing in, the most sensible first, and only what is reached. A box before anything else: one with least in it,
 * so that every box that is opened gives something, and the one that is opened last. Then the empty hiding place that is searched
 * first. Places that hold something come last, and only where there is no box.
 */
export function holdersFor(context: Context, except: ReadonlySet<NodeId>): NodeId[] {
  const { network, measures, game } = context;
  const filling = (node: number) =>
    (network.contents.starts[node + 1] ?? 0) - (network.contents.starts[node] ?? 0);
  const finish = (node: number) => measures.finish[node] ?? 0;
  const reached = (kind: Kind) =>
    Array.from(measures.reached.keys()).filter(
      (node) =>
        measures.reached[node] === 1 && context.kindOf(node) === kind && !except.has(context.idOf(node)),
    );
  const boxes = reached('container').sort(
    (a, b) => filling(a) - filling(b) || finish(b) - finish(a) || a - b,
  );
  const isUsed = (node: number) => filling(node) > 0 || game.nodes.get(context.idOf(node))?.decoy === true;
  const places = reached('place')
    .filter((node) => boxes.length === 0 || !isUsed(node))
    .sort((a, b) => filling(a) - filling(b) || finish(a) - finish(b) || a - b);
  return [...boxes.slice(0, 1), ...places.slice(0, 1), ...boxes.slice(1), ...places.slice(1)].map(
    context.idOf,
  );
}

const sameName = (a: GameNode, b: GameNode) => {
  const plain = (node: GameNode) => node.name.trim().toLowerCase();
  return plain(a) !== '' && plain(a) === plain(b);
};

/** Whether one could be what opens the other: a key and its lock carry the same name, an answer is the code. */
export function isMatch(context: Context, source: GameNode, fastener: GameNode): boolean {
  if (fastener.kind !== 'fastener' || !LEGAL_TARGETS[source.kind].includes('fastener')) return false;
  const opensWith = fastenerType(fastener.type).opensWith;
  if (opensWith === 'nothing') return false;
  if (source.kind === 'key') return opensWith !== 'code' && sameName(source, fastener);
  const answer = codeOf(context.game, source.id);
  return answer !== undefined && opensWith !== 'key' && answer === codeOf(context.game, fastener.id);
}
