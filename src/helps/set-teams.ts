/**
 * One team more or fewer, at least one, and only where teams come out nearly alike: the size that is played is a whole number, and where the true ones
 * lie far from it the figures would be of another lesson.
 */
import { lessonOf, teamSize } from '../game/defaults.ts';
import type { HelpKind } from './help.ts';

/** Pupils by which the mean size of the teams may differ from the size that is played. Own rule. */
const NEARLY_ALIKE = 0.25;

function isNearlyAlike(pupils: number, teams: number): boolean {
  return Math.abs(pupils / teams - teamSize({ pupils, teams })) <= NEARLY_ALIKE;
}

export const setTeams: HelpKind<'setTeams'> = {
  code: 'setTeams',
  tries({ game }) {
    const { teams: before, pupils } = lessonOf(game);
    return [before + 1, before - 1]
      .filter((teams) => teams >= 1 && teams <= pupils && isNearlyAlike(pupils, teams))
      .map((teams) => ({
        code: 'setTeams',
        values: { teams, before },
        edits: [{ type: 'setHead', fields: { lesson: { teams } } }],
      }));
  },
};
