import { describe, expect, it } from 'vitest';
import { loadWordList } from '../../app/command/word-list.ts';
import { reportOf } from '../../src/engine/report.ts';
import { assess } from '../../src/findings/assess.ts';
import type { FindingCode } from '../../src/findings/finding.ts';
import { proposalsFor } from '../../src/findings/propose.ts';
import type { Game } from '../../src/game/model.ts';
import { findingSentence } from '../../src/words/findings/index.ts';
import { proposalLabel } from '../../src/words/proposals.ts';
import { plain } from '../../src/words/sentence.ts';
import { fixed, gameOf, type NodeDraft } from '../game-of.ts';
import { codesIn, edited, freshIds, only } from './small-games.ts';

const words = loadWordList();

/** The sentence of the only finding of this code, and what its buttons say. */
function told(game: Game, code: FindingCode, list = words) {
  const assessment = assess(game, list);
  const finding = only(assessment, code);
  const proposals = proposalsFor(assessment, finding, freshIds());
  return {
    sentence: plain(findingSentence(game, finding)),
    labels: proposals.map((proposal) => proposalLabel(game, proposal)),
    games: proposals.map((proposal) => edited(game, proposal.edits)),
  };
}

/** A number lock whose digits come from three puzzles. */
function threeParts(
  changes: Readonly<Record<string, Partial<NodeDraft>>> = {},
  links?: readonly string[],
): Game {
  const nodes: NodeDraft[] = [
    { id: 'sun', kind: 'puzzle', name: 'Sun puzzle', answer: '4', ...fixed(4) },
    { id: 'star', kind: 'puzzle', name: 'Star puzzle', answer: '7', ...fixed(5) },
    { id: 'moon', kind: 'puzzle', name: 'Moon puzzle', answer: '2', ...fixed(6) },
    { id: 'chest', kind: 'container', name: 'Chest' },
    { id: 'rope', kind: 'fastener', on: 'chest', name: 'Rope lock', type: 'number', code: '472' },
    { id: 'prize', kind: 'prize', in: 'chest' },
  ];
  return gameOf(
    nodes.map((node) => ({ ...node, ...changes[node.id] })),
    links ?? ['sun>rope@1', 'star>rope@2', 'moon>rope@3'],
  );
}

describe('a lock that is easily guessed', () => {
  it('tells that the third part can be guessed in half a minute, and what that skips; one mend later it cannot', () => {
    const game = threeParts();
    expect(reportOf(game).guess).toEqual({
      rope: { codes: 1000, left: 10, minutes: (5.5 * 5) / 60, skips: ['moon'] },
    });
    const { sentence, labels, games } = told(game, 'easilyGuessed');
    expect(sentence).toBe(
      'The last digit of Rope lock can be guessed in about 30 s. That skips Moon puzzle and 6 minutes.',
    );
    expect(labels).toEqual([
      'Let Sun puzzle and Star puzzle lead to Moon puzzle, which gives 472',
      expect.stringMatching(/^Set the lock to 472\d\d, and let Moon puzzle give 2\d\d$/),
    ]);
    for (const mended of games) {
      expect(codesIn(mended)).toEqual([]);
      const { rope } = reportOf(mended).guess;
      expect(rope?.left).toBeGreaterThanOrEqual(1000);
      const { context, network } = assess(mended);
      expect(context.guesses().locks.get(network.index.get('rope') ?? -1)?.worst?.quicker).toBe(false);
    }
  });

  it('is none where the last part has symbols enough, or solving is as quick', () => {
    const four = { moon: { answer: '238' }, rope: { code: '47238' } };
    expect(codesIn(threeParts(four, ['sun>rope@1', 'star>rope@2', 'moon>rope@3,4,5']))).toEqual([]);
    const quick = { sun: fixed(0.1), star: fixed(0.1), moon: fixed(0.1), rope: fixed(0.1) };
    expect(codesIn(threeParts(quick))).toEqual([]);
  });

  it('is none where nothing is skipped, because what gives the part is needed anyway', () => {
    const parts = ['sun>rope@1', 'star>rope@2', 'moon>rope@3'];
    const game = threeParts({}, [...parts, 'sun>prize', 'star>prize', 'moon>prize']);
    expect(codesIn(game)).toEqual([]);
    expect(reportOf(game).guess).toMatchObject({ rope: { left: 10, skips: [] } });
  });

  it('tells of parts that come at one time as of parts one after the other', () => {
    const even = threeParts({ sun: fixed(5), star: fixed(5), moon: fixed(5), rope: fixed(0.1) });
    expect(told(even, 'easilyGuessed').sentence).toMatch(
      /^The last digit of Rope lock|^Digit \d of Rope lock/,
    );
  });

  it('names positions in the middle, and several', () => {
    const middle = threeParts({ star: { answer: '2' }, moon: { answer: '7' } }, [
      'sun>rope@1',
      'moon>rope@2',
      'star>rope@3',
    ]);
    expect(told(middle, 'easilyGuessed').sentence).toMatch(/^Digit 2 of Rope lock can be guessed/);
    const two = threeParts({ star: { answer: '2' }, moon: { answer: '47', ...fixed(9) } }, [
      'moon>rope@1,2',
      'star>rope@3',
      'sun>prize',
    ]);
    expect(told(two, 'easilyGuessed').sentence).toBe(
      'Digits 1 and 2 of Rope lock can be guessed in about 4.2 min. That skips Moon puzzle and 9 minutes.',
    );
  });

  it('counts the words that fit where the code is one, and offers letters that are none', () => {
    const game = gameOf(
      [
        { id: 'maze', kind: 'puzzle', name: 'Maze', answer: 'OWL', ...fixed(40) },
        { id: 'hut', kind: 'container', name: 'Hut' },
        { id: 'lock', kind: 'fastener', on: 'hut', name: 'Bird lock', type: 'word', code: 'owl' },
        { id: 'prize', kind: 'prize', in: 'hut' },
      ],
      ['maze>lock'],
    );
    const { sentence, labels, games } = told(game, 'easilyGuessed');
    expect(sentence).toMatch(
      /^Bird lock can be guessed in about \d+ min: \d+ words fit\. That skips Maze and 40 minutes\.$/,
    );
    expect(labels[0]).toMatch(/^Set the lock to [B-Z]{3}, and let Maze give it$/);
    for (const mended of games) expect(assess(mended, words).findings).toEqual([]);
    // Without a list nobody knows what is a word: 17,576 codes.
    expect(codesIn(game)).toEqual([]);
  });

  it('is nothing of a code that the lock does not show', () => {
    const dial = threeParts({ rope: { type: 'dial', code: '４７２' } });
    expect(codesIn(dial)).toContain('codeDoesNotFit');
    expect(codesIn(dial)).not.toContain('easilyGuessed');
  });

  it('offers a lock with more codes that takes the same one', () => {
    const game = gameOf(
      [
        { id: 'walk', kind: 'puzzle', name: 'Walk', answer: '↑ ← ↑', ...fixed(9) },
        { id: 'bag', kind: 'container', name: 'Bag' },
        { id: 'lock', kind: 'fastener', on: 'bag', name: 'Arrow lock', type: 'direction', code: 'ULU' },
        { id: 'prize', kind: 'prize', in: 'bag' },
      ],
      ['walk>lock'],
    );
    const { sentence, labels, games } = told(game, 'easilyGuessed');
    expect(sentence).toBe(
      'Arrow lock can be guessed in about 4.3 min: with 3 moves it has only 64 codes. That skips Walk and 9 minutes.',
    );
    expect(labels).toEqual([
      expect.stringMatching(/^Set the lock to ULU[UDLR]{1,2}, and let Walk give it$/),
      'Make it a word lock',
    ]);
    for (const mended of games) expect(codesIn(mended)).toEqual([]);
  });

  it('offers no other code where its answer serves another lock too', () => {
    const game = gameOf(
      [
        { id: 'walk', kind: 'puzzle', answer: 'ULU', ...fixed(9) },
        ...['bag', 'tin'].flatMap((id): NodeDraft[] => [
          { id, kind: 'container' },
          { id: `${id}-lock`, kind: 'fastener', on: id, type: 'direction', code: 'ULU' },
          { id: `${id}-prize`, kind: 'prize', in: id },
        ]),
      ],
      ['walk>bag-lock', 'walk>tin-lock'],
    );
    // Either lock alone spares nothing: the walk is needed for the other.
    expect(codesIn(game)).toEqual(['sameCode']);
  });

  it('tells of a key that is tried where a puzzle was to say which lock it is for', () => {
    const game = gameOf(
      [
        { id: 'tag', kind: 'key', name: 'Brass key' },
        { id: 'which', kind: 'puzzle', name: 'Which lock?', ...fixed(5) },
        ...['bag', 'tin', 'jar'].flatMap((id): NodeDraft[] => [
          { id, kind: 'container', name: id },
          { id: `${id}-lock`, kind: 'fastener', on: id, name: `${id} tag`, type: 'key', ...fixed(0.1) },
        ]),
        { id: 'prize', kind: 'prize', in: 'bag' },
        { id: 'other', kind: 'key', in: 'bag' },
        { id: 'third', kind: 'key', in: 'bag' },
      ],
      ['tag>bag-lock', 'which>bag-lock', 'other>tin-lock', 'third>jar-lock'],
    );
    expect(told(game, 'easilyGuessed').sentence).toBe(
      'Trying Brass key on each of the 3 locks at hand opens bag tag in about 20 s. That skips Which lock? and 5 minutes.',
    );
  });
});

describe('a place that may be found by chance', () => {
  const attic = (byChance: boolean | undefined, answer?: string) =>
    gameOf(
      [
        { id: 'riddle', kind: 'puzzle', name: 'Riddle', ...fixed(7), ...(answer && { answer }) },
        { id: 'attic', kind: 'place', name: 'Attic', ...fixed(1), ...(byChance && { byChance }) },
        { id: 'prize', kind: 'prize', in: 'attic' },
      ],
      ['riddle>attic'],
    );

  it('tells what it would skip, and locks it away with what led there', () => {
    const { sentence, labels, games } = told(attic(true, 'STEEPLE'), 'foundByChance');
    expect(sentence).toBe('Attic may be found by chance. That skips Riddle and 7 minutes.');
    expect(labels).toEqual(['Put what lies there in a box locked with STEEPLE']);
    for (const mended of games) expect(codesIn(mended)).toEqual([]);
  });

  it('is not locked away with what opens another lock, or with what is tried first', () => {
    expect(told(attic(true, '12345'), 'foundByChance').labels).toEqual([]);
    const game = attic(true, '12 34 5');
    const riddle = gameOf(
      [
        ...game.nodes.values(),
        { id: 'walk', kind: 'puzzle', name: 'Walk', ...fixed(4) },
        { id: 'safe', kind: 'container', name: 'Safe' },
        { id: 'dial', kind: 'fastener', on: 'safe', type: 'dial', code: '12 34 5' },
        { id: 'badge', kind: 'prize', in: 'safe' },
      ],
      ['riddle>attic', 'walk>attic', 'riddle>dial'],
    );
    expect(told(riddle, 'foundByChance').labels).toEqual([]);
  });

  it('is none where it is hidden well, or nothing leads there', () => {
    expect(codesIn(attic(undefined))).toEqual([]);
    const open = attic(true);
    expect(codesIn({ ...open, links: new Map() })).not.toContain('foundByChance');
    expect(told(attic(true), 'foundByChance').labels).toEqual([]);
  });
});

describe('codes and keys that open more than they should', () => {
  /** The tin opens with what the map says; its note leads to the last puzzle, whose answer opens the chest. */
  const twoBoxes = (
    tin: string,
    chest: string,
    more: readonly NodeDraft[] = [],
    links: readonly string[] = [],
  ) =>
    gameOf(
      [
        { id: 'map', kind: 'puzzle', name: 'Map', answer: tin, ...fixed(3) },
        { id: 'tin', kind: 'container', name: 'Tin' },
        { id: 'tin-lock', kind: 'fastener', on: 'tin', name: 'Red lock', type: 'number', code: tin },
        { id: 'note', kind: 'clue', in: 'tin', name: 'Note' },
        { id: 'last', kind: 'puzzle', name: 'Last puzzle', answer: chest, ...fixed(8) },
        { id: 'chest', kind: 'container', name: 'Chest' },
        { id: 'chest-lock', kind: 'fastener', on: 'chest', name: 'Blue lock', type: 'number', code: chest },
        { id: 'prize', kind: 'prize', in: 'chest' },
        ...more,
      ],
      ['map>tin-lock', 'note>last', 'last>chest-lock', ...links],
    );

  it('two locks of one code, with what that skips', () => {
    const { sentence, labels, games } = told(twoBoxes('8315', '8315'), 'sameCode');
    expect(sentence).toBe(
      'Blue lock and Red lock have the same code, 8315. Whoever knows it for one can open both. Tried at Blue lock as soon as it is known, it skips Last puzzle and Red lock: 8.7 minutes.',
    );
    expect(labels).toEqual([
      expect.stringMatching(/^Set the lock to \d{4}, and let Last puzzle give it$/),
      expect.stringMatching(/^Set the lock to \d{4}, and let Map give it$/),
    ]);
    for (const mended of games) expect(codesIn(mended)).toEqual([]);
    expect(codesIn(twoBoxes('8315', '8316'))).toEqual([]);
  });

  it('an answer that fits a lock it does not lead to', () => {
    const extra: NodeDraft[] = [{ id: 'date', kind: 'clue', name: 'Date on the wall', answer: '8 3 1 6' }];
    const { sentence, labels, games } = told(twoBoxes('8315', '8316', extra, ['date>last']), 'opensAnother');
    expect(sentence).toBe(
      'Date on the wall gives 8316, which also opens Blue lock, where it does not lead. That skips Last puzzle, Map and Red lock, 12 minutes in all.',
    );
    expect(labels).toEqual([expect.stringMatching(/^Set the lock to \d{4}, and let Last puzzle give it$/)]);
    for (const mended of games) expect(codesIn(mended)).toEqual([]);
    const late: NodeDraft[] = [{ id: 'date', kind: 'clue', in: 'chest', answer: '8316', decoy: true }];
    expect(codesIn(twoBoxes('8315', '8316', late))).toEqual([]);
  });

  it('a key that opens several locks', () => {
    const game = gameOf(
      [
        { id: 'hut', kind: 'place', name: 'Hut' },
        { id: 'tag', kind: 'key', in: 'hut', name: 'Brass key' },
        { id: 'tin', kind: 'container' },
        { id: 'tin-lock', kind: 'fastener', on: 'tin', name: 'Red lock', type: 'key' },
        { id: 'chest', kind: 'container' },
        { id: 'chest-lock', kind: 'fastener', on: 'chest', name: 'Blue lock', type: 'key' },
        { id: 'prize', kind: 'prize', in: 'chest' },
        { id: 'second', kind: 'prize', in: 'tin' },
      ],
      ['tag>tin-lock', 'tag>chest-lock'],
    );
    const { sentence, labels, games } = told(game, 'keyOpensSeveral');
    expect(sentence).toBe(
      'The key Brass key opens Blue lock and Red lock. Whoever has it for one can open both.',
    );
    expect(labels).toEqual(['Give Red lock a key of its own']);
    for (const mended of games) {
      expect(codesIn(mended)).toEqual([]);
      expect(assess(mended).measures.shortest).toBe(assess(game).measures.shortest);
    }
  });
});
