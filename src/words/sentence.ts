/** A sentence that a person reads, with the parts that lead somewhere kept apart from plain text. */
import type { NodeId } from '../game/model.ts';

/** What an underlined word counts, and so where it leads. */
export type Topic = 'stops' | 'look' | 'steps' | 'needed' | 'chain' | 'time' | 'chance' | 'leftOut';

export type Part =
  | string
  /** Set bold. */
  | { readonly strong: string }
  /** A code or an answer as it is said: set in mono. */
  | { readonly code: string }
  /** The name of a node, set bold; leads to it. */
  | { readonly node: NodeId; readonly text: string }
  | { readonly topic: Topic; readonly text: string };

export type Sentence = readonly Part[];

export function plain(sentence: Sentence): string {
  return sentence.map(textOf).join('');
}

export function textOf(part: Part): string {
  if (typeof part === 'string') return part;
  if ('strong' in part) return part.strong;
  return 'code' in part ? part.code : part.text;
}
