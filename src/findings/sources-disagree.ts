/** Two sources of one code say different things: whichever is right, the other misleads. */
import type { NodeId } from '../game/model.ts';
import { codeFaults, type Given, given } from './code-fault.ts';
import type { Rule } from './finding.ts';
import { setAnswer } from './mends.ts';
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
            values: { fastener, first, second, position, code: code.code, prizes },
          },
        ];
      },
    );
  },
  *mends(context, { values, links }) {
    const { first, second, code, position } = values;
    if (position === undefined) {
      if (code !== first.answer) yield setAnswer(first.node, second.answer);
      if (code !== second.answer) yield setAnswer(second.node, first.answer);
    }
    const wrong = links
      .flatMap((id) => context.game.links.get(id) ?? [])
      .filter((link) => (link.from === first.node ? first : second).answer !== code);
    for (const { id, from, to } of wrong) {
      yield { code: 'unlink', values: { from, to }, edits: [{ type: 'unlink', ids: [id] }] };
    }
  },
});
