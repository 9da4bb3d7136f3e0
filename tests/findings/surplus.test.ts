import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import { emptyGame } from '../../src/game/model.ts';
import { fixed, gameOf } from '../game-of.ts';
import { codesIn, mended, only, winnable } from './small-games.ts';

describe('no prize', () => {
  it('stops even an empty game', () => {
    expect(codesIn(emptyGame)).toEqual(['noPrize']);
    expect(assess(emptyGame).canBeWon).toBe(false);
  });

  it('is settled by using again the prize that is left out', () => {
    const game = winnable([{ id: 'map', kind: 'prize', in: 'chest', leftOut: true }]);
    expect(assess(mended(game, 'noPrize', 'bringBack')).findings).toEqual([]);
  });

  it('is settled by a prize in the box that is opened last', () => {
    const game = winnable([{ id: 'map', kind: 'clue', in: 'chest', decoy: true }]);
    const after = mended(game, 'noPrize', 'addPrize');
    expect([...after.nodes.values()].filter(({ kind }) => kind === 'prize')).toMatchObject([{ in: 'chest' }]);
    expect(assess(after).canBeWon).toBe(true);
  });
});

describe('a prize without a step', () => {
  it('stops the game, and is put into a box', () => {
    const game = winnable([{ id: 'map', kind: 'prize', in: undefined }]);
    const { level, nodes } = only(assess(game), 'prizeGivenAway');
    expect(level).toBe('stops');
    expect(nodes).toEqual(['map']);
    const after = mended(game, 'prizeGivenAway', 'putIn');
    expect(after.nodes.get('map')).toMatchObject({ in: 'chest' });
    expect(assess(after).canBeWon).toBe(true);
  });

  it('is still one when the teacher gives it out later', () => {
    expect(codesIn(winnable([{ id: 'map', kind: 'prize', in: undefined, atMinute: 10 }]))).toContain(
      'prizeGivenAway',
    );
  });

  it('comes from leaving out the puzzle that hands it over', () => {
    const nodes = [
      { id: 'last', kind: 'puzzle' as const, leftOut: true },
      { id: 'map', kind: 'prize' as const, in: undefined },
    ];
    const game = winnable(nodes, ['chest>last', 'last>map']);
    expect(only(assess(game), 'prizeGivenAway').values.leftOut).toEqual(['last']);
    expect(assess(mended(game, 'prizeGivenAway', 'bringBack')).canBeWon).toBe(true);
  });

  it('stays one whatever else the teacher gives out, and when', () => {
    const prize = { id: 'map', kind: 'prize' as const, in: undefined, atMinute: 10 };
    const tool = { id: 'lens', kind: 'tool' as const, decoy: true, atMinute: 30 };
    expect(codesIn(winnable([prize]))).toContain('prizeGivenAway');
    expect(codesIn(winnable([prize, tool]))).toContain('prizeGivenAway');
  });

  it('is none where having it takes a step itself, whatever else is given out', () => {
    const prize = { id: 'map', kind: 'prize' as const, in: undefined, ...fixed(2) };
    const tool = { id: 'lens', kind: 'tool' as const, decoy: true, atMinute: 30 };
    expect(codesIn(winnable([prize]))).not.toContain('prizeGivenAway');
    expect(codesIn(winnable([prize, tool]))).not.toContain('prizeGivenAway');
  });

  it.each([
    ['Album', 'Bench', true],
    ['Bench', 'Album', false],
  ])('of two ways equally early follows the one first by name, not by id: %s, %s', (clue, place, isGiven) => {
    const ways = (clueId: string, placeId: string) =>
      gameOf(
        [
          { id: clueId, kind: 'clue', name: clue, atMinute: 2 },
          { id: placeId, kind: 'place', name: place, ...fixed(2) },
          { id: 'both', kind: 'puzzle', need: 1, ...fixed(0) },
          { id: 'map', kind: 'prize' },
        ],
        [`${clueId}>both`, `${placeId}>both`, 'both>map'],
      );
    for (const game of [ways('a', 'b'), ways('b', 'a')]) {
      expect(codesIn(game).includes('prizeGivenAway')).toBe(isGiven);
    }
  });

  it('is none where a search comes first', () => {
    const game = gameOf([
      { id: 'shelf', kind: 'place' },
      { id: 'map', kind: 'prize', in: 'shelf' },
    ]);
    expect(codesIn(game)).toEqual([]);
  });
});

describe('what leads nowhere', () => {
  it.each([
    { id: 'extra', kind: 'clue' as const },
    { id: 'extra', kind: 'key' as const, in: 'shelf' },
    { id: 'extra', kind: 'tool' as const },
    { id: 'extra', kind: 'puzzle' as const },
    { id: 'extra', kind: 'place' as const },
    { id: 'extra', kind: 'container' as const },
  ])('is worth a look: $kind', (node) => {
    const game = winnable([node]);
    expect(only(assess(game), 'leadsNowhere')).toMatchObject({ level: 'look', nodes: ['extra'] });
    const after = mended(game, 'leadsNowhere', 'markDecoy');
    expect(after.nodes.get('extra')?.decoy).toBe(true);
    expect(assess(after).findings).toEqual([]);
  });

  it('is none where a lock is there for the joy of opening', () => {
    const game = winnable([
      { id: 'extra', kind: 'container' },
      { id: 'bow', kind: 'fastener', on: 'extra', type: 'latch', forFun: true },
    ]);
    expect(assess(game).findings).toEqual([]);
  });

  it('is linked where something waits for just that', () => {
    const game = winnable(
      [
        { id: 'pin', kind: 'key', in: 'shelf', name: 'Pin' },
        { id: 'bolt', kind: 'fastener', on: 'chest', type: 'key', name: 'Pin' },
      ],
      ['tag>bolt'],
    );
    expect(mended(game, 'leadsNowhere', 'link').links.size).toBe(game.links.size + 1);
  });

  it('names what it led to and what is not used today', () => {
    const game = winnable(
      [
        { id: 'extra', kind: 'clue' },
        { id: 'riddle', kind: 'puzzle', leftOut: true },
      ],
      ['extra>riddle', 'riddle>wheels'],
    );
    expect(only(assess(game), 'leadsNowhere').values.leftOut).toEqual(['riddle']);
  });
});

describe('what leaving out does', () => {
  it('breaks a lock, and bringing back mends it', () => {
    const game = winnable([{ id: 'tag', kind: 'key', in: 'tin', leftOut: true }]);
    const { level, values } = only(assess(game), 'nothingOpens');
    expect(level).toBe('stops');
    expect(values.leftOut).toEqual(['tag']);
    expect(assess(mended(game, 'nothingOpens', 'bringBack')).findings).toEqual([]);
  });

  it('takes away what a number of things needs', () => {
    const nodes = [
      { id: 'sums', kind: 'puzzle' as const, answer: '472', need: 2 },
      { id: 'note', kind: 'clue' as const, in: 'shelf', leftOut: true },
    ];
    const game = winnable(nodes, ['shelf>sums']);
    expect(only(assess(game), 'needTooLarge').values).toMatchObject({
      need: 2,
      possible: 1,
      leftOut: ['note'],
    });
  });

  it('gives away what a box held', () => {
    const game = winnable([{ id: 'tin', kind: 'container', leftOut: true }]);
    const { level, values } = only(assess(game), 'givenAway');
    expect(level).toBe('look');
    expect(values).toEqual({ cause: 'tin', things: ['tag'], holder: undefined });
    expect(assess(mended(game, 'givenAway', 'bringBack')).findings).toEqual([]);
  });

  it('gives away what a lock kept shut', () => {
    const game = winnable([
      { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number', code: '472', leftOut: true },
    ]);
    expect(only(assess(game), 'givenAway').values).toMatchObject({ cause: 'wheels', things: ['tin'] });
  });

  it('gives away what a puzzle handed over', () => {
    const nodes = [
      { id: 'talk', kind: 'puzzle' as const, leftOut: true },
      { id: 'tag', kind: 'key' as const, in: undefined },
    ];
    const game = winnable(nodes, ['tin>talk', 'talk>tag']);
    expect(only(assess(game), 'givenAway').values).toMatchObject({ cause: 'talk', things: ['tag'] });
  });

  it('is silent where nothing comes sooner', () => {
    const game = winnable([{ id: 'extra', kind: 'clue', leftOut: true }], ['extra>sums']);
    expect(codesIn(game)).toEqual([]);
  });
});

describe('a hand-over', () => {
  const nodes = (need: number | 'all') => [
    { id: 'riddle', kind: 'puzzle' as const },
    { id: 'map', kind: 'prize' as const, in: undefined, need },
  ];
  const links = ['chest>riddle', 'sums>map', 'riddle>map'];

  it('that can be had without its puzzle is worth a look', () => {
    const game = winnable(nodes(1), links);
    const { level, values } = only(assess(game), 'handOver');
    expect(level).toBe('look');
    expect(values).toEqual({ thing: 'map', need: 1, links: 2, puzzles: ['riddle'] });
    expect(codesIn(mended(game, 'handOver', 'needAll'))).toEqual([]);
  });

  it('that takes all its puzzles is none', () => {
    expect(codesIn(winnable(nodes('all'), links))).toEqual([]);
  });
});
