/** Findings about what the lesson is said to be. */
import type { FindingWith } from '../../findings/finding.ts';
import { count } from '../numbers.ts';
import type { Told } from './told.ts';

export function noMinutes(): Told {
  return { is: ['The lesson has no minutes of play.'], so: ['The bell rings before anybody can begin.'] };
}

export function moreTeamsThanPupils({ values }: FindingWith<'moreTeamsThanPupils'>): Told {
  const { teams, pupils } = values;
  return {
    is: [`There are ${count(teams, 'team')} and only ${count(pupils, 'pupil')}.`],
    so: ['Each plays alone, and some teams have nobody.'],
  };
}
