/** What the kinds, and the types of lock, are called on the screen and on paper. */
import { isKnownType, type LockType } from '../fasteners/index.ts';
import type { GameNode, Kind } from '../game/model.ts';

const KIND: Readonly<Record<Kind, string>> = {
  place: 'hiding place',
  container: 'box',
  fastener: 'lock',
  key: 'key',
  clue: 'clue',
  tool: 'tool',
  puzzle: 'puzzle',
  prize: 'prize',
};

const KINDS: Readonly<Record<Kind, string>> = {
  place: 'hiding places',
  container: 'boxes',
  fastener: 'locks',
  key: 'keys',
  clue: 'clues',
  tool: 'tools',
  puzzle: 'puzzles',
  prize: 'prizes',
};

const LOCK: Readonly<Record<LockType, string>> = {
  key: 'key lock',
  number: 'number lock',
  word: 'word lock',
  direction: 'direction lock',
  dial: 'dial lock',
  picture: 'picture lock',
  typed: 'typed-code lock',
  latch: 'latch',
};

/** On a key lock that nothing opens yet. */
export const NO_KEY = 'no key';

export function kindName(kind: Kind): string {
  return KIND[kind];
}

export function kindPlural(kind: Kind): string {
  return KINDS[kind];
}

/** "number lock", "latch"; "lock" for a type that this version does not know, or none. */
export function lockName(type: string | undefined): string {
  return type !== undefined && isKnownType(type) ? LOCK[type] : KIND.fastener;
}

/** The kind in words, a lock by its type. */
export function kindOf(node: GameNode): string {
  return node.kind === 'fastener' ? lockName(node.type) : KIND[node.kind];
}

/** "a box", "an answer". */
export function withArticle(noun: string): string {
  return `${/^[aeiou]/iu.test(noun) ? 'an' : 'a'} ${noun}`;
}
