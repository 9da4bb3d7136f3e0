/** The code that is set on a lock is not what pupils are given. */
import type { CodeSource } from '../engine/codes.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { NodeId } from '../game/model.ts';
import { codeFaults, type Given, given } from './code-fault.ts';
import type { Rule } from './finding.ts';
import { canBeSet, setAnswer, setCode, withAnswer, withCode } from './mends.ts';
import type { Proposal } from './proposal.ts';
import { defineRule } from './rule.ts';

export interface CodeDisagrees {
  readonly fastener: NodeId;
  readonly code: string;
  /** Those that give something else, once each. */
  readonly sources: readonly Given[];
  readonly prizes: readonly NodeId[];
}

export const codeDisagrees: Rule<'codeDisagrees', CodeDisagrees> = defineRule({
  code: 'codeDisagrees',
  find(context) {
    return codeFaults(context, 'differs', 'symbol').map(({ code, fastener, problems, level, prizes }) => {
      const byNode = new Map(problems.map(({ source }) => [source.node, source]));
      const sources = [...byNode.values()].map((source) => given(context, source));
      return {
        code: 'codeDisagrees',
        level,
        nodes: [fastener, ...sources.map(({ node }) => node)],
        links: [...byNode.values()].map(({ link }) => link),
        values: { fastener, code: code.said, sources, prizes },
      };
    });
  },
  *mends(context, { values }) {
    const { fastener } = values;
    const entry = context.codes().find(({ node }) => context.idOf(node) === fastener);
    if (!entry) return;
    const lock = context.game.nodes.get(fastener);
    if (lock?.kind !== 'fastener') return;
    const type = fastenerType(lock.type);
    const corrected = [...entry.symbols];
    let whole: CodeSource | undefined;
    const answers: Proposal[] = [];
    for (const source of entry.sources) {
      const node = context.idOf(source.node);
      if (!values.sources.some((told) => told.node === node)) continue;
      if (source.at === undefined) {
        whole ??= source;
        answers.push(withCode(setAnswer(node, entry.written), fastener, entry));
      } else {
        source.at.forEach((position, i) => {
          corrected[position - 1] = source.symbols[i] ?? '';
        });
        const own = source.at.map((position) => entry.symbols[position - 1] ?? '');
        answers.push(setAnswer(node, type.write(own)));
      }
    }
    const wanted = whole?.symbols ?? corrected;
    if (!canBeSet(type, wanted, lock.hardware)) {
      yield* answers;
      return;
    }
    const setTo = setCode(fastener, type.write(wanted));
    const code = whole ? withAnswer(setTo, context.idOf(whole.node), whole) : setTo;
    // Where others agree with the lock, it is more likely that the one that differs is the slip.
    const isAlone = entry.sources.length === values.sources.length;
    yield* isAlone ? [code, ...answers] : [...answers, code];
  },
});
