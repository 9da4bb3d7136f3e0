/** Two sources of one code say different things: whichever is right, the other misleads. */
import type { NodeId } from '../game/model.ts';
import { codeFaults, type Given, given } from './code-fault.ts';
import type { Rule } from './finding.ts';
import { setAnswer, withAnswer, withCode } from './mends.ts';
import { defineRule } from './rule.ts';

export interface SourcesDisagree {
  readonly fastener: NodeId;
  readonly first: Given;
  readonly second: Given;
  /** The position of the code that they differ on; undefined: on the whole code. */
  readonly position: number | undefined;
  /** The code of the lock, when there is one. */
  readonly code: string | undefined;
  readonly prizes: readonly NodeId[];
}

export const sourcesDisagree: Rule<'sourcesDisagree', SourcesDisagree> = defineRule({
  code: 'sourcesDisagree',
  find(context) {
    return codeFaults(context, 'sourcesDiffer', 'contradiction').flatMap(
      ({ code, fastener, problems, level, prizes }) => {
        const [problem] = problems;
        if (!problem) return [];
        const [a, b] = problem.sources;
        const first = given(context, a);
        const second = given(context, b);
        const position = problem.problem === 'contradiction' ? problem.position : undefined;
        return [
          {
            code: 'sourcesDisagree' as const,
            level,
            nodes: [fastener, first.node, second.node],
            links: [a.link, b.link],
            values: { fastener, first, second, position, code: code.code && code.said, prizes },
          },
        ];
      },
    );
  },
  *mends(context, { values, links }) {
    const { fastener, position } = values;
    const entry = context.codes().find(({ node }) => context.idOf(node) === fastener);
    const [first, second] = links.map((id) => entry?.sources.find(({ link }) => link === id));
    if (!entry || !first || !second) return;
    if (position === undefined) {
      for (const [one, other] of [
        [first, second],
        [second, first],
      ] as const) {
        if (entry.code === one.answer) continue;
        const set = withAnswer(
          setAnswer(context.idOf(one.node), other.written),
          context.idOf(other.node),
          other,
        );
        yield other.answer === entry.code ? withCode(set, fastener, entry) : set;
      }
    }
    const wrong = [first, second]
      .filter(({ answer }) => answer !== entry.code)
      .flatMap(({ link }) => context.game.links.get(link) ?? []);
    for (const { id, from, to } of wrong) {
      yield { code: 'unlink', values: { from, to }, edits: [{ type: 'unlink', ids: [id] }] };
    }
  },
});
