/** A code that is gathered from several answers, where the parts do not make up the code. */
import { fastenerType } from '../fasteners/index.ts';
import type { NodeId } from '../game/model.ts';
import { codeFaults, type Given, given } from './code-fault.ts';
import type { Rule } from './finding.ts';
import { canBeSet, needAll, setCode } from './mends.ts';
import { defineRule } from './rule.ts';

export interface Parts {
  readonly fastener: NodeId;
  /**
   * length: an answer has more or fewer symbols than positions to fill. beyond: it fills a position that the code does not have.
   * gap: nobody gives these positions. notWhole: not all sources are needed, so each has to give the whole code, and this one does not.
   * overlap: two give the same symbol for one position.
   */
  readonly problem: 'length' | 'beyond' | 'gap' | 'notWhole' | 'overlap';
  readonly sources: readonly Given[];
  /** Of the code, from 1. */
  readonly positions: readonly number[];
  /** Symbols of the first source's answer, and of the code. */
  readonly symbols: number;
  readonly length: number;
  readonly prizes: readonly NodeId[];
}

export const parts: Rule<'parts', Parts> = defineRule({
  code: 'parts',
  find(context) {
    const faults = codeFaults(context, 'length', 'beyond', 'gap', 'notWhole', 'overlap');
    return faults.flatMap(({ code, fastener, problems, level, prizes }) => {
      const [problem] = problems;
      if (!problem) return [];
      const all =
        'sources' in problem ? problem.sources : 'source' in problem ? [problem.source] : code.sources;
      const positions =
        'positions' in problem
          ? problem.positions
          : 'position' in problem
            ? [problem.position]
            : (all[0]?.at ?? []);
      const sources = all.map((source) => given(context, source));
      return [
        {
          code: 'parts' as const,
          level,
          nodes: [fastener, ...sources.map(({ node }) => node)],
          links: all.map(({ link }) => link),
          values: {
            fastener,
            problem: problem.problem,
            sources,
            positions,
            symbols: all[0]?.symbols.length ?? 0,
            length: code.symbols.length,
            prizes,
          },
        },
      ];
    });
  },
  *mends(context, { values, links }) {
    const { fastener, problem } = values;
    const entry = context.codes().find(({ node }) => context.idOf(node) === fastener);
    if (problem === 'notWhole') yield needAll(fastener, context.linksTo(fastener).length);
    for (const source of values.sources) {
      const link = links.map((id) => context.game.links.get(id)).find((one) => one?.from === source.node);
      const answer = entry?.sources.find((one) => one.link === link?.id)?.answer;
      if (!link || source.at === undefined || answer !== entry?.code) continue;
      yield {
        code: 'wholeAnswer',
        values: { source: source.node, fastener },
        edits: [{ type: 'setLink', id: link.id, at: undefined }],
      };
    }
    // What the parts give without a gap is a code of its own.
    const symbols: string[] = [];
    for (const source of entry?.sources ?? []) {
      source.at?.forEach((position, i) => {
        symbols[position - 1] = source.symbols[i] ?? '';
      });
    }
    const isWhole = symbols.length > 0 && Array.from(symbols).every((symbol) => symbol);
    const lock = context.game.nodes.get(fastener);
    if (!isWhole || lock?.kind !== 'fastener') return;
    const type = fastenerType(lock.type);
    if (canBeSet(type, symbols, lock.hardware)) yield setCode(fastener, type.write(symbols));
  },
});
