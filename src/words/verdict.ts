/** The verdict: can it be won, in a sentence whose underlined words lead to what they count. */
import type { Fewest } from '../engine/measures.ts';
import type { Assessment } from '../findings/assess.ts';
import { doableSteps } from '../findings/doable.ts';
import { lessonOf } from '../game/defaults.ts';
import { findingHeadline } from './findings/index.ts';
import { count, minutesInWords, minutesOf } from './numbers.ts';
import { sentence } from './say.ts';
import type { Part, Sentence } from './sentence.ts';

export interface Verdict {
  /** 'ok': it can be won. 'empty': there is nothing on the map. */
  readonly tone: 'ok' | 'stops' | 'empty';
  /** The answer, and what matters most. */
  readonly first: Sentence;
  /** What else is to be said, on a second line where there is room; may be empty. */
  readonly second: Sentence;
}

/** `fewest` is undefined as long as it is being searched for. */
export function verdictOf(assessment: Assessment, fewest: Fewest | undefined): Verdict {
  if (assessment.game.nodes.size === 0) {
    return {
      tone: 'empty',
      first: [{ strong: 'Nothing to win yet.' }, ' Here it says whether the game can be won.'],
      second: [],
    };
  }
  return assessment.canBeWon ? won(assessment, fewest) : stopped(assessment);
}

function won(assessment: Assessment, fewest: Fewest | undefined): Verdict {
  return {
    tone: 'ok',
    first: sentence(
      { strong: 'It can be won.' },
      ' ',
      timeSentence(assessment),
      ' ',
      stepsSentence(assessment, fewest),
    ),
    second: lookSentence(assessment),
  };
}

function timeSentence({ game, measures }: Assessment): Sentence {
  const lesson = lessonOf(game).minutes;
  const { shortest } = measures;
  if (Math.round(shortest * 10) > Math.round(lesson * 10)) {
    const time: Part = { topic: 'time', text: minutesInWords(shortest) };
    return sentence(
      'Without a hitch it takes ',
      time,
      `, longer than the lesson’s ${minutesInWords(lesson)}.`,
    );
  }
  return ['Without a hitch: ', { topic: 'time', text: minutesOf(shortest, lesson) }, '.'];
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

function lookSentence({ findings }: Assessment): Sentence {
  const looks = findings.filter(({ level }) => level === 'look').length;
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
  const { steps, of } = doableSteps(assessment);
  const done: Sentence =
    of === 0
      ? []
      : steps === of
        ? [
            of === 1 ? 'Its only ' : 'All ',
            { topic: 'steps', text: of === 1 ? 'step' : count(of, 'step') },
            ' can be done.',
          ]
        : [`${steps} of `, { topic: 'steps', text: count(of, 'step') }, ' can be done.'];
  return {
    tone: 'stops',
    first: sentence(
      { strong: 'It cannot be won.' },
      first ? sentence(' ', findingHeadline(assessment.game, first)) : [],
    ),
    second: sentence(rest, rest.length > 0 && done.length > 0 ? ' ' : '', done),
  };
}
