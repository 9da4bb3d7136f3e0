/** A step takes a minute less, or a minute more. The three estimates move together and stay in order. */
import { minutesOf } from '../game/defaults.ts';
import type { Estimate, GameNode } from '../game/model.ts';
import type { HelpKind } from './help.ts';
import { stepsOf } from './steps.ts';

/** From this likely time on a minute is no more than its half. */
const TWO_MINUTES = 2;

function moved(node: GameNode, change: (minutes: number) => number): Estimate {
  const { low, likely, high } = minutesOf(node);
  return { low: change(low), likely: change(likely), high: change(high) };
}

export const shorten: HelpKind<'shorten'> = {
  code: 'shorten',
  tries: (assessment) =>
    stepsOf(assessment).flatMap((node) => {
      const by = minutesOf(node).likely >= TWO_MINUTES ? 'minute' : 'half';
      // How long a lock takes to set is its make: only what has been given a minute too much can lose it.
      if (by === 'half' && node.kind === 'fastener') return [];
      const half = (minutes: number) => minutes / 2;
      const less = (minutes: number) => Math.max(half(minutes), minutes - 1);
      const minutes = moved(node, by === 'minute' ? less : half);
      return [
        {
          code: 'shorten',
          values: { step: node.id, by },
          edits: [{ type: 'setFields', id: node.id, fields: { minutes } }],
        },
      ];
    }),
};

export const lengthen: HelpKind<'lengthen'> = {
  code: 'lengthen',
  tries: (assessment) =>
    stepsOf(assessment).flatMap((node) => {
      if (node.kind === 'fastener') return [];
      const minutes = moved(node, (value) => value + 1);
      return [
        {
          code: 'lengthen',
          values: { step: node.id },
          edits: [{ type: 'setFields', id: node.id, fields: { minutes } }],
        },
      ];
    }),
};
