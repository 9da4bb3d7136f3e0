/** Some teams would have nobody in them; every other is one pupil alone. */
import { lessonOf } from '../game/defaults.ts';
import type { Rule } from './finding.ts';
import { defineRule } from './rule.ts';

export interface MoreTeamsThanPupils {
  readonly teams: number;
  readonly pupils: number;
}

export const moreTeamsThanPupils: Rule<'moreTeamsThanPupils', MoreTeamsThanPupils> = defineRule({
  code: 'moreTeamsThanPupils',
  find({ game }) {
    const { teams, pupils } = lessonOf(game);
    if (teams <= pupils || teams < 2) return [];
    return [{ code: 'moreTeamsThanPupils', level: 'look', nodes: [], links: [], values: { teams, pupils } }];
  },
});
