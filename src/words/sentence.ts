/** A sentence that a person reads, with the parts that lead somewhere kept apart from plain text. */
import { graphemesOf } from '../game/graphemes.ts';
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

/** Longer codes are cut in the middle. */
const LONGEST_CODE = 40;
const KEPT = { start: 12, end: 6 } as const;

/** A code as a sentence has it: cut in the middle where it is very long. */
export function codeInWords(code: string): string {
  const symbols = graphemesOf(code);
  if (symbols.length <= LONGEST_CODE) return code;
  return `${symbols.slice(0, KEPT.start).join('')} … ${symbols.slice(-KEPT.end).join('')}`;
}

/** Control characters, and those that turn the direction of writing, as a replacement sign: what a file says cannot move the cursor or disguise itself. */
export function visible(text: string): string {
  return text.replace(/[\p{Cc}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');
}

export function plain(sentence: Sentence): string {
  return sentence.map(textOf).join('');
}

export function textOf(part: Part): string {
  if (typeof part === 'string') return part;
  if ('strong' in part) return part.strong;
  return 'code' in part ? part.code : part.text;
}
