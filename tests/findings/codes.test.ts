import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import { orderOfPlayLines } from '../../src/words/order.ts';
import { plain } from '../../src/words/sentence.ts';
import { codesIn, mended, offered, only, winnable } from './small-games.ts';

const wheels = (code: string | undefined, more: Record<string, unknown> = {}) => ({
  id: 'wheels',
  kind: 'fastener' as const,
  on: 'tin',
  type: 'number',
  code,
  ...more,
});
const scrap = (id: string, answer: string) => ({ id, kind: 'clue' as const, answer });

describe('code and answer disagree', () => {
  const game = winnable([wheels('471')]);

  it('stops the game though its structure can be solved', () => {
    const assessment = assess(game);
    const { level, nodes, values } = only(assessment, 'codeDisagrees');
    expect(level).toBe('stops');
    expect(nodes).toEqual(['wheels', 'sums']);
    expect(values).toMatchObject({
      code: '471',
      prizes: ['map'],
      sources: [{ node: 'sums', answer: '472' }],
    });
    expect(assessment.measures.solvable).toBe(true);
    expect(assessment.canBeWon).toBe(false);
  });

  it('never sets a direction lock to what it cannot take', () => {
    const moves = winnable([wheels('UL', { type: 'direction' })]);
    expect(offered(moves, 'codeDisagrees').map(({ code }) => code)).toEqual(['setAnswer']);
  });

  it('is told in the order of play too', () => {
    const line = orderOfPlayLines(assess(game)).find(({ node }) => node === 'wheels');
    expect(plain(line?.reason ?? [])).toContain('once its code is mended');
  });

  it('is settled from either side', () => {
    const byLock = mended(game, 'codeDisagrees', 'setCode');
    expect(byLock.nodes.get('wheels')).toMatchObject({ code: '472' });
    expect(assess(byLock).canBeWon).toBe(true);
    const bySum = mended(game, 'codeDisagrees', 'setAnswer');
    expect(bySum.nodes.get('sums')).toMatchObject({ answer: '471' });
    expect(assess(bySum).canBeWon).toBe(true);
  });

  it('is none where only the way of writing differs', () => {
    const arrows = { id: 'sums', kind: 'puzzle' as const, answer: '↑ ↓ ↓ →' };
    expect(codesIn(winnable([arrows, wheels('uddr', { type: 'direction' })]))).toEqual([]);
  });

  it('is worth a look where another way leads in', () => {
    const gate = { id: 'padlock', kind: 'fastener' as const, on: 'chest', type: 'key', need: 1 };
    const other = [gate, { id: 'spare', kind: 'key' as const, in: 'shelf' }];
    const assessment = assess(winnable([...other, wheels('471')], ['spare>padlock']));
    expect(only(assessment, 'codeDisagrees').level).toBe('look');
    expect(assessment.canBeWon).toBe(true);
  });

  it('offers to change the answer first where another source agrees with the lock', () => {
    const game = winnable(
      [scrap('copy', '471'), scrap('slip', '472'), wheels('471')],
      ['-sums>wheels', 'sums>chest', 'copy>wheels@1,2,3', 'slip>wheels@1,2,3'],
    );
    expect(codesIn(game)).toContain('sourcesDisagree');
    const agreeing = winnable([scrap('copy', '471'), wheels('471')], ['copy>wheels@1,2,3']);
    expect(offered(agreeing, 'codeDisagrees').map(({ code }) => code)).toEqual(['setAnswer']);
  });

  it('is told of the one symbol that a part gets wrong, and set right from both sides', () => {
    const parts = winnable(
      [scrap('one', '4'), scrap('two', '71'), wheels('472')],
      ['-sums>wheels', 'sums>chest', 'one>wheels@1', 'two>wheels@2,3'],
    );
    const { nodes } = only(assess(parts), 'codeDisagrees');
    expect(nodes).toEqual(['wheels', 'two']);
    expect(mended(parts, 'codeDisagrees', 'setCode').nodes.get('wheels')).toMatchObject({ code: '471' });
    expect(mended(parts, 'codeDisagrees', 'setAnswer').nodes.get('two')).toMatchObject({ answer: '72' });
  });
});

describe('two sources of one code disagree', () => {
  const game = winnable([scrap('card', '427')], ['card>wheels']);

  it('stops the game and hides the code that then differs', () => {
    const assessment = assess(game);
    const { level, nodes, values } = only(assessment, 'sourcesDisagree');
    expect(level).toBe('stops');
    expect(nodes).toEqual(['wheels', 'card', 'sums']);
    expect(values).toMatchObject({
      first: { answer: '427' },
      second: { answer: '472' },
      position: undefined,
    });
    expect(codesIn(game)).toEqual(['sourcesDisagree']);
  });

  it('is settled by the answer that the lock has', () => {
    const after = mended(game, 'sourcesDisagree', 'setAnswer');
    expect(after.nodes.get('card')).toMatchObject({ answer: '472' });
    expect(assess(after).findings).toEqual([]);
  });

  it('is worth a look as long as the lock has no code', () => {
    const open = winnable([scrap('card', '427'), wheels(undefined)], ['card>wheels']);
    expect(only(assess(open), 'sourcesDisagree').level).toBe('look');
    expect(codesIn(open)).not.toContain('codeUnknown');
  });

  it('is told of parts by their position', () => {
    const parts = winnable(
      [scrap('one', '47'), scrap('two', '82'), wheels('472')],
      ['-sums>wheels', 'sums>chest', 'one>wheels@1,2', 'two>wheels@2,3'],
    );
    expect(only(assess(parts), 'sourcesDisagree').values).toMatchObject({ position: 2 });
  });
});

describe('partial codes', () => {
  const gathered = (links: string[], answers: [string, string], code = '472') =>
    winnable(
      [scrap('one', answers[0]), scrap('two', answers[1]), wheels(code)],
      ['-sums>wheels', 'sums>chest', ...links],
    );

  it('are no finding when they make up the code', () => {
    expect(codesIn(gathered(['one>wheels@1,3', 'two>wheels@2'], ['42', '7']))).toEqual([]);
  });

  it.each([
    ['gap', ['one>wheels@1', 'two>wheels@3'], ['4', '2'], 'stops', [2]],
    ['length', ['one>wheels@1,2', 'two>wheels@3'], ['4', '2'], 'stops', [1, 2]],
    ['beyond', ['one>wheels@1,2', 'two>wheels@3,4'], ['47', '29'], 'stops', [4]],
    ['overlap', ['one>wheels@1,2', 'two>wheels@2,3'], ['47', '72'], 'look', [2]],
  ] as const)('with a %s are told', (problem, links, answers, level, positions) => {
    const finding = only(assess(gathered([...links], [...answers])), 'parts');
    expect(finding.values).toMatchObject({ problem, positions });
    expect(finding.level).toBe(level);
  });

  it('of which fewer than all are needed have to be whole each', () => {
    const game = winnable([scrap('one', '47'), wheels('472', { need: 1 })], ['one>wheels@1,2']);
    expect(only(assess(game), 'parts').values).toMatchObject({
      problem: 'notWhole',
      sources: [{ node: 'one' }],
    });
    expect(codesIn(mended(game, 'parts', 'needAll'))).not.toContain('parts');
  });

  it('that make up another, complete code can be taken as the code', () => {
    const game = gathered(['one>wheels@1,2', 'two>wheels@3'], ['47', '2'], '47');
    expect(only(assess(game), 'parts').values.problem).toBe('beyond');
    expect(codesIn(mended(game, 'parts', 'setCode'))).toEqual([]);
  });

  it('that hold the whole code can give it whole', () => {
    const game = winnable([wheels('472')], ['-sums>wheels', 'sums>wheels@1,2']);
    expect(only(assess(game), 'parts').values.problem).toBe('length');
    expect(codesIn(mended(game, 'parts', 'wholeAnswer'))).toEqual([]);
  });
});

describe('a code that is not yet known', () => {
  it('is worth a look and takes the answer that is given', () => {
    const game = winnable([wheels(undefined)]);
    const assessment = assess(game);
    expect(only(assessment, 'codeUnknown')).toMatchObject({ level: 'look', values: { lacks: 'code' } });
    expect(assessment.canBeWon).toBe(true);
    expect(mended(game, 'codeUnknown', 'setCode').nodes.get('wheels')).toMatchObject({ code: '472' });
  });

  it('gives its code to the puzzle that leads to it', () => {
    const game = winnable([{ id: 'sums', kind: 'puzzle', answer: undefined }]);
    expect(only(assess(game), 'codeUnknown').values.lacks).toBe('answer');
    expect(mended(game, 'codeUnknown', 'setAnswer').nodes.get('sums')).toMatchObject({ answer: '472' });
  });

  it('offers nothing where neither is known', () => {
    const game = winnable([{ id: 'sums', kind: 'puzzle', answer: undefined }, wheels(undefined)]);
    expect(only(assess(game), 'codeUnknown').values.lacks).toBe('both');
    expect(offered(game, 'codeUnknown')).toEqual([]);
  });

  it('is no matter of locks that take a key, nor of latches', () => {
    expect(codesIn(winnable([wheels(undefined, { type: 'latch' })]))).toEqual([]);
    expect(codesIn(winnable())).toEqual([]);
  });

  it('is silent where nothing opens the lock at all', () => {
    const codes = codesIn(winnable([], ['-sums>wheels', 'sums>chest']));
    expect(codes).toContain('nothingOpens');
    expect(codes).not.toContain('codeUnknown');
  });
});

describe('two locks with one code', () => {
  it('are worth a look, once for each code', () => {
    const second = { id: 'lid', kind: 'fastener' as const, on: 'chest', type: 'typed', code: ' 4 72' };
    const { level, nodes } = only(assess(winnable([second], ['sums>lid'])), 'sameCode');
    expect(level).toBe('look');
    expect(nodes).toEqual(['lid', 'wheels']);
  });

  it('are none where one of them is not used', () => {
    const second = {
      id: 'lid',
      kind: 'fastener' as const,
      on: 'chest',
      type: 'word',
      code: '472',
      leftOut: true,
    };
    expect(codesIn(winnable([second], ['sums>lid']))).not.toContain('sameCode');
  });
});

describe('a type of lock that this version does not know', () => {
  it('is said so, once for each type', () => {
    const second = { id: 'lid', kind: 'fastener' as const, on: 'chest', type: 'no type of lock' };
    const { level, values } = only(assess(winnable([second], ['tag>lid'])), 'unknownType');
    expect(level).toBe('look');
    expect(values).toEqual({ type: 'no type of lock', fasteners: ['lid'] });
  });
});
