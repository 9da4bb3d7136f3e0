/** The verdict: can it be won, in a sentence whose underlined words lead to what they count. */
import type { Fewest } from '../engine/measures.ts';
import type { Simulated } from '../engine/simulation/model.ts';
import type { Assessment } from '../findings/assess.ts';
import { lossOf } from '../findings/loss.ts';
import type { TimedFinding } from '../findings/timed/timed-finding.ts';
import { OFTEN_ENOUGH } from '../findings/timed/too-long.ts';
import { lessonOf } from '../game/defaults.ts';
import { finish, lessonsInTen } from './chance.ts';
import { findingHeadline } from './findings/index.ts';
import { lossClause } from './left-out.ts';
import { count, lessonInWords, minutesInWords, minutesOf } from './numbers.ts';
import { sentence } from './say.ts';
import type { Part, Sentence } from './sentence.ts';

/** 'ok': it can be won. 'look': it can, but mostly not within the lesson. 'stops': it cannot. 'open': there is no prize yet. */
export type Tone = 'ok' | 'look' | 'stops' | 'open';

export interface Verdict {
  readonly tone: Tone;
  /** The answer, and what matters most. */
  readonly first: Sentence;
  /** What else is to be said, on a second line where there is room; may be empty. */
  readonly second: Sentence;
  /** What the game loses by what is left out today, where the screen is wide enough. */
  readonly today?: Sentence;
}

/** What simulated lessons add to the assessment; nothing while that is being worked out. */
export interface Timed {
  readonly simulated: Pick<Simulated, 'inTime' | 'median'> | undefined;
  readonly findings: readonly TimedFinding[];
}

/** Before anything is known, and of a game that cannot be won. */
export const NOT_SIMULATED: Timed = { simulated: undefined, findings: [] };

export function toneOf(assessment: Assessment, { simulated }: Timed = NOT_SIMULATED): Tone {
  if (assessment.network.prizes.length === 0) return 'open';
  if (!assessment.canBeWon) return 'stops';
  return isTooLong(assessment, simulated) ? 'look' : 'ok';
}

/** Without simulated lessons, by the shortest time. These know better: runs may be quicker than the mean of each step says. */
function isTooLong(assessment: Assessment, simulated: Timed['simulated']): boolean {
  return simulated ? simulated.inTime < OFTEN_ENOUGH : isLateByShortest(assessment);
}

/** By a tenth of a minute or more: less nobody means. */
function isLateByShortest({ game, measures }: Assessment): boolean {
  return Math.round(measures.shortest * 10) > Math.round(lessonOf(game).minutes * 10);
}

/** `fewest` is undefined as long as it is being searched for. */
export function verdictOf(
  assessment: Assessment,
  fewest: Fewest | undefined,
  timed: Timed = NOT_SIMULATED,
): Verdict {
  const tone = toneOf(assessment, timed);
  switch (tone) {
    case 'ok':
    case 'look':
      return {
        tone,
        first: won(assessment, fewest, timed.simulated),
        second: lookSentence(assessment, timed),
        today: leftOutSentence(assessment),
      };
    case 'stops':
      return stopped(assessment);
    case 'open':
      return nothingToWin(assessment);
  }
}

function leftOutSentence(assessment: Assessment): Sentence {
  const loss = lossOf(assessment);
  return loss ? lossClause(loss) : [];
}

function nothingToWin(assessment: Assessment): Verdict {
  const noPrize = assessment.findings.find(({ code }) => code === 'noPrize');
  const isEmpty = assessment.game.nodes.size === 0;
  return {
    tone: 'open',
    first: sentence(
      { strong: 'Nothing to win yet.' },
      ' ',
      isEmpty || !noPrize
        ? 'Here it says whether the game can be won.'
        : findingHeadline(assessment.game, noPrize),
    ),
    second: doneSentence(assessment),
  };
}

function won(assessment: Assessment, fewest: Fewest | undefined, simulated: Timed['simulated']): Sentence {
  const isLong = isTooLong(assessment, simulated);
  return sentence(
    { strong: isLong ? 'Too long for the lesson.' : 'It can be won.' },
    ' ',
    simulated
      ? lessonsSentence(assessment, simulated)
      : sentence(isLong ? BUT : '', timeSentence(assessment)),
    ' ',
    stepsSentence(assessment, fewest),
  );
}

const BUT = 'It can be won, but ';

/**
 * How many lessons end in time. Beside it the shortest time, but not where it is longer than the lesson and some are in time all the
 * same, which 'without a hitch' would seem to deny: there the time that half of them take.
 */
function lessonsSentence(assessment: Assessment, simulated: NonNullable<Timed['simulated']>): Sentence {
  const { inTime, median } = simulated;
  const isLate = isLateByShortest(assessment);
  if (inTime === 0) {
    const never: Part = { topic: 'chance', text: 'not before the bell' };
    if (!isLate) return sentence(BUT, never, '. ', timeSentence(assessment));
    return [
      BUT,
      never,
      ': without a hitch it takes ',
      { topic: 'time', text: minutesInWords(assessment.measures.shortest) },
      '.',
    ];
  }
  const words = lessonsInTen(inTime);
  const isOnly = inTime < OFTEN_ENOUGH && words.startsWith('about');
  return sentence(
    isOnly ? 'Only ' : '',
    { topic: 'chance', text: isOnly ? words : words.charAt(0).toUpperCase() + words.slice(1) },
    ` ${finish(inTime)} before the bell. `,
    isLate
      ? ['Half take ', { topic: 'time', text: minutesInWords(median) }, ' or more.']
      : timeSentence(assessment),
  );
}

function tooLongSentence({ game, measures }: Assessment): Sentence {
  const lesson = lessonInWords(lessonOf(game).minutes);
  const shortest = minutesInWords(measures.shortest);
  const text = shortest === lesson ? `a little more than ${shortest}` : shortest;
  return ['without a hitch it takes ', { topic: 'time', text }, `, and the lesson has ${lesson}.`];
}

function timeSentence(assessment: Assessment): Sentence {
  if (isLateByShortest(assessment)) return tooLongSentence(assessment);
  const { game, measures } = assessment;
  const text = minutesOf(measures.shortest, lessonOf(game).minutes);
  return ['Without a hitch: ', { topic: 'time', text }, '.'];
}

function stepsSentence({ measures }: Assessment, fewest: Fewest | undefined): Sentence {
  const all = measures.steps;
  const steps: Part = { topic: 'steps', text: count(all, 'step') };
  if (all === 1) return ['Its only ', { topic: 'steps', text: 'step' }, ' is needed.'];
  if (!fewest) return ['It has ', steps, '.'];
  if (fewest.steps === all && fewest.exact) return ['All ', steps, ' are needed.'];
  const enough: Part = { topic: 'needed', text: String(fewest.steps) };
  if (fewest.exact) return [enough, ' of ', steps, fewest.steps === 1 ? ' is enough.' : ' are enough.'];
  return [enough, ' of ', steps, ` are enough, at least ${fewest.bound} are needed.`];
}

function lookSentence({ findings }: Assessment, timed: Timed): Sentence {
  const looks = findings.filter(({ level }) => level === 'look').length + timed.findings.length;
  if (looks === 0) return [];
  return [
    { topic: 'look', text: count(looks, 'thing') },
    looks === 1 ? ' is worth a look.' : ' are worth a look.',
  ];
}

function stopped(assessment: Assessment): Verdict {
  const stops = assessment.findings.filter(({ level }) => level === 'stops');
  const [first] = stops;
  const more = stops.length - 1;
  const rest: Sentence =
    more > 0
      ? [
          { topic: 'stops', text: `${more} more ${more === 1 ? 'thing' : 'things'}` },
          more === 1 ? ' stops it.' : ' stop it.',
        ]
      : [];
  const done = doneSentence(assessment);
  return {
    tone: 'stops',
    first: sentence(
      { strong: 'It cannot be won.' },
      first ? sentence(' ', findingHeadline(assessment.game, first)) : [],
    ),
    second: sentence(rest, rest.length > 0 && done.length > 0 ? ' ' : '', done),
  };
}

/**
 * How far it gets, as the order of play lists it. That order does not look at codes: where something that it reaches stops the
 * game, the two would contradict each other, and nothing is said.
 */
function doneSentence({ network, measures, findings }: Assessment): Sentence {
  const isHeld = findings.some(({ level, nodes: [culprit = ''] }) => {
    const node = network.index.get(culprit);
    return level === 'stops' && node !== undefined && measures.reached[node] === 1;
  });
  const all = network.isStep.reduce((sum, isStep) => sum + isStep, 0);
  if (isHeld || all === 0) return [];
  const steps: Part = { topic: 'steps', text: all === 1 ? 'step' : count(all, 'step') };
  if (measures.steps < all)
    return [`${measures.steps} of `, { ...steps, text: count(all, 'step') }, ' can be done.'];
  return [all === 1 ? 'Its only ' : 'All ', steps, ' can be done.'];
}
