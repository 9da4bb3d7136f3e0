/** Findings from simulated lessons. */
import type { Figures } from '../../engine/simulation/figures.ts';
import type { TimedFinding, TimedFindingWith } from '../../findings/timed/timed-finding.ts';
import { waitingWith } from '../../findings/timed/waiters.ts';
import type { Game, NodeId } from '../../game/model.ts';
import { lessonsFinish } from '../chance.ts';
import { count, lessonInWords, minutes, minutesInWords, minutesOf } from '../numbers.ts';
import { capital, type Say, sayer, sentence } from '../say.ts';
import type { Sentence } from '../sentence.ts';
import type { Told } from './told.ts';

/** "while Scratch test is worked", "while Window sill is searched". */
export function whileWorked(say: Say, step: NodeId): Sentence {
  const kind = say.game.nodes.get(step)?.kind;
  const verb =
    kind === 'place'
      ? ' is searched'
      : kind === 'fastener' || kind === 'container'
        ? ' is opened'
        : ' is worked';
  return sentence('while ', say.name(step), verb);
}

/** "while teams wait for Hand lens": what keeps most of a team waiting with this step; and how many pupils of it, on average. */
export function whileWaiting(
  say: Say,
  figures: Pick<Figures, 'clock' | 'simulated' | 'costs'>,
  step: number,
): { readonly words: Sentence; readonly waiters: number } {
  const { ids } = figures.clock.network;
  const { waitsFor, thing, waiters } = waitingWith(figures, step);
  const name = ids[step] ?? '';
  switch (waitsFor) {
    case 'work':
      return { words: whileWorked(say, name), waiters };
    case 'thing':
      return { words: sentence('while teams wait for ', say.name(ids[thing] ?? name)), waiters };
    case 'check':
      return { words: sentence('while ', say.name(name), ' waits to be checked'), waiters };
  }
}

/** "2 of 6 pupils wait", for a mean that is nearly none as well. */
export function pupilsWait(waiting: number, team: number): string {
  const whole = Math.round(waiting);
  if (whole === 0) return `hardly any of ${count(team, 'pupil')} waits`;
  return `${whole} of ${count(team, 'pupil')} ${whole === 1 ? 'waits' : 'wait'}`;
}

function tooLong({ values }: TimedFindingWith<'tooLong'>): Told {
  const { inTime, median, lesson } = values;
  return {
    is: capital([`${lessonsFinish(inTime)} before the bell.`]),
    so: [`Half take ${minutesInWords(median)} or more, and the lesson has ${lessonInWords(lesson)}.`],
  };
}

function queueForThing({ values }: TimedFindingWith<'queueForThing'>, say: Say): Told {
  const { thing, shared, teams, minutes: each } = values;
  return {
    is: capital(sentence(say.name(thing), ` is there ${times(shared)} for ${count(teams, 'team')}.`)),
    so: [`Each team waits about ${minutesInWords(each)} for it on average.`],
  };
}

const times = (shared: number) =>
  shared === 1 ? 'only once' : shared === 2 ? 'only twice' : `only ${shared} times`;

function queueForAdult({ values }: TimedFindingWith<'queueForAdult'>): Told {
  const { adults, teams, minutes: each } = values;
  const who = adults === 1 ? 'One adult looks' : `${adults} adults look`;
  return {
    is: [`${who} after ${count(teams, 'team')}.`],
    so: [`The steps of one team wait about ${minutesInWords(each)} in all on average to be checked.`],
  };
}

function oneAtATime({ values }: TimedFindingWith<'oneAtATime'>): Told {
  const { alone, end, team } = values;
  const always = minutes(alone) === minutes(end);
  return {
    is: [
      always
        ? 'There is never more than one thing to do at a time.'
        : `For ${minutesOf(alone, end)} there is only one thing to do at a time.`,
    ],
    so: [`A team of ${count(team, 'pupil')} cannot share out the work.`],
  };
}

function standAbout({ values }: TimedFindingWith<'standAbout'>, say: Say): Told {
  const { steps, minutes: long, waiting, team } = values;
  const [worst = '', ...others] = steps;
  const most = `about ${pupilsWait(waiting, team)}, for ${minutesInWords(long)}.`;
  return {
    is: capital(sentence(whileWorked(say, worst), ', ', most)),
    so:
      others.length === 0
        ? ['That is more than half of a team with nothing to do.']
        : sentence('More than half of a team waits with ', say.names(others), ' too.'),
  };
}

function needlessStep({ values }: TimedFindingWith<'needlessStep'>, say: Say): Told {
  return {
    is: capital(sentence(say.the(values.step), ' leads to no prize.')),
    so: [`Without it the game ends about ${minutesInWords(values.minutes)} sooner.`],
  };
}

export function tellTimed(game: Game, finding: TimedFinding): Told {
  const say = sayer(game);
  switch (finding.code) {
    case 'tooLong':
      return tooLong(finding);
    case 'queueForThing':
      return queueForThing(finding, say);
    case 'queueForAdult':
      return queueForAdult(finding);
    case 'oneAtATime':
      return oneAtATime(finding);
    case 'standAbout':
      return standAbout(finding, say);
    case 'needlessStep':
      return needlessStep(finding, say);
  }
}

export function timedSentence(game: Game, finding: TimedFinding): Sentence {
  const { is, so } = tellTimed(game, finding);
  return sentence(is, ' ', so);
}
