/** What a teacher calls a lock, where that says more than its type, its box and its key do. */
import { rowOf } from '../engine/rows.ts';
import type { Assessment } from '../findings/assess.ts';
import type { NodeId } from '../game/model.ts';
import { newName } from './canvas.ts';
import { kindOf } from './kinds.ts';

/** What goes without saying of any lock. */
const PLAIN = ['a', 'an', 'the', 'of', 'on', 'for', 'code', newName('fastener')];

/**
 * "Small red padlock"; undefined for a lock that is called by the words of its type, its box or its keys alone: "Word lock",
 * "Tin lock" on Biscuit tin, "Red key lock" for Red key.
 */
export function ownLockName({ game, network, context }: Assessment, lock: NodeId): string | undefined {
  const node = game.nodes.get(lock);
  if (node?.kind !== 'fastener') return undefined;
  const needs = rowOf(network.needs, network.index.get(lock) ?? 0);
  const keys = Array.from(needs).filter((need) => context.kindOf(need) === 'key');
  const known = [kindOf(node), game.nodes.get(node.on)?.name ?? '', ...PLAIN];
  for (const key of keys) known.push(network.names[key] ?? '');
  const words = new Set(known.flatMap(wordsOf));
  return wordsOf(node.name).every((word) => words.has(word)) ? undefined : node.name.trim();
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
