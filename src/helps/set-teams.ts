/** One team more or fewer, at least one, and with a pupil in each. */
import { lessonOf } from '../game/defaults.ts';
import type { HelpKind } from './help.ts';

export const setTeams: HelpKind<'setTeams'> = {
  code: 'setTeams',
  tries({ game }) {
    const { teams: before, pupils } = lessonOf(game);
    return [before + 1, before - 1]
      .filter((teams) => teams >= 1 && teams <= pupils)
      .map((teams) => ({
        code: 'setTeams',
        values: { teams, before },
        edits: [{ type: 'setHead', fields: { lesson: { teams } } }],
      }));
  },
};
