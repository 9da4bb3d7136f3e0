/** A good code to draw for a lock, where it is plain to change: nothing that is written down would have to be written anew. */
import type { FastenerCode } from '../../../src/engine/codes.ts';
import type { Index } from '../../../src/engine/measures.ts';
import { rowOf } from '../../../src/engine/rows.ts';
import { fastenerType, type PickOne } from '../../../src/fasteners/index.ts';
import type { Assessment } from '../../../src/findings/assess.ts';
import { newCode } from '../../../src/findings/new-code.ts';
import type { Proposal } from '../../../src/findings/proposal.ts';
import type { NodeOf } from '../../../src/game/model.ts';

/**
 * Sets the lock and all that gives its code. Undefined where a text would be wrong afterwards (clues and puzzles that the code is made
 * of have words on them, or its sources are at odds with it), and where the type can draw none.
 */
export function drawnCode(
  assessment: Assessment,
  lock: NodeOf<'fastener'>,
  pick: PickOne,
): Proposal | undefined {
  const { context, network } = assessment;
  const index = network.index.get(lock.id);
  const entry = context.codes().find(({ node }) => node === index);
  if (!entry || entry.problems.length > 0 || isWritten(assessment, entry)) return undefined;
  const type = fastenerType(lock.type);
  const filled = entry.sources.flatMap(({ at }) => at ?? []);
  const length =
    type.length(lock.hardware) ?? (Math.max(entry.symbols.length, ...filled) || type.usualLength);
  const symbols = length === undefined ? [] : type.draw(pick, length, lock.hardware);
  return symbols.length === 0 ? undefined : newCode(context, entry, symbols);
}

/** Whether any paper or puzzle before the lock has words, from which the code may be worked out. */
function isWritten({ game, network, context }: Assessment, { node, sources }: FastenerCode): boolean {
  const giving = new Set<Index>(sources.map((source) => source.node));
  for (const source of giving) {
    for (const before of rowOf(network.needs, source)) {
      const kind = context.kindOf(before);
      if (before !== node && (kind === 'clue' || kind === 'puzzle')) giving.add(before);
    }
  }
  return [...giving].some((source) => (game.nodes.get(context.idOf(source))?.text ?? '').trim() !== '');
}

/** Chance from the browser, each alike: what is above the largest multiple of `count` is drawn again. */
export const pickAtRandom: PickOne = (count) => {
  const range = 2 ** 32;
  const limit = range - (range % count);
  const word = new Uint32Array(1);
  let drawn: number;
  do {
    crypto.getRandomValues(word);
    drawn = word[0] ?? 0;
  } while (drawn >= limit);
  return drawn % count;
};
