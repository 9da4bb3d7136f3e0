/** What stands on the form of the lesson, and what is to be said of its figures. */
import type { LessonPlan } from '../game/defaults.ts';
import { count } from './numbers.ts';

export const LESSON = {
  title: 'The lesson',
  gameTitle: 'Title',
  summary: 'What the game is about',
  who: 'Who plays',
  ages: 'Ages',
  agesHint: '9-10',
  pupils: 'Pupils',
  teams: 'Teams',
  adults: 'Adults in the room',
  time: 'Minutes',
  talkBefore: 'Talk before',
  minutes: 'Play',
  talkAfter: 'Talk after',
  clearUp: 'Clearing up',
  hints: 'Hints a team may ask for',
  rarely: 'How long a hint and a check take',
  hintMinutes: 'With a hint a step is done in',
  checkMinutes: 'A check by the teacher takes',
  objectives: 'What pupils learn',
  objective: (number: number) => `Objective ${number}`,
  objectiveCode: (number: number) => `Its code in the curriculum, objective ${number}`,
  codeHint: 'code',
  addObjective: 'Add an objective',
  removeObjective: (number: number) => `Remove objective ${number}`,
  done: 'Done',
  stands: (value: string) => `Until then it is ${value}.`,
};

/** What is wrong with what was typed, or with what a file says. */
export const WRONG_LESSON = {
  pupils: 'Nobody plays with 0 pupils. Write at least 1.',
  teams: 'Nobody plays in 0 teams. Write 1 where all play together.',
  minutes: 'In 0 minutes nobody can play. Write the minutes: 40.',
};

/** With no adult in the room the figures know no teacher. */
export const NO_ADULT = 'Without an adult no hint is given, and no step waits for a check.';

/** A figure of minutes as it adds up: to a tenth. */
function tenths(minutes: number): string {
  return String(Math.round(minutes * 10) / 10);
}

/** '5 + 40 + 5 + 5: 55 minutes in all; the game has 40 of them.' */
export function lessonSum({ talkBefore, minutes, talkAfter, clearUp }: LessonPlan): string {
  const parts = [talkBefore, minutes, talkAfter, clearUp];
  const all = tenths(parts.reduce((sum, part) => sum + part, 0));
  const unit = all === '1' ? 'minute' : 'minutes';
  return `${parts.map(tenths).join(' + ')}: ${all} ${unit} in all; the game has ${tenths(minutes)} of them.`;
}

/** How the teams come out: 'Teams of 6 pupils.', or that there are more teams than pupils. */
export function teamsOf({ pupils, teams }: LessonPlan): string {
  if (teams > pupils && pupils > 0) {
    return `There are ${count(teams, 'team')} and only ${count(pupils, 'pupil')}: some teams have nobody. The figures count one pupil in each.`;
  }
  if (teams < 1) return 'The figures count one team.';
  if (pupils < 1) return 'The figures count one pupil in each team.';
  const least = Math.floor(pupils / teams);
  const more = pupils % teams;
  if (teams === 1) return `One team of ${count(pupils, 'pupil')}.`;
  return more === 0 ? `Teams of ${least}.` : `Teams of ${least} and ${least + 1}.`;
}
