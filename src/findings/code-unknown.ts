/** A code that is not yet known: nobody has set it, or nothing before the lock gives it. Worth a look, and not wrong. */
import type { FastenerCode } from '../engine/codes.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { setAnswer, setCode } from './mends.ts';
import { defineRule } from './rule.ts';

export interface CodeUnknown {
  readonly fastener: NodeId;
  readonly lacks: 'code' | 'answer' | 'both';
  /** What leads to the lock. */
  readonly sources: readonly NodeId[];
}

function wholeGiven({ sources, problems }: FastenerCode): string | undefined {
  if (problems.length > 0) return undefined;
  const whole = sources.find(({ at }) => at === undefined);
  if (whole) return whole.answer;
  const symbols = new Map<number, string>();
  for (const { at, symbols: own } of sources) {
    at?.forEach((position, i) => {
      symbols.set(position, own[i] ?? '');
    });
  }
  const code = Array.from({ length: symbols.size }, (_, i) => symbols.get(i + 1));
  return code.length > 0 && code.every((symbol) => symbol !== undefined) ? code.join('') : undefined;
}

function sourcesOf(context: Context, fastener: NodeId): NodeId[] {
  return context
    .linksTo(fastener)
    .map((link) => link.from)
    .filter((from) => context.network.index.has(from));
}

export const codeUnknown: Rule<'codeUnknown', CodeUnknown> = defineRule({
  code: 'codeUnknown',
  find(context) {
    const { network } = context;
    return context.codes().flatMap((code) => {
      // A lock that nothing opens, or whose sources disagree, has a finding of its own.
      if (code.state !== 'notYetKnown' || network.closed[code.node] === 1) return [];
      if (code.problems.some(({ problem }) => problem !== 'overlap' && problem !== 'gap')) return [];
      const fastener = context.idOf(code.node);
      const hasCode = code.code !== undefined;
      const lacks = hasCode ? 'answer' : code.sources.length > 0 ? 'code' : 'both';
      const sources = sourcesOf(context, fastener);
      return [
        {
          code: 'codeUnknown',
          level: 'look',
          nodes: [fastener],
          links: [],
          values: { fastener, lacks, sources },
        },
      ];
    });
  },
  *mends(context, { values }) {
    const entry = context.codes().find(({ node }) => context.idOf(node) === values.fastener);
    if (!entry) return;
    const whole = wholeGiven(entry);
    if (entry.code === undefined && whole !== undefined) yield setCode(values.fastener, whole);
    if (entry.code === undefined || values.lacks !== 'answer') return;
    const giving = values.sources.filter((id) => {
      const kind = context.game.nodes.get(id)?.kind;
      return kind === 'puzzle' || kind === 'clue';
    });
    const puzzles = giving.filter((id) => context.game.nodes.get(id)?.kind === 'puzzle');
    for (const source of puzzles.length > 0 ? puzzles : giving) yield setAnswer(source, entry.code);
  },
});
