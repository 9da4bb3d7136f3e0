/** A lesson without a minute of play. */
import { lessonOf } from '../game/defaults.ts';
import type { Rule } from './finding.ts';
import { defineRule } from './rule.ts';

export type NoMinutes = Readonly<Record<string, never>>;

export const noMinutes: Rule<'noMinutes', NoMinutes> = defineRule({
  code: 'noMinutes',
  find: ({ game }) =>
    lessonOf(game).minutes > 0
      ? []
      : [{ code: 'noMinutes', level: 'look', nodes: [], links: [], values: {} }],
});
