/** Plays the game from its texts. What a pupil has to know of English is in the tables of this file. */
import { expect, test } from 'vitest';
import { groups, known, only, openExample, permutations } from './example.ts';

const game = openExample('front-page');

const SENSE = [
  [/so loudly/, 'bellowed'],
  [/from the deck of the lift bridge/, 'rescued'],
  [/a wet glove stuck/, 'icy'],
  [/On quick, light feet/, 'scampered'],
  [/his own lettuce/, 'kind'],
] as const;

test('the fresh words fit in sense and length, and their first letters open the word tin', () => {
  const list = new Map(
    game
      .lines('wordlist')
      .filter((line) => /^[A-Z]+: /.test(line))
      .map((line) => {
        const [worn = '', choices = ''] = groups(line, /^([A-Z]+): (.+)$/);
        return [worn, choices.split(', ')];
      }),
  );
  const gaps = game.lines('tired').filter((line) => /[A-Z]+ \(\d\)/.test(line));
  expect(gaps).toHaveLength(5);
  const letters = gaps.map((line) => {
    const [worn = '', length] = groups(line, /([A-Z]+) \((\d)\)/);
    const word = only(
      (list.get(worn) ?? []).filter((choice) => choice.length === Number(length)),
      line,
    );
    expect(word).toBe(known(SENSE, line));
    return word.charAt(0).toUpperCase();
  });
  expect(letters.join('')).toBe(game.code('fresh'));
  expect(letters.join('')).toBe(game.code('wordlock'));
});

const EVENTS = [
  [/barge.* stop|stopped/, 'stop'],
  [/unroll/, 'flag'],
  [/cross/, 'line'],
  [/lift/, 'lift'],
  [/shout/, 'shout'],
] as const;

type Event = (typeof EVENTS)[number][1];

/** What the sentence says came first, and what after it. */
function firstAndThen(sentence: string): [Event, Event] {
  const [spoken = ''] = groups(sentence, /: "(.+)"$/);
  const byTheTime = /^By the time (.+), (.+ had already .+)$/.exec(spoken);
  const notUntil = /^(.+ did not .+) until (.+ had .+)$/.exec(spoken);
  const before = /^(.+) before (.+)$/.exec(spoken);
  const [first, then] = byTheTime
    ? [byTheTime[2], byTheTime[1]]
    : notUntil
      ? [notUntil[2], notUntil[1]]
      : before
        ? [before[1], before[2]]
        : [];
  return [known(EVENTS, first ?? ''), known(EVENTS, then ?? '')];
}

test('the notebook allows one order of events, and it opens the news tin', () => {
  const numbers = new Map(
    game
      .lines('strips')
      .filter((line) => /^Strip \d/.test(line))
      .map((line) => [known(EVENTS, line), groups(line, /^Strip (\d)/)[0]]),
  );
  expect(numbers.size).toBe(5);
  const facts = game
    .lines('notebook')
    .filter((line) => line.includes('"'))
    .map(firstAndThen);
  expect(facts).toHaveLength(4);
  const order = only(
    permutations([...numbers.keys()]).filter((events) =>
      facts.every(([first, then]) => events.indexOf(first) < events.indexOf(then)),
    ),
    game.text('notebook'),
  );
  const code = order
    .toSpliced(2, 1)
    .map((event) => numbers.get(event))
    .join('');
  expect(code).toBe(game.code('order'));
  expect(code).toBe(game.code('newslock'));
});

const WORD_CLASS = [
  [/The keeper WAVES a/, 'verb'],
  [/: WAVES of/, 'noun'],
  [/takes SLOW steps/, 'adjective'],
  [/comes in SLOWLY/, 'adverb'],
  [/A PATIENT skipper/, 'adjective'],
] as const;

test('the class of each word in capitals gives a direction of the caption tin', () => {
  const tray = game.text('tray');
  const captions = game.lines('captions').filter((line) => /^Caption \d/.test(line));
  const moves = captions.map((line) => {
    const [way] = groups(tray, new RegExp(`^${known(WORD_CLASS, line)}: (UP|DOWN|LEFT|RIGHT)$`, 'm'));
    return way?.charAt(0);
  });
  expect(moves.join('')).toBe(game.code('classes'));
  expect(moves.join('')).toBe(game.code('captlock'));
});

const VERBS = [
  [/Saved/, 'past'],
  [/Halts/, 'present'],
  [/Tests/, 'present'],
  [/Paused/, 'past'],
  [/Cheered/, 'past'],
  [/^Is /, 'present'],
  [/Slow Stroller Stops/, 'present'],
] as const;

/** The three rules, each found by its words on its slip. */
const RULES = [
  [
    /at least three words of the headline begin with the same letter/,
    (headline: string) => {
      const initials = headline.split(' ').map((word) => word.charAt(0).toUpperCase());
      return initials.some((letter) => initials.filter((other) => other === letter).length >= 3);
    },
  ],
  [/verb of the headline is in the past tense/, (headline: string) => known(VERBS, headline) === 'past'],
  [/exactly six words/, (headline: string) => headline.split(' ').length === 6],
] as const;

test('any two slips leave one headline, one slip alone does not', () => {
  const headlines = game
    .lines('headline')
    .filter((line) => /^\d{4}: /.test(line))
    .map((line) => groups(line, /^(\d{4}): (.+)$/));
  expect(headlines).toHaveLength(7);
  const slips = ['wordslip', 'newsslip', 'captslip'].map((id) => known(RULES, game.text(id)));
  expect(new Set(slips).size).toBe(3);
  const left = (rules: readonly ((headline: string) => boolean)[]) =>
    headlines.filter(([, headline = '']) => rules.every((rule) => rule(headline))).map(([number]) => number);
  for (const slip of slips) {
    expect(left([slip])).toHaveLength(3);
    const others = slips.filter((other) => other !== slip);
    expect(left(others)).toEqual([game.code('headline')]);
  }
  expect(game.code('presslock')).toBe(game.code('headline'));
});
