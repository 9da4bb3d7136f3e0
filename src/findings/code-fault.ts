/**
 * What is to be told of the code of one lock: of all that the engine notes, the first by this order, so that a slip with
 * consequences is told once. Two sources that contradict each other come before a code that then has to differ from one of them;
 * a partial answer of the wrong length before the gap that it leaves.
 */
import type { CodeProblem, CodeSource, FastenerCode } from '../engine/codes.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Level } from './finding.ts';
import { levelOf, prizesLost } from './level.ts';

const ORDER: readonly CodeProblem['problem'][] = [
  'sourcesDiffer',
  'contradiction',
  'length',
  'beyond',
  'notWhole',
  'differs',
  'symbol',
  'gap',
  'overlap',
];

export interface CodeFault<P extends CodeProblem['problem']> {
  readonly code: FastenerCode;
  readonly fastener: NodeId;
  /** All problems of the kind that is told. */
  readonly problems: readonly Extract<CodeProblem, { readonly problem: P }>[];
  readonly level: Level;
  readonly prizes: readonly NodeId[];
}

function isOf<P extends CodeProblem['problem']>(
  problem: CodeProblem,
  kinds: readonly P[],
): problem is Extract<CodeProblem, { readonly problem: P }> {
  return kinds.some((kind) => kind === problem.problem);
}

function firstKind({ problems }: FastenerCode): CodeProblem['problem'] | undefined {
  return ORDER.find((kind) => problems.some(({ problem }) => problem === kind));
}

/** One for each lock of whose code a problem of these kinds is to be told. */
export function codeFaults<P extends CodeProblem['problem']>(
  context: Context,
  ...kinds: readonly P[]
): CodeFault<P>[] {
  return context.codes().flatMap((code) => {
    const first = firstKind(code);
    const problems = code.problems.filter((problem) => isOf(problem, kinds));
    if (first === undefined || !kinds.some((kind) => kind === first)) return [];
    const prizes = code.state === 'wrong' ? prizesLost(context, [code.node]) : [];
    return [{ code, fastener: context.idOf(code.node), problems, level: levelOf(prizes), prizes }];
  });
}

/** What one source gives, for a sentence. */
export interface Given {
  readonly node: NodeId;
  /** As it is said. */
  readonly answer: string;
  /** Positions of the code, from 1; undefined: the answer is the whole code. */
  readonly at: readonly number[] | undefined;
}

export function given(context: Context, { node, said, at }: CodeSource): Given {
  return { node: context.idOf(node), answer: said, at };
}
