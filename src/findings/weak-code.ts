/** A code that is tried before others. */
import { fastenerType, type WeakReason } from '../fasteners/index.ts';
import { offers } from '../fasteners/word-list/index.ts';
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { drawnCodes, newCode } from './new-code.ts';
import { defineRule } from './rule.ts';

export interface WeakCode {
  readonly fastener: NodeId;
  readonly code: string;
  readonly reason: WeakReason;
  /** What gives it. */
  readonly sources: readonly NodeId[];
}

/** So many words are tried. */
const WORDS = 4;

export const weakCode: Rule<'weakCode', WeakCode> = defineRule({
  code: 'weakCode',
  find(context) {
    return context.codes().flatMap((code) => {
      if (code.state === 'latch' || code.state === 'key') return [];
      const fastener = context.idOf(code.node);
      const lock = context.game.nodes.get(fastener);
      if (lock?.kind !== 'fastener') return [];
      const reason = fastenerType(lock.type).weak(code.symbols, { hardware: lock.hardware });
      if (reason === undefined) return [];
      return [
        {
          code: 'weakCode' as const,
          level: 'look' as const,
          nodes: [fastener],
          links: [],
          values: {
            fastener,
            code: code.said,
            reason,
            sources: code.sources.map(({ node }) => context.idOf(node)),
          },
        },
      ];
    });
  },
  *mends(context, { values }) {
    const { fastener } = values;
    const entry = context.codes().find(({ node }) => context.idOf(node) === fastener);
    const lock = context.game.nodes.get(fastener);
    // Which of two codes is meant has to be settled first.
    if (!entry || lock?.kind !== 'fastener' || entry.state === 'wrong') return;
    const type = fastenerType(lock.type);
    const length = type.length(lock.hardware) ?? entry.symbols.length;
    if (type.type === 'word' && context.words) {
      const wheels = Array.from({ length }, (_, position) => type.wheel(position, lock.hardware));
      for (const word of offers(context.words, wheels, { from: 20, count: WORDS })) {
        const proposal = newCode(context, entry, type.symbols(word));
        if (proposal) yield proposal;
      }
    }
    for (const symbols of drawnCodes(context, entry, length)) {
      const proposal = newCode(context, entry, symbols);
      if (proposal) yield proposal;
    }
  },
});
