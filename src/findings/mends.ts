/** Proposals that several rules make, and where a thing is best put. Whether one really settles its finding is tried elsewhere (propose.ts). */
import { fastenerType } from '../fasteners/index.ts';
import { codeOf } from '../game/codes.ts';
import { LEGAL_TARGETS } from '../game/links.ts';
import type { GameNode, NodeId } from '../game/model.ts';
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
 * Holders to put a thing in, the most sensible first: boxes before hiding places; those with least in them, so that every box
 * that is opened gives something; the one that is opened last. Only what is reached.
 */
export function holdersFor(context: Context, except: ReadonlySet<NodeId>): NodeId[] {
  const { network, measures } = context;
  const filling = (node: number) =>
    (network.contents.starts[node + 1] ?? 0) - (network.contents.starts[node] ?? 0);
  const holders = Array.from(measures.reached.keys()).filter((node) => {
    const kind = context.kindOf(node);
    return (
      measures.reached[node] === 1 &&
      (kind === 'container' || kind === 'place') &&
      !except.has(context.idOf(node))
    );
  });
  const rank = (node: number) => (context.kindOf(node) === 'container' ? 0 : 1);
  return holders
    .sort(
      (a, b) =>
        rank(a) - rank(b) ||
        filling(a) - filling(b) ||
        (measures.finish[b] ?? 0) - (measures.finish[a] ?? 0) ||
        a - b,
    )
    .map(context.idOf);
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
