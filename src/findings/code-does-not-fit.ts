/**
 * A code that its lock cannot show. Where the document says what the lock is like, it cannot be set so and does not open: the level is
 * that of a wrong code. Where it does not, the lock may still be one that can, so it is worth a look.
 */
import { isUnsettable } from '../engine/codes.ts';
import { FASTENER_TYPES, fastenerType, type Misfit } from '../fasteners/index.ts';
import { offers } from '../fasteners/word-list/index.ts';
import { writtenCode } from '../game/codes.ts';
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { levelOf, prizesLost } from './level.ts';
import { drawnCodes, newCode } from './new-code.ts';
import type { Proposal } from './proposal.ts';
import { defineRule } from './rule.ts';

export interface CodeDoesNotFit {
  readonly fastener: NodeId;
  readonly code: string;
  /** The type of the lock. */
  readonly type: string;
  readonly misfits: readonly Misfit[];
  readonly prizes: readonly NodeId[];
}

/** Words and draws to try. */
const OFFERED = 6;

export const codeDoesNotFit: Rule<'codeDoesNotFit', CodeDoesNotFit> = defineRule({
  code: 'codeDoesNotFit',
  find(context) {
    return context.codes().flatMap((code) => {
      if (code.state === 'latch' || code.state === 'key' || code.misfits.length === 0) return [];
      const fastener = context.idOf(code.node);
      const lock = context.game.nodes.get(fastener);
      if (lock?.kind !== 'fastener') return [];
      const prizes = isUnsettable(code) ? prizesLost(context, [code.node]) : [];
      return [
        {
          code: 'codeDoesNotFit' as const,
          level: levelOf(prizes),
          nodes: [fastener],
          links: [],
          values: { fastener, code: code.said, type: lock.type ?? '', misfits: code.misfits, prizes },
        },
      ];
    });
  },
  *mends(context, { values }) {
    const { fastener } = values;
    const entry = context.codes().find(({ node }) => context.idOf(node) === fastener);
    const lock = context.game.nodes.get(fastener);
    if (!entry || lock?.kind !== 'fastener') return;
    const type = fastenerType(lock.type);
    const { hardware } = lock;
    const fits = (symbols: readonly string[]) =>
      symbols.length > 0 && type.misfits(symbols, hardware).length === 0;
    const found: (Proposal | undefined)[] = [];
    const reading = type.read(writtenCode(context.game, fastener)?.typed ?? '', hardware);
    if (reading.ok && fits(type.symbols(reading.code))) {
      found.push(newCode(context, entry, type.symbols(reading.code)));
    }
    if (!isUnsettable(entry)) {
      const other = FASTENER_TYPES.find(
        (one) =>
          one.opensWith === 'code' &&
          one.type !== type.type &&
          one.misfits(one.symbols(entry.said)).length === 0,
      );
      if (other) {
        found.push({
          code: 'otherType',
          values: { fastener, type: other.type },
          edits: [{ type: 'setFields', id: fastener, fields: { type: other.type } }],
        });
      }
    }
    const length = type.length(hardware) ?? entry.symbols.length;
    if (type.type === 'word') {
      const wheels = Array.from({ length }, (_, position) => type.wheel(position, hardware));
      const instead = entry.symbols.join('');
      const words = context.words ? offers(context.words, wheels, { instead, count: OFFERED }) : [];
      for (const word of words) found.push(newCode(context, entry, type.symbols(word)));
    } else {
      for (const symbols of drawnCodes(context, entry, length)) {
        if (found.length >= OFFERED) break;
        if (fits(symbols)) found.push(newCode(context, entry, symbols));
      }
    }
    for (const proposal of found) if (proposal) yield proposal;
  },
});
