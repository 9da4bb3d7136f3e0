/** Two locks with one code: who knows it for the one can open the other. One finding for each code, with what that skips at most. */
import type { FastenerCode } from '../engine/codes.ts';
import type { Index } from '../engine/measures.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { anotherCode } from './recode.ts';
import { defineRule } from './rule.ts';
import { type Skipped, tried } from './tried.ts';

export interface SameCode extends Skipped {
  /** As it is said. */
  readonly code: string;
  readonly fasteners: readonly NodeId[];
  /** The one with which most is skipped when the code is tried there; undefined when nothing is. */
  readonly early: NodeId | undefined;
}

export const sameCode: Rule<'sameCode', SameCode> = defineRule({
  code: 'sameCode',
  find(context) {
    const byCode = new Map<string, FastenerCode[]>();
    for (const entry of context.codes()) {
      const { state, code } = entry;
      if (code === undefined || state === 'latch' || state === 'key') continue;
      const group = byCode.get(code);
      if (group) group.push(entry);
      else byCode.set(code, [entry]);
    }
    return [...byCode]
      .filter(([, entries]) => entries.length > 1)
      .map(([code, entries]) => {
        const fasteners = entries.map(({ node }) => context.idOf(node));
        return {
          code: 'sameCode',
          level: 'look',
          nodes: fasteners,
          links: [],
          values: { code: entries[0]?.said ?? code, fasteners, ...mostSkipped(context, entries) },
        };
      });
  },
  *mends(context, { values }) {
    const { early, fasteners } = values;
    // One that opens late is kept; those whose answers serve another lock too have no proposal.
    const inOrder = early === undefined ? fasteners : [early, ...fasteners.filter((id) => id !== early)];
    for (const id of inOrder) yield* anotherCode(context, id);
  },
});

function mostSkipped(context: Context, entries: readonly FastenerCode[]): Skipped & Pick<SameCode, 'early'> {
  const finish = (node: Index) => context.measures.finish[node] ?? Number.POSITIVE_INFINITY;
  const known = entries
    .map((entry) => ({ entry, given: firstKnown(entry, finish) }))
    .filter(({ given }) => given.length > 0)
    .map((one) => ({ ...one, at: Math.max(...one.given.map(finish)) }))
    .sort((a, b) => a.at - b.at || a.entry.node - b.entry.node);
  let most: Skipped & Pick<SameCode, 'early'> = { skips: [], minutesSkipped: 0, early: undefined };
  for (const { node } of entries) {
    const first = known.find(({ entry }) => entry.node !== node);
    const skipped = first && tried(context, node, first.given);
    if (skipped && skipped.minutesSkipped > most.minutesSkipped) {
      most = { ...skipped, early: context.idOf(node) };
    }
  }
  return most;
}

/** The answer that gives a lock's code first; else all parts. Empty when it is never known. */
function firstKnown({ sources }: FastenerCode, finish: (node: Index) => number): Index[] {
  const whole = sources.filter(({ at }) => at === undefined).map(({ node }) => node);
  const first = whole.sort((a, b) => finish(a) - finish(b) || a - b)[0];
  const given = first === undefined ? sources.map(({ node }) => node) : [first];
  return given.every((node) => finish(node) < Number.POSITIVE_INFINITY) ? given : [];
}
