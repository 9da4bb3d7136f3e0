import { describe, expect, it } from 'vitest';
import { codesOf } from '../../src/engine/codes.ts';
import { compile } from '../../src/engine/network.ts';
import { gameOf } from '../game-of.ts';

interface Lock {
  readonly code?: string;
  readonly type?: string;
  readonly need?: number;
}

/** The lock of a box to which clues with these answers lead; a link may name positions: '47@1,2'. */
function lock(options: Lock, answers: readonly string[], others: readonly ('key' | 'tool')[] = []) {
  const clues = answers.map((text, i) => {
    const [answer = '', at] = text.split('@');
    return { id: `c${i}`, at, node: { id: `c${i}`, kind: 'clue' as const, ...(answer && { answer }) } };
  });
  const game = gameOf(
    [
      { id: 'box', kind: 'container' },
      { id: 'f', kind: 'fastener', on: 'box', type: 'number', ...options },
      ...clues.map(({ node }) => node),
      ...others.map((kind) => ({ id: kind, kind })),
    ],
    [...clues.map(({ id, at }) => (at ? `${id}>f@${at}` : `${id}>f`)), ...others.map((kind) => `${kind}>f`)],
  );
  const [code] = codesOf(game, compile(game));
  if (code === undefined) throw new Error('The game has no fastener.');
  return { state: code.state, problems: code.problems.map(({ problem }) => problem), code };
}

describe('the code of a fastener', () => {
  it('is right when every whole answer equals it, however it is typed', () => {
    expect(lock({ code: ' 4 7 2' }, ['472', '47 2'])).toMatchObject({ state: 'right', problems: [] });
    expect(lock({ code: '↑↓', type: 'direction' }, ['ud']).state).toBe('right');
    expect(lock({ code: '472' }, ['472', '473'])).toMatchObject({
      state: 'wrong',
      problems: ['differs', 'sourcesDiffer'],
    });
  });

  it('is not yet known without a code, and without an answer before it', () => {
    expect(lock({}, ['472'])).toMatchObject({ state: 'notYetKnown', problems: [] });
    expect(lock({}, ['472', '473'])).toMatchObject({ state: 'notYetKnown', problems: ['sourcesDiffer'] });
    expect(lock({ code: '472' }, [''])).toMatchObject({ state: 'notYetKnown', problems: [] });
    expect(lock({ code: '472' }, []).state).toBe('notYetKnown');
  });

  it('may be gathered from several papers', () => {
    expect(lock({ code: '472' }, ['42@1,3', '7@2'])).toMatchObject({ state: 'right', problems: [] });
    expect(lock({ code: '472' }, ['42@1,3'])).toMatchObject({ state: 'wrong', problems: ['gap'] });
    expect(lock({ code: '472' }, ['472', '7@2']).state).toBe('right');
    expect(lock({ code: '472' }, ['42@1,3', '72@2,3'])).toMatchObject({
      state: 'right',
      problems: ['overlap'],
    });
    expect(lock({ code: '472' }, ['42@1,3', '79@2,3'])).toMatchObject({
      state: 'wrong',
      problems: ['symbol', 'contradiction'],
    });
    expect(lock({ code: '472' }, ['42@1', '72@2,3'])).toMatchObject({ state: 'wrong', problems: ['length'] });
    expect(lock({ code: '472' }, ['472@1,2,3', '9@4'])).toMatchObject({
      state: 'wrong',
      problems: ['beyond'],
    });
  });

  it('says where every symbol comes from', () => {
    const { code } = lock({ code: '472' }, ['42@1,3', '7@2']);
    expect(code.origins.map((sources) => sources.map(({ link }) => link))).toEqual([
      ['c0>f@1,3'],
      ['c1>f@2'],
      ['c0>f@1,3'],
    ]);
  });

  it('has to be given whole by each source when not all are needed', () => {
    expect(lock({ code: '472', need: 1 }, ['472', '472']).state).toBe('right');
    expect(lock({ code: '472', need: 1 }, ['472', '']).state).toBe('right');
    expect(lock({ code: '472', need: 1 }, ['472', '7@2'])).toMatchObject({
      state: 'wrong',
      problems: ['notWhole'],
    });
    expect(lock({ code: '472', need: 1 }, ['472', '473'])).toMatchObject({
      state: 'wrong',
      problems: ['differs'],
    });
    expect(lock({ code: '472', need: 2 }, ['42@1,3', '7@2']).state).toBe('right');
  });

  it('counts user-perceived characters as symbols', () => {
    expect(lock({ code: 'e\u0301👩‍🚀x', type: 'word' }, ['é@1', '👩‍🚀@2', 'x@3']).state).toBe('right');
  });

  it('is no question for a latch and a lock that takes a key', () => {
    expect(lock({ type: 'latch' }, ['9']).state).toBe('latch');
    expect(lock({ type: 'key', code: '1' }, ['9']).state).toBe('key');
    expect(lock({ type: 'unheard-of', code: '1' }, ['9'], ['key']).state).toBe('key');
    expect(lock({ type: 'unheard-of', code: '1' }, ['9'], ['tool']).state).toBe('wrong');
  });

  it('does not listen to what is left out', () => {
    const game = gameOf(
      [
        { id: 'a', kind: 'clue', answer: '1' },
        { id: 'b', kind: 'clue', answer: '2', leftOut: true },
        { id: 'box', kind: 'container' },
        { id: 'f', kind: 'fastener', on: 'box', type: 'number', code: '1' },
      ],
      ['a>f', 'b>f'],
    );
    expect(codesOf(game, compile(game)).map(({ state }) => state)).toEqual(['right']);
  });
});
