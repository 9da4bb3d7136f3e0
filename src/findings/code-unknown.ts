/** A code that is not yet known: nobody has set it, or nothing before the lock gives it. Worth a look, and not wrong. */
import type { FastenerCode } from '../engine/codes.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { canBeSet, setAnswer, setCode, withAnswer, withCode } from './mends.ts';
import { defineRule } from './rule.ts';

export interface CodeUnknown {
  readonly fastener: NodeId;
  readonly lacks: 'code' | 'answer' | 'both';
  /** What leads to the lock. */
  readonly sources: readonly NodeId[];
}

/** The code that is given, in symbols. */
function wholeGiven({ sources, problems }: FastenerCode): readonly string[] | undefined {
  if (problems.length > 0) return undefined;
  const whole = sources.find(({ at }) => at === undefined);
  if (whole) return whole.symbols;
  const symbols = new Map<number, string>();
  for (const { at, symbols: own } of sources) {
    at?.forEach((position, i) => {
      symbols.set(position, own[i] ?? '');
    });
  }
  const code = Array.from({ length: symbols.size }, (_, i) => symbols.get(i + 1));
  const given = code.filter((symbol) => symbol !== undefined);
  return given.length > 0 && given.length === code.length ? given : undefined;
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
    const lock = context.game.nodes.get(values.fastener);
    if (lock?.kind !== 'fastener') return;
    const type = fastenerType(lock.type);
    const source = entry.sources.find(({ at }) => at === undefined);
    if (entry.code === undefined && whole !== undefined && canBeSet(type, whole, lock.hardware)) {
      const setTo = setCode(values.fastener, type.write(whole));
      yield source ? withAnswer(setTo, context.idOf(source.node), source) : setTo;
    }
    if (entry.code === undefined || values.lacks !== 'answer') return;
    const giving = values.sources.filter((id) => {
      const kind = context.game.nodes.get(id)?.kind;
      return kind === 'puzzle' || kind === 'clue';
    });
    const puzzles = giving.filter((id) => context.game.nodes.get(id)?.kind === 'puzzle');
    for (const source of puzzles.length > 0 ? puzzles : giving) {
      yield withCode(setAnswer(source, entry.written), values.fastener, entry);
    }
  },
});
