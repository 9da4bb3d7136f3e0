/** An answer that fits a lock that it does not lead to, where trying it there skips something. Locks of one code are told in same-code.ts. */

import type { FastenerCode } from '../engine/codes.ts';
import type { Index } from '../engine/measures.ts';
import { codeOf } from '../game/codes.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { anotherCode } from './recode.ts';
import { defineRule } from './rule.ts';
import { tried } from './tried.ts';

export interface OpensAnother {
  /** Whose answer it is. */
  readonly source: NodeId;
  readonly fastener: NodeId;
  /** As it is said. */
  readonly code: string;
  readonly skips: readonly NodeId[];
  readonly minutesSkipped: number;
}

export const opensAnother: Rule<'opensAnother', OpensAnother> = defineRule({
  code: 'opensAnother',
  find(context) {
    const answers = strayAnswers(context);
    if (answers.size === 0) return [];
    return context.codes().flatMap((entry) => {
      const { node, code, state } = entry;
      if (code === undefined || state === 'latch' || state === 'key') return [];
      const fastener = context.idOf(node);
      return (answers.get(code) ?? []).flatMap((source) => {
        if (entry.sources.some((own) => own.node === source)) return [];
        const { skips, minutesSkipped } = tried(context, node, [source]);
        if (skips.length === 0) return [];
        const from = context.idOf(source);
        return [
          {
            code: 'opensAnother' as const,
            level: 'look' as const,
            nodes: [from, fastener],
            links: [],
            values: { source: from, fastener, code: entry.said, skips, minutesSkipped },
          },
        ];
      });
    });
  },
  mends: (context, { values }) => anotherCode(context, values.fastener),
});

/** Reached puzzles and clues by their answer, but for those that give their whole answer to a lock: these are told with its code. */
function strayAnswers(context: Context): ReadonlyMap<string, readonly Index[]> {
  const giving = new Set(context.codes().flatMap(givesWhole));
  const codes = new Set(context.codes().map(({ code }) => code));
  const answers = new Map<string, Index[]>();
  for (const [node, id] of context.network.ids.entries()) {
    if (context.kindOf(node) === 'fastener' || context.measures.reached[node] !== 1 || giving.has(node))
      continue;
    const answer = codeOf(context.game, id);
    if (answer === undefined || !codes.has(answer)) continue;
    const list = answers.get(answer);
    if (list) list.push(node);
    else answers.set(answer, [node]);
  }
  return answers;
}

function givesWhole({ sources, code }: FastenerCode): Index[] {
  return sources.filter(({ at, answer }) => at === undefined && answer === code).map(({ node }) => node);
}
