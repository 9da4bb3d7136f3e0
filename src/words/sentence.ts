/** A sentence that a person reads, with the parts that lead somewhere kept apart from plain text. */
import type { NodeId } from '../game/model.ts';

/** What an underlined word counts, and so where it leads. */
export type Topic = 'stops' | 'look' | 'steps' | 'needed' | 'chain' | 'time';

export type Part =
  | string
  /** Set bold. */
  | { readonly strong: string }
  /** The name of a node, set bold; leads to it. */
  | { readonly node: NodeId; readonly text: string }
  | { readonly topic: Topic; readonly text: string };

export type Sentence = readonly Part[];

export function plain(sentence: Sentence): string {
  return sentence
    .map((part) => (typeof part === 'string' ? part : 'strong' in part ? part.strong : part.text))
    .join('');
}
