/** The legend of 'where the time goes'. */
import type { Figures } from '../engine/simulation/figures.ts';
import type { Game, NodeId } from '../game/model.ts';
import { pupilsWait, whileWaiting } from './findings/timed.ts';
import { minutes, minutesInWords } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

export const HEAT_LEGEND = {
  title: 'Where the time goes',
  hide: 'Hide where the time goes',
  readings: { cost: 'Minutes it costs', waiting: 'Pupils waiting' },
  /** What the figures on the steps are. */
  unit: {
    cost: 'minutes by which the game ends sooner without the step',
    waiting: 'pupil-minutes: the waiting of all pupils of a team while the step is worked or queued for',
  },
  /** What adds up in the second reading: a step may count more minutes than it takes. */
  pupilMinutes: 'Counted in pupil-minutes: 3 pupils waiting 2 minutes are 6.',
  none: 'Nothing to show until the game can be won.',
  working: 'It is being worked out.',
  old: 'Figures from before the change:',
  chain: 'What decides the end',
  chainLong: 'Steps and arrows that decide the end when nothing goes wrong are drawn heavier',
  /** The end of the scale. */
  most: (value: number) => minutes(value),
};

const ONLY_FOR_FUN = {
  cost: 'No step costs anything by itself but what is there for fun.',
  waiting: 'Nobody has to wait, except beside what is there for fun.',
} as const;

/** What is seen, in one sentence. @param most index of the step with the largest figure; undefined when there is none */
export function heatSentence(
  game: Game,
  figures: Figures,
  reading: 'cost' | 'waiting',
  most: number | undefined,
): Sentence {
  if (most === undefined) {
    const values = reading === 'cost' ? figures.costs?.minutes : figures.simulated.idleWhile;
    if (values?.some((value, i) => value > 0 && figures.clock.forFun[i] === 1))
      return [ONLY_FOR_FUN[reading]];
    return reading === 'cost'
      ? ['No step costs anything by itself: the game ends as late without any one of them.']
      : ['Nobody has to wait.'];
  }
  const say = sayer(game);
  const step: NodeId = figures.clock.network.ids[most] ?? '';
  if (reading === 'cost') {
    const sooner = minutesInWords(figures.costs?.minutes[most] ?? 0);
    return capital(sentence(say.name(step), ` costs most: the game ends ${sooner} sooner without it.`));
  }
  const { words, waiters } = whileWaiting(say, figures, most);
  return sentence('Waiting is longest ', words, `: ${pupilsWait(waiters, figures.simulated.team)}.`);
}
