/** The order of play in sentences, with what a teacher says where it does not go on. */
import type { Assessment } from '../../findings/assess.ts';
import type { Finding, FindingCode } from '../../findings/finding.ts';
import type { NodeId } from '../../game/model.ts';
import { rescueLine } from '../../words/lift.ts';
import { orderOfPlayLines, type PlayLine } from '../../words/order.ts';
import type { Sentence } from '../../words/sentence.ts';
import { byFirstUse } from '../first-use.ts';
import type { LayoutOptions } from '../sheet.ts';
import { noteOf } from './notes.ts';

export interface StepEntry {
  readonly line: PlayLine;
  /** Empty without the option. */
  readonly rescue: Sentence;
  /** The teacher's own. */
  readonly note: string | undefined;
}

export interface OrderList {
  readonly steps: readonly StepEntry[];
  /** Everything that no team gets to but locks, which their boxes stand for: what is nearest to play first. */
  readonly unreached: readonly NodeId[];
  /** Why. */
  readonly blocks: readonly Finding[];
}

const BLOCKS: ReadonlySet<FindingCode> = new Set<FindingCode>(['ring', 'nothingOpens', 'needTooLarge']);

export function orderList(
  assessment: Assessment,
  options: Pick<LayoutOptions, 'codes' | 'rescue'>,
): OrderList {
  const { network, measures, findings, context } = assessment;
  const notes = noteOf(assessment, options.codes);
  // All that a step needs is named: where the map tells no more, it sends its reader here.
  const lines = orderOfPlayLines(assessment, options.codes, Number.POSITIVE_INFINITY);
  const steps = lines.map((line) => ({
    line,
    rescue: options.rescue ? rescueLine(assessment, line.node, options.codes) : [],
    note: notes(line.node),
  }));
  const unreached = [...network.ids.keys()].filter(
    (node) => measures.reached[node] !== 1 && context.kindOf(node) !== 'fastener',
  );
  return {
    steps,
    unreached: unreached.sort(byFirstUse(assessment)).map(context.idOf),
    blocks: findings.filter(({ code }) => BLOCKS.has(code)),
  };
}
