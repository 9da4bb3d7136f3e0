/** Codes of all locks, as data: what each is set to, and what opens it. */
import type { Index } from '../engine/measures.ts';
import { rowOf } from '../engine/rows.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { Assessment } from '../findings/assess.ts';
import type { Finding } from '../findings/finding.ts';
import type { NodeId, NodeOf } from '../game/model.ts';
import { spelledCode } from '../map/code.ts';

export type Setting =
  /** See spelledCode (src/map/code.ts). */
  | { readonly set: 'code'; readonly words: readonly (readonly string[])[]; readonly directions: boolean }
  /** It takes one of these, or all of them, as its need says. */
  | { readonly set: 'key'; readonly keys: readonly NodeId[] }
  /** A latch. */
  | { readonly set: 'nothing' }
  /** It takes a code, and none is in the game yet; or a key, and there is none. */
  | { readonly set: 'missing' };

export interface Opener {
  readonly node: NodeId;
  /** The positions of the code that it gives, from 1; undefined: all of it. */
  readonly at: readonly number[] | undefined;
}

export interface LockEntry {
  readonly lock: NodeId;
  /** In the order of play, from 1; 0 for one that takes no time or never opens. */
  readonly number: number;
  readonly opens: boolean;
  readonly setting: Setting;
  /** All that leads to it, as far as it is used today. */
  readonly openers: readonly Opener[];
  /** How many of the openers are enough; undefined: all are needed. */
  readonly need: number | undefined;
  /** What is to be said of this lock, its code or what leads to it. */
  readonly findings: readonly Finding[];
}

/** Every lock that is used, in the order of play; those that take no time after them, and those that never open last. */
export function lockEntries(assessment: Assessment): LockEntry[] {
  const { game, network, measures, findings } = assessment;
  const told = new Map<NodeId, Finding[]>();
  for (const finding of findings) {
    const [culprit = ''] = finding.nodes;
    if (game.nodes.get(culprit)?.kind !== 'fastener') continue;
    const list = told.get(culprit);
    if (list) list.push(finding);
    else told.set(culprit, [finding]);
  }
  const rank = (index: Index) => {
    const number = measures.number[index] ?? 0;
    if (number > 0) return number;
    return measures.reached[index] === 1 ? network.size + 1 : network.size + 2;
  };
  const locks: { readonly node: NodeOf<'fastener'>; readonly index: Index }[] = [];
  for (const [index, id] of network.ids.entries()) {
    const node = game.nodes.get(id);
    if (node?.kind === 'fastener') locks.push({ node, index });
  }
  locks.sort((a, b) => rank(a.index) - rank(b.index) || a.index - b.index);
  return locks.map(({ node, index }) => {
    const openers = openersOf(assessment, node.id);
    const need = network.k[index] ?? 0;
    return {
      lock: node.id,
      number: measures.number[index] ?? 0,
      opens: measures.reached[index] === 1,
      setting: settingOf(assessment, node),
      openers,
      need: need < rowOf(network.needs, index).length ? need : undefined,
      findings: told.get(node.id) ?? [],
    };
  });
}

function openersOf({ context, network }: Assessment, lock: NodeId): Opener[] {
  return context
    .linksTo(lock)
    .filter(({ from }) => network.index.has(from))
    .map(({ from, at }) => ({ node: from, at }))
    .sort((a, b) => (a.at?.[0] ?? 0) - (b.at?.[0] ?? 0));
}

/** A lock that a key leads to takes that key, whatever its type. */
function settingOf({ game, network, context }: Assessment, lock: NodeOf<'fastener'>): Setting {
  const type = fastenerType(lock.type);
  if (type.opensWith === 'nothing') return { set: 'nothing' };
  const keys = Array.from(rowOf(network.needs, network.index.get(lock.id) ?? 0))
    .filter((need) => context.kindOf(need) === 'key')
    .map(context.idOf);
  if (keys.length > 0) return { set: 'key', keys };
  const code = type.opensWith === 'key' ? undefined : spelledCode(game, lock.id);
  return code === undefined ? { set: 'missing' } : { set: 'code', ...code };
}
