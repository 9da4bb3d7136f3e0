/** Codes that their locks cannot show, and codes that are tried first; and mends where a symbol is a number or a name. */
import { describe, expect, it } from 'vitest';
import { fastenerType } from '../../src/fasteners/index.ts';
import { wordListOf } from '../../src/fasteners/word-list/word-list.ts';
import { assess } from '../../src/findings/assess.ts';
import { proposalsFor } from '../../src/findings/propose.ts';
import { writtenCode } from '../../src/game/codes.ts';
import type { Game } from '../../src/game/model.ts';
import { findingSentence } from '../../src/words/findings/index.ts';
import { proposalLabel } from '../../src/words/proposals.ts';
import { plain } from '../../src/words/sentence.ts';
import { codesIn, edited, freshIds, mended, offered, only, winnable } from './small-games.ts';

/** The lock of the small game, its code and what the puzzle gives. */
function lock(
  type: string,
  code: string,
  { answer = code, wheels, ...hardware }: { answer?: string; wheels?: string[]; marks?: number } = {},
): Game {
  const known = { ...hardware, ...(wheels && { wheels }) };
  return winnable([
    { id: 'sums', kind: 'puzzle', answer },
    {
      id: 'wheels',
      kind: 'fastener',
      type,
      code,
      hardware: Object.keys(known).length > 0 ? known : undefined,
    },
  ]);
}

const codeOf = (game: Game) => writtenCode(game, 'wheels')?.typed;
const answerOf = (game: Game) => writtenCode(game, 'sums')?.typed;
const told = (game: Game) => {
  const finding = only(assess(game), 'codeDoesNotFit');
  return plain(findingSentence(game, finding));
};

describe('a code that the lock cannot show', () => {
  const game = lock('word', 'CORE', { wheels: ['ABCD', 'MNOP', 'QRST', 'ABCD'] });

  it('stops the game as a wrong code does, and is told with wheel and letter', () => {
    const { level, nodes, values } = only(assess(game), 'codeDoesNotFit');
    expect(level).toBe('stops');
    expect(nodes).toEqual(['wheels']);
    expect(values).toMatchObject({
      prizes: ['map'],
      misfits: [{ misfit: 'symbol', position: 4, symbol: 'E' }],
    });
    expect(told(game)).toMatch(/cannot be set to CORE: wheel 4 has no E \(it shows A to D\)\./);
    expect(assess(game).measures.solvable).toBe(true);
    expect(assess(game).canBeWon).toBe(false);
  });

  it('offers words of the same length that it can show, for lock and answer together', () => {
    const words = wordListOf(new Map([[10, ['CORE', 'BOSS', 'DOTE', 'BOTA', 'FOUR', 'TEN']]]));
    const assessment = assess(game, words);
    const proposals = proposalsFor(assessment, only(assessment, 'codeDoesNotFit'), freshIds());
    expect(proposals.map(({ code }) => code)).toEqual(['newCode']);
    const [proposal] = proposals;
    if (!proposal) throw new Error('nothing is offered');
    expect(proposalLabel(game, proposal)).toBe('Set the lock to BOTA, and let sums give it');
    const after = edited(game, proposal.edits);
    expect([codeOf(after), answerOf(after)]).toEqual(['BOTA', 'BOTA']);
    // Hardly a word is on the list: so few are tried in no time.
    expect(assess(after, words).findings.map(({ code }) => code)).toEqual(['easilyGuessed']);
  });

  it('is worth a look where it does not matter, and no finding of a lock that a key opens', () => {
    const beside = winnable(
      [
        {
          id: 'wheels',
          kind: 'fastener',
          on: 'tin',
          type: 'number',
          code: '47',
          hardware: { wheels: ['0-9'] },
        },
        { id: 'sums', kind: 'puzzle', answer: '47' },
        { id: 'padlock', kind: 'fastener', on: 'chest', type: 'key', need: 1 },
        { id: 'spare', kind: 'key', in: 'shelf' },
      ],
      ['spare>padlock'],
    );
    expect(only(assess(beside), 'codeDoesNotFit').level).toBe('look');
    expect(told(beside)).toMatch(/the lock has 1 wheel, and the code has 2 digits\./);
    expect(assess(beside).canBeWon).toBe(true);
    const keyed = winnable([
      {
        id: 'padlock',
        kind: 'fastener',
        on: 'chest',
        type: 'number',
        code: 'ABC',
        hardware: { wheels: ['0-9'] },
      },
    ]);
    expect(codesIn(keyed)).not.toContain('codeDoesNotFit');
  });

  it('names the prize that falls also where the game has another fault', () => {
    const two = winnable([
      { id: 'sums', kind: 'puzzle', answer: '47' },
      { id: 'wheels', kind: 'fastener', type: 'number', code: '47', hardware: { wheels: ['0-9'] } },
      { id: 'lid', kind: 'fastener', on: 'tin', type: 'number', code: '915' },
    ]);
    expect(assess(two).measures.solvable).toBe(false);
    expect(only(assess(two), 'codeDoesNotFit')).toMatchObject({
      level: 'stops',
      values: { prizes: ['map'] },
    });
  });

  it('is worth a look where only what is usual is against it, with a type that would fit', () => {
    const letters = lock('number', 'KEY');
    expect(only(assess(letters), 'codeDoesNotFit').level).toBe('look');
    expect(told(letters)).toContain('a number lock usually shows 0 to 9, and position 1 is K');
    expect(assess(letters).canBeWon).toBe(true);
    const after = mended(letters, 'codeDoesNotFit', 'otherType');
    expect(after.nodes.get('wheels')).toMatchObject({ type: 'word' });
    expect(codesIn(after)).toEqual([]);
    expect(told(lock('dial', '32 14'))).toContain('a dial lock usually takes 3 numbers, and the code has 2');
    expect(told(lock('dial', '32 14 60', { marks: 40 }))).toContain(
      'the dial goes from 0 to 39, and number 3 is 60',
    );
  });

  it('is set without its accents where the wheels have none', () => {
    const game = lock('word', 'café', { wheels: ['A-Z', 'A-Z', 'A-Z', 'A-Z'] });
    expect(only(assess(game), 'codeDoesNotFit').level).toBe('stops');
    const after = mended(game, 'codeDoesNotFit', 'newCode');
    expect([codeOf(after), answerOf(after)]).toEqual(['CAFE', 'CAFE']);
    expect(codesIn(after)).toEqual([]);
  });

  it('takes a drawn code where there are no words to choose from', () => {
    const after = mended(lock('dial', '32 14 60', { marks: 40 }), 'codeDoesNotFit', 'newCode');
    const { symbols, misfits } = fastenerType('dial');
    expect(misfits(symbols(codeOf(after) ?? ''), { marks: 40 })).toEqual([]);
    expect(answerOf(after)).toBe(codeOf(after));
    const pictures = ['FOX SUN BELL', 'FOX SUN BELL', 'FOX SUN BELL'];
    const shown = mended(lock('picture', 'FOX CUP SUN', { wheels: pictures }), 'codeDoesNotFit', 'newCode');
    expect(codeOf(shown)?.split(' ')).toHaveLength(3);
    // With three pictures a wheel the lock has few codes, whatever it is set to.
    expect(codesIn(shown)).toEqual(['easilyGuessed']);
  });

  it('is left to the teacher where a source serves two locks', () => {
    const shared = winnable(
      [
        { id: 'sums', kind: 'puzzle', answer: '47' },
        { id: 'wheels', kind: 'fastener', type: 'number', code: '47', hardware: { wheels: ['0-9', '1-3'] } },
        { id: 'lid', kind: 'fastener', on: 'chest', type: 'typed', code: '47' },
      ],
      ['sums>lid'],
    );
    expect(offered(shared, 'codeDoesNotFit')).toEqual([]);
  });
});

describe('a code that is tried first', () => {
  it.each([
    ['number', '000', 'factorySetting'],
    ['number', '777', 'allAlike'],
    ['number', '456', 'run'],
    ['number', '4747', 'repeated'],
    ['number', '2026', 'year'],
    ['direction', 'UDUD', 'repeated'],
    ['direction', 'URDL', 'run'],
    ['dial', '10 20 30', 'run'],
    ['picture', 'FOX FOX FOX', 'allAlike'],
    ['typed', 'ABC', 'run'],
    ['word', 'AAAA', 'allAlike'],
  ])('%s %s', (type, code, reason) => {
    const game = lock(type, code);
    expect(only(assess(game), 'weakCode')).toMatchObject({ level: 'look', values: { reason } });
    expect(assess(game).canBeWon).toBe(true);
  });

  it.each([
    ['number', '472'],
    ['number', '1815'],
    ['direction', 'UDDR'],
    ['dial', '32 14 25'],
    ['picture', 'FOX SUN BELL'],
    ['word', 'BRISK'],
    ['key', '000'],
    ['latch', '000'],
  ])('is none: %s %s', (type, code) => {
    expect(codesIn(lock(type, code))).not.toContain('weakCode');
  });

  it('is drawn anew, for the lock and what gives it alike', () => {
    const after = mended(lock('number', '123'), 'weakCode', 'newCode');
    expect(codeOf(after)).toMatch(/^\d{3}$/);
    expect(answerOf(after)).toBe(codeOf(after));
    expect(codesIn(after)).toEqual([]);
  });

  it('is drawn anew in parts, each source its own', () => {
    const parts = winnable(
      [
        { id: 'one', kind: 'clue', answer: '13' },
        { id: 'two', kind: 'clue', answer: '2' },
        { id: 'wheels', kind: 'fastener', type: 'number', code: '123' },
      ],
      ['-sums>wheels', 'sums>chest', 'one>wheels@1,3', 'two>wheels@2'],
    );
    const after = mended(parts, 'weakCode', 'newCode');
    expect(codesIn(after)).toEqual([]);
    const [first, second, third] = [...(codeOf(after) ?? '')];
    expect(writtenCode(after, 'one')?.typed).toBe(`${first}${third}`);
    expect(writtenCode(after, 'two')?.typed).toBe(second);
  });
});

describe('codes of numbers and names', () => {
  it('are told and mended from either side as they are written', () => {
    for (const [type, code, answer] of [
      ['dial', '32 14 25', '32 14 26'],
      ['picture', 'FOX SUN BELL', 'FOX MOON BELL'],
    ] as const) {
      const game = lock(type, code, { answer });
      expect(plain(findingSentence(game, only(assess(game), 'codeDisagrees')))).toContain(
        `is set to ${code}, but sums gives ${answer}.`,
      );
      expect(codeOf(mended(game, 'codeDisagrees', 'setCode'))).toBe(answer);
      expect(answerOf(mended(game, 'codeDisagrees', 'setAnswer'))).toBe(code);
    }
  });

  it('are compared whole as they stand, and mended into one form', () => {
    const game = lock('dial', '32 14 25', { answer: '32-14-25' });
    expect(only(assess(game), 'codeDisagrees').values).toMatchObject({
      code: '32 14 25',
      sources: [{ answer: '32-14-25' }],
    });
    for (const by of ['setCode', 'setAnswer'] as const) {
      const after = mended(game, 'codeDisagrees', by);
      expect([codeOf(after), answerOf(after)]).toEqual(['32 14 25', '32 14 25']);
    }
  });

  it('fill positions as numbers and names, not as digits and letters', () => {
    const game = winnable(
      [
        { id: 'one', kind: 'clue', answer: '05 25' },
        { id: 'two', kind: 'clue', answer: '14' },
        { id: 'wheels', kind: 'fastener', type: 'dial', code: '5-14-25' },
      ],
      ['-sums>wheels', 'sums>chest', 'one>wheels@1,3', 'two>wheels@2'],
    );
    expect(codesIn(game)).toEqual([]);
    const wrong = edited(game, [{ type: 'setFields', id: 'two', fields: { answer: '31' } }]);
    expect(only(assess(wrong), 'codeDisagrees').values.sources).toEqual([
      { node: 'two', answer: '31', at: [2] },
    ]);
    expect(codeOf(mended(wrong, 'codeDisagrees', 'setCode'))).toBe('5 31 25');
    expect(writtenCode(mended(wrong, 'codeDisagrees', 'setAnswer'), 'two')?.typed).toBe('14');
  });

  it('are taken over from what gives them, written as they are stored', () => {
    const game = winnable([
      { id: 'sums', kind: 'puzzle', answer: 'fox, sun, bell' },
      { id: 'wheels', kind: 'fastener', type: 'picture', code: undefined },
    ]);
    const after = mended(game, 'codeUnknown', 'setCode');
    expect([codeOf(after), answerOf(after)]).toEqual(['FOX SUN BELL', 'FOX SUN BELL']);
    expect(codesIn(after)).toEqual([]);
  });
});
