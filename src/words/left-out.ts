/** What the game loses by what is left out today. */
import type { Foreseen, Loss } from '../findings/loss.ts';
import type { Game } from '../game/model.ts';
import { lessonsFinish, shareInTen } from './chance.ts';
import { count, minutesInWords } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import type { Part, Sentence } from './sentence.ts';

export const LEFT_OUT = {
  title: 'Not today',
  again: (things: number) => (things === 1 ? 'Use it today' : 'Use them all today'),
} as const;

/** A difference that is told: half a second of play. */
const NOTHING = 0.5 / 60;

/** 'less', 'more', or neither. */
function way(difference: number, least: number): 'less' | 'more' | undefined {
  if (Math.abs(difference) < least) return undefined;
  return difference > 0 ? 'less' : 'more';
}

/** Of what is counted. */
const FEWER = { less: 'fewer', more: 'more' } as const;

/** "3 steps and 6 minutes less", "1 step fewer"; undefined where there is no difference. */
function difference({ steps, minutes = 0 }: Pick<Loss, 'steps' | 'minutes'>): string | undefined {
  const [inSteps, inTime] = [way(steps, 1), way(minutes, NOTHING)];
  const stepsSaid = count(Math.abs(steps), 'step');
  const minutesSaid = minutesInWords(Math.abs(minutes));
  if (inSteps && inTime) {
    return inSteps === inTime
      ? `${stepsSaid} and ${minutesSaid} ${inSteps}`
      : `${stepsSaid} ${FEWER[inSteps]}, and ${minutesSaid} ${inTime}`;
  }
  if (inSteps) return `${stepsSaid} ${FEWER[inSteps]}`;
  return inTime && `${minutesSaid} ${inTime}`;
}

function unchanged({ minutes }: Loss): string {
  return minutes === undefined ? 'the same steps' : 'the same steps and time';
}

/** For the verdict of a game that can be won: "Today 3 steps and 6 minutes less." Empty where there is no difference. */
export function lossClause(loss: Loss): Sentence {
  const said = difference(loss);
  if (said === undefined) return [];
  const words: Part = { topic: 'leftOut', text: said };
  return ['Today ', words, '.'];
}

/** Beside the button that leaves something out: "Not today: 2 steps and 5 minutes less." */
export function wouldLose(loss: Foreseen): string {
  if (loss.solvable.whole && !loss.solvable.now) return `${LEFT_OUT.title}: a prize could not be reached.`;
  if (loss.stops) return `${LEFT_OUT.title}: it could not be won, or a prize would be given away.`;
  return `${LEFT_OUT.title}: ${difference(loss) ?? unchanged(loss)}.`;
}

/** Shares of the lessons that end in time: today, and with everything used. */
export interface Chances {
  readonly now: number;
  readonly whole: number;
}

/** "Without Rope lock and Tide puzzle today: 3 steps and 6 minutes less. About 9 lessons in 10 finish before the bell, with them about 7 in 10." */
export function lossSentence(game: Game, loss: Loss, chances: Chances | undefined): Sentence {
  const { things, solvable } = loss;
  const said = difference(loss) ?? unchanged(loss);
  const them = things.length === 1 ? 'it' : 'them';
  return sentence(
    'Without ',
    sayer(game).names(things),
    ` today: ${said}.`,
    ...(solvable.whole ? [] : [` With ${them} a prize could not be reached.`]),
    ...(solvable.whole && !solvable.now ? [` With ${them} every prize could be reached.`] : []),
    ...(chances ? [' ', capital([chancesSaid(chances, them)])] : []),
  );
}

function chancesSaid({ now, whole }: Chances, them: string): string {
  const [today, full] = [shareInTen(now), shareInTen(whole)];
  const finish = `${lessonsFinish(now)} before the bell`;
  return today === full ? `${finish}, with ${them} or without.` : `${finish}, with ${them} ${full}.`;
}
