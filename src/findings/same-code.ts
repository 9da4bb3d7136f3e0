/** Two locks with one code: who knows it for the one can open the other. One finding for each code. */
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { defineRule } from './rule.ts';

export interface SameCode {
  /** Normalised. */
  readonly code: string;
  readonly fasteners: readonly NodeId[];
}

export const sameCode: Rule<'sameCode', SameCode> = defineRule({
  code: 'sameCode',
  find(context) {
    const byCode = new Map<string, NodeId[]>();
    for (const { node, state, code } of context.codes()) {
      if (code === undefined || state === 'latch' || state === 'key') continue;
      const group = byCode.get(code);
      if (group) group.push(context.idOf(node));
      else byCode.set(code, [context.idOf(node)]);
    }
    return [...byCode]
      .filter(([, fasteners]) => fasteners.length > 1)
      .map(([code, fasteners]) => ({
        code: 'sameCode',
        level: 'look',
        nodes: fasteners,
        links: [],
        values: { code, fasteners },
      }));
  },
});
