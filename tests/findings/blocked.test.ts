import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import { gameOf } from '../game-of.ts';
import { codesIn, mended, offered, only, winnable } from './small-games.ts';

describe('a game with nothing wrong', () => {
  it('has no findings and can be won', () => {
    const { findings, canBeWon } = assess(winnable());
    expect(findings).toEqual([]);
    expect(canBeWon).toBe(true);
  });
});

describe('a ring', () => {
  const ownBox = winnable([{ id: 'tag', kind: 'key', in: 'chest' }]);

  it('is a key locked in the box that it opens', () => {
    const assessment = assess(ownBox);
    const { level, nodes, links, values } = only(assessment, 'ring');
    expect(level).toBe('stops');
    expect(nodes).toEqual(['tag', 'chest', 'padlock']);
    expect(links).toEqual(['tag>padlock']);
    expect(values).toMatchObject({ ownBox: 'chest', prizes: ['map'] });
    expect(assessment.canBeWon).toBe(false);
  });

  it('names the prize in its own finding, and no other finding repeats it', () => {
    expect(codesIn(ownBox)).toEqual(['ring', 'leadsNowhere']);
  });

  it('is settled by putting the key into a box that is opened before', () => {
    expect(offered(ownBox, 'ring')[0]).toMatchObject({
      code: 'putIn',
      values: { thing: 'tag', holder: 'tin' },
    });
    expect(assess(mended(ownBox, 'ring', 'putIn')).findings).toEqual([]);
  });

  it('is settled as well by the empty hiding place that is searched first', () => {
    const places = [
      { id: 'bench', kind: 'place' as const },
      { id: 'attic', kind: 'place' as const, atMinute: 3 },
      { id: 'nook', kind: 'place' as const, decoy: true },
    ];
    const game = winnable([{ id: 'tag', kind: 'key', in: 'chest' }, ...places]);
    expect(offered(game, 'ring').map(({ code, values }) => ({ code, ...values }))).toMatchObject([
      { code: 'putIn', holder: 'tin' },
      { code: 'putIn', holder: 'bench' },
      { code: 'putInHand' },
    ]);
  });

  it('is found over several boxes', () => {
    const game = gameOf(
      [
        { id: 'a', kind: 'container' },
        { id: 'lockA', kind: 'fastener', on: 'a', type: 'key' },
        { id: 'keyB', kind: 'key', in: 'a' },
        { id: 'b', kind: 'container' },
        { id: 'lockB', kind: 'fastener', on: 'b', type: 'key' },
        { id: 'keyA', kind: 'key', in: 'b' },
        { id: 'map', kind: 'prize', in: 'b' },
      ],
      ['keyA>lockA', 'keyB>lockB'],
    );
    const { level, values, nodes } = only(assess(game), 'ring');
    expect(level).toBe('stops');
    expect(values.ownBox).toBeUndefined();
    expect(new Set(nodes)).toEqual(new Set(['a', 'lockA', 'keyA', 'b', 'lockB', 'keyB']));
    expect(nodes[0]).toBe('keyA');
    expect(nodes[1]).toBe('b');
  });

  it('is worth a look where no prize hangs on it', () => {
    const game = winnable(
      [
        { id: 'jar', kind: 'container' },
        { id: 'hook', kind: 'fastener', on: 'jar', type: 'key' },
        { id: 'pin', kind: 'key', in: 'jar' },
      ],
      ['pin>hook'],
    );
    const assessment = assess(game);
    expect(only(assessment, 'ring').level).toBe('look');
    expect(assessment.canBeWon).toBe(true);
  });

  it('is none where another way leads in', () => {
    const game = winnable(
      [
        { id: 'tag', kind: 'key', in: 'chest' },
        { id: 'spare', kind: 'key', in: 'tin' },
        { id: 'padlock', kind: 'fastener', on: 'chest', type: 'key', need: 1 },
      ],
      ['spare>padlock'],
    );
    expect(codesIn(game)).toEqual([]);
  });
});

describe('a lock that nothing opens', () => {
  const shut = winnable([], ['-tag>padlock']);

  it('stops the game when the prize is behind it', () => {
    const { level, nodes, values } = only(assess(shut), 'nothingOpens');
    expect(level).toBe('stops');
    expect(nodes).toEqual(['padlock', 'chest']);
    expect(values.prizes).toEqual(['map']);
  });

  it('is worth a look when nothing hangs on it', () => {
    const game = winnable([
      { id: 'jar', kind: 'container' },
      { id: 'hook', kind: 'fastener', on: 'jar', type: 'word' },
      { id: 'sweet', kind: 'tool', in: 'jar', decoy: true },
    ]);
    const assessment = assess(game);
    expect(only(assessment, 'nothingOpens').level).toBe('look');
    expect(assessment.canBeWon).toBe(true);
  });

  it('is never a latch', () => {
    const game = winnable(
      [{ id: 'padlock', kind: 'fastener', on: 'chest', type: 'latch' }],
      ['-tag>padlock'],
    );
    expect(codesIn(game)).toEqual(['leadsNowhere']);
  });

  it('is linked with the key of the same name', () => {
    const game = winnable(
      [
        { id: 'padlock', kind: 'fastener', on: 'chest', type: 'key', name: 'Red tag' },
        { id: 'tag', kind: 'key', in: 'tin', name: 'red tag ' },
      ],
      ['-tag>padlock'],
    );
    expect(assess(mended(game, 'nothingOpens', 'link')).findings).toEqual([]);
  });

  it('is linked with the puzzle whose answer is its code', () => {
    const game = winnable([], ['-sums>wheels']);
    expect(assess(mended(game, 'nothingOpens', 'link')).findings).toEqual([]);
  });

  it('is told on two alternatives: one of them broken is worth a look, both stop the game', () => {
    const either = [
      { id: 'gate', kind: 'puzzle' as const, need: 1 },
      { id: 'left', kind: 'container' as const },
      { id: 'lockL', kind: 'fastener' as const, on: 'left', type: 'key' },
      { id: 'right', kind: 'container' as const },
      { id: 'lockR', kind: 'fastener' as const, on: 'right', type: 'key' },
      { id: 'map', kind: 'prize' as const, in: undefined },
    ];
    const links = ['left>gate', 'right>gate', 'gate>map', '-tag>padlock', 'tag>lockL'];
    const levels = (game: ReturnType<typeof winnable>) =>
      assess(game)
        .findings.filter(({ code }) => code === 'nothingOpens')
        .map(({ level, nodes }) => `${nodes[0]} ${level}`)
        .sort();
    const latch = { id: 'padlock', kind: 'fastener' as const, on: 'chest', type: 'latch' };
    expect(levels(winnable([...either, latch], links))).toEqual(['lockR look']);
    expect(levels(winnable([...either, latch], [...links.slice(0, 4)]))).toEqual([
      'lockL stops',
      'lockR stops',
    ]);
  });
});

describe('more needed than there is', () => {
  const game = winnable([{ id: 'sums', kind: 'puzzle', answer: '472', need: 3 }], ['shelf>sums']);

  it('is told with both numbers', () => {
    const { level, values } = only(assess(game), 'needTooLarge');
    expect(level).toBe('stops');
    expect(values).toMatchObject({ node: 'sums', need: 3, possible: 2, prizes: ['map'] });
  });

  it('is settled by asking for what there is', () => {
    expect(assess(mended(game, 'needTooLarge', 'lowerNeed')).findings).toEqual([]);
  });

  it('asks for all where that is one', () => {
    const one = winnable([{ id: 'sums', kind: 'puzzle', answer: '472', need: 2 }]);
    const after = mended(one, 'needTooLarge', 'needAll');
    expect(after.nodes.get('sums')?.need).toBeUndefined();
  });

  // As 32-bit whole numbers these are 1, 0, 2 and -1.
  it.each([4294967297, 4294967296, 4294967298, Number.MAX_SAFE_INTEGER])(
    'is told as written, however large: %d',
    (need) => {
      const huge = winnable([{ id: 'sums', kind: 'puzzle', answer: '472', need }], ['shelf>sums']);
      const assessment = assess(huge);
      expect(assessment.canBeWon).toBe(false);
      expect(only(assessment, 'needTooLarge').values).toMatchObject({ node: 'sums', need, possible: 2 });
    },
  );

  it('is no finding at a number that can be met', () => {
    expect(
      codesIn(winnable([{ id: 'sums', kind: 'puzzle', answer: '472', need: 1 }], ['shelf>sums'])),
    ).toEqual([]);
  });

  it('stops the game on a box as well', () => {
    const box = winnable([{ id: 'chest', kind: 'container', need: 1 }]);
    expect(only(assess(box), 'needTooLarge').level).toBe('stops');
  });
});

describe('what is never reached', () => {
  it('is told in one finding, without what lies in an unreached box and what has a finding of its own', () => {
    const game = winnable(
      [
        { id: 'card', kind: 'clue', in: 'tin' },
        { id: 'later', kind: 'puzzle' },
        { id: 'more', kind: 'puzzle' },
      ],
      ['-sums>wheels', 'card>later', 'later>more'],
    );
    const { nodes, level, values } = only(assess(game), 'neverReached');
    expect(values.causes).toEqual(['wheels']);
    expect(level).toBe('look');
    expect(nodes).toEqual(['chest', 'later']);
  });

  it('is silent when all of it is told already', () => {
    expect(codesIn(winnable([{ id: 'tag', kind: 'key', in: 'chest' }]))).not.toContain('neverReached');
  });
});

describe('a prize out of reach', () => {
  it('has a finding of its own where no single fault is the cause', () => {
    const way = (side: string) => [
      { id: `outer${side}`, kind: 'container' as const },
      { id: `lock1${side}`, kind: 'fastener' as const, on: `outer${side}`, type: 'key' },
      { id: `inner${side}`, kind: 'container' as const, in: `outer${side}` },
      { id: `lock2${side}`, kind: 'fastener' as const, on: `inner${side}`, type: 'key' },
    ];
    const game = gameOf(
      [...way('L'), ...way('R'), { id: 'end', kind: 'puzzle', need: 1 }, { id: 'map', kind: 'prize' }],
      ['innerL>end', 'innerR>end', 'end>map'],
    );
    const assessment = assess(game);
    const { values } = only(assessment, 'prizeOutOfReach');
    expect(values.prize).toBe('map');
    expect(values.causes).toEqual(['lock1L', 'lock1R', 'lock2L', 'lock2R']);
    expect(assessment.findings.filter(({ level }) => level === 'stops')).toHaveLength(1);
  });
});
