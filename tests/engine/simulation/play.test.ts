import { describe, expect, it } from 'vitest';
import { Player } from '../../../src/engine/simulation/play.ts';
import { PLAIN, type Rules } from '../../../src/engine/simulation/rules.ts';
import { fixed, gameOf, type NodeDraft } from '../../game-of.ts';
import { clockFor, withLesson } from './played.ts';

/** Plays one run of a game by ids. */
function playOf(
  nodes: readonly NodeDraft[],
  links: readonly string[],
  lesson: Readonly<Record<string, number>>,
  rules: Rules = PLAIN,
  run = 0,
) {
  const clock = clockFor(withLesson(gameOf(nodes, links), lesson));
  const player = new Player(clock, rules, 0);
  player.play(run);
  const log = player.log(run, 0);
  const at = (id: string) => clock.network.index.get(id) ?? -1;
  return {
    end: log.end,
    begin: (id: string) => log.begin[at(id)],
    free: (id: string) => log.free[at(id)],
    reached: (id: string) => log.reached[at(id)],
    possible: (id: string) => log.possible[at(id)],
    pupils: (id: string) => log.pupils[at(id)],
    player,
    at,
  };
}

const two = { pupils: 2, teams: 1 };
const place = (id: string, minutes: number, hands = 1): NodeDraft => ({
  id,
  kind: 'place',
  hands,
  ...fixed(minutes),
});
const prizeIn = (holder: string): NodeDraft => ({ id: 'prize', kind: 'prize', in: holder });

describe('a run worked by hand', () => {
  it('lets two pupils search three places: two at once, the third when the first is done', () => {
    const nodes = [
      place('a', 2),
      place('b', 3),
      place('c', 4),
      ...['a', 'b', 'c'].map((id): NodeDraft => ({ id: `key ${id}`, kind: 'key', in: id })),
      { id: 'win', kind: 'puzzle', hands: 1, ...fixed(1) } as const,
      { id: 'prize', kind: 'prize' } as const,
    ];
    const links = ['key a>win', 'key b>win', 'key c>win', 'win>prize'];
    const seen = new Set<number>();
    for (let run = 0; run < 40; run++) {
      const play = playOf(nodes, links, two, PLAIN, run);
      const first = ['a', 'b', 'c'].filter((id) => play.begin(id) === 0);
      expect(first).toHaveLength(2);
      seen.add(play.end);
      // a and b first: c from 2 to 6; a and c: b from 2 to 5, before c is done at 4; b and c: a from 3 to 5.
      const expected = first.join() === 'a,b' ? 7 : 6;
      expect(play.end).toBe(expected);
    }
    expect([...seen].sort()).toEqual([6, 7]);
  });

  it('takes fewer pupils for a step when fewer are free', () => {
    const play = playOf(
      [
        place('a', 2, 3),
        place('b', 2, 3),
        { id: 'k', kind: 'key', in: 'a' },
        { id: 'm', kind: 'key', in: 'b' },
        { id: 'z', kind: 'puzzle', hands: 9, ...fixed(1) },
        { id: 'prize', kind: 'prize' },
      ],
      ['k>z', 'm>z', 'z>prize'],
      { pupils: 4, teams: 1 },
    );
    expect([play.pupils('a'), play.pupils('b')].sort()).toEqual([1, 3]);
    expect(play.pupils('z')).toBe(4);
    expect(play.end).toBe(3);
  });

  it('opens a container at the last of its locks, which can be tried once it is at hand', () => {
    const play = playOf(
      [
        place('spot', 2, 1),
        { id: 'box', kind: 'container', in: 'spot' },
        { id: 'latch', kind: 'fastener', on: 'box', type: 'latch', hands: 1, ...fixed(1) },
        { id: 'lock', kind: 'fastener', on: 'box', type: 'key', hands: 1, ...fixed(3) },
        { id: 'key', kind: 'key' },
        prizeIn('box'),
      ],
      ['key>lock'],
      two,
    );
    expect([play.possible('box'), play.reached('box')]).toEqual([2, 5]);
    expect([play.possible('latch'), play.reached('latch'), play.reached('lock')]).toEqual([2, 3, 5]);
    expect(play.end).toBe(5);
  });

  it('passes over a step once all that follows from it is reached, but ends what is begun', () => {
    const nodes: NodeDraft[] = [
      place('quick', 1),
      place('slow', 9),
      { id: 'clue', kind: 'clue', in: 'quick' },
      { id: 'other', kind: 'clue', in: 'slow' },
      { id: 'think', kind: 'puzzle', hands: 1, need: 1, ...fixed(1) },
      { id: 'spare', kind: 'puzzle', hands: 1, ...fixed(5) },
      { id: 'late', kind: 'puzzle', hands: 1, ...fixed(4) },
      { id: 'prize', kind: 'prize' },
    ];
    // Who thinks first (1 to 2) makes 'think' reached; 'spare' (an own way to 'last') is then of no use.
    const play = playOf(
      [...nodes, { id: 'last', kind: 'puzzle', need: 1, hands: 1, ...fixed(1) }],
      ['clue>think', 'other>think', 'think>last', 'other>spare', 'spare>last', 'last>prize', 'clue>late'],
      { pupils: 9, teams: 1 },
    );
    expect(play.end).toBe(3);
    expect(play.begin('spare')).toBe(Number.POSITIVE_INFINITY);
    // 'late' has no followers: it is begun, and left when the prize is had.
    expect([play.begin('late'), play.free('late')]).toEqual([1, Number.POSITIVE_INFINITY]);
    // One pupil: whoever searches 'quick' first never opens 'slow', unless it was begun before.
    for (let run = 0; run < 12; run++) {
      const alone = playOf(
        [
          place('quick', 1),
          place('slow', 9),
          { id: 'a', kind: 'clue', in: 'quick' },
          { id: 'b', kind: 'clue', in: 'slow' },
          { id: 'z', kind: 'puzzle', need: 1, ...fixed(2) },
          { id: 'prize', kind: 'prize' },
        ],
        ['a>z', 'b>z', 'z>prize'],
        { pupils: 1, teams: 1 },
        PLAIN,
        run,
      );
      // Contents count as followers, so that a place stays worth searching until its clue is had.
      expect(alone.end).toBeGreaterThanOrEqual(3);
    }
  });

  it('gives out a thing at its minute, also in the middle of nothing', () => {
    const play = playOf(
      [
        { id: 'letter', kind: 'clue', atMinute: 4 },
        { id: 'z', kind: 'puzzle', hands: 1, ...fixed(2) },
        { id: 'prize', kind: 'prize' },
      ],
      ['letter>z', 'z>prize'],
      two,
    );
    expect([play.reached('letter'), play.begin('z'), play.end]).toEqual([4, 4, 6]);
  });

  it('keeps the pupils of a step that takes no time until the round is over', () => {
    // It can take time (so it is a step) but its estimates say 0 to nearly 0.
    const nothing = { minutes: { low: 0, likely: 0, high: 1e-9 } };
    const play = playOf(
      [
        { id: 'a', kind: 'place', hands: 1, ...nothing },
        { id: 'b', kind: 'place', hands: 1, ...nothing },
        { id: 'ka', kind: 'key', in: 'a' },
        { id: 'kb', kind: 'key', in: 'b' },
        { id: 'z', kind: 'puzzle', hands: 1, ...fixed(1) },
        { id: 'prize', kind: 'prize' },
      ],
      ['ka>z', 'kb>z', 'z>prize'],
      { pupils: 1, teams: 1 },
    );
    expect(play.end).toBeCloseTo(1, 6);
  });

  it('ends at 0 when nothing takes time', () => {
    const play = playOf([{ id: 'prize', kind: 'prize' }], [], two);
    expect(play.end).toBe(0);
  });

  it('takes what does not vary once more after it was played without time', () => {
    const { player } = playOf([place('a', 3), prizeIn('a')], [], two);
    player.play(0, 0);
    expect(player.ends[0]).toBe(0);
    player.play(0);
    expect(player.ends[0]).toBe(3);
  });
});
