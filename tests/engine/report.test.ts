import { describe, expect, it } from 'vitest';
import { reportOf } from '../../src/engine/report.ts';
import { fixed, gameOf } from '../game-of.ts';

describe('the report of a game', () => {
  const nodes = [
    { id: '__proto__', kind: 'place' as const, ...fixed(2) },
    { id: 'box', kind: 'container' as const, in: '__proto__' },
    { id: 'constructor', kind: 'puzzle' as const, ...fixed(3) },
    { id: 'lock', kind: 'fastener' as const, on: 'box', type: 'number', ...fixed(1) },
    { id: 'shed', kind: 'place' as const, ...fixed(3) },
    { id: 'win', kind: 'prize' as const, in: 'box' },
  ];

  it('speaks of nodes by id, whatever the id', () => {
    const report = reportOf(gameOf(nodes, ['constructor>lock', 'shed>constructor']));
    expect(report).toEqual({
      title: '',
      solvable: true,
      reached: ['__proto__', 'box', 'constructor', 'lock', 'shed', 'win'],
      steps: { total: 4, fewest: 4, fewestExact: true, longestChain: 3 },
      // Without a code nobody knows how many there are.
      guess: { lock: { codes: null, left: null, minutes: null, skips: ['constructor', 'shed'] } },
      // Nothing varies. Six pupils search for 2 minutes; then three wait for 1 minute, three for 3, and four for 1.
      minutes: { shortest: 7, median: 7, p10: 7, p90: 7, chanceInTime: 1 },
      waiting: {
        total: 3 + 9 + 4,
        byStep: Object.fromEntries([
          ['__proto__', 0],
          ['constructor', 9],
          ['lock', 4],
          ['shed', 3],
        ]),
      },
      cost: Object.fromEntries([
        ['__proto__', 0],
        ['constructor', 3],
        ['lock', 1],
        ['shed', 3],
      ]),
      drag: Object.fromEntries([
        ['__proto__', 0],
        ['constructor', 3],
        ['lock', 1],
        ['shed', 3],
      ]),
      mustDo: ['__proto__', 'constructor', 'lock', 'shed'],
      tied: [],
    });
    expect(JSON.parse(JSON.stringify(report.drag))).toHaveProperty(['__proto__'], 0);
  });

  it('lists ties', () => {
    const report = reportOf(
      gameOf(
        nodes.filter(({ id }) => id !== 'constructor'),
        ['shed>lock'],
      ),
    );
    expect(report.tied).toEqual([]);
    expect(report.drag).toMatchObject({ shed: 1, lock: 1 });
    const even = nodes.map((node) => (node.id === 'shed' ? { ...node, ...fixed(2) } : node));
    const tied = reportOf(
      gameOf(
        even.filter(({ id }) => id !== 'constructor'),
        ['shed>lock'],
      ),
    );
    expect(tied.tied).toEqual(['__proto__', 'shed']);
  });

  it('gives only what has a meaning when the game cannot be won', () => {
    expect(reportOf(gameOf(nodes))).toEqual({
      title: '',
      solvable: false,
      reached: ['__proto__', 'constructor', 'shed'],
      steps: { total: 3 },
      guess: { lock: { codes: null, left: null, minutes: null, skips: [] } },
    });
  });

  it('says of each lock how many codes are left to guess, by id, whatever the id', () => {
    const withCode = nodes.map((node) =>
      node.id === 'lock' ? { ...node, id: 'toString', code: '47' } : node,
    );
    const { guess } = reportOf(gameOf(withCode, ['constructor>toString', 'shed>constructor']));
    expect(guess).toEqual(
      Object.fromEntries([
        ['toString', { codes: 100, left: 100, minutes: (50.5 * 5) / 60, skips: ['constructor', 'shed'] }],
      ]),
    );
    expect(JSON.parse(JSON.stringify(guess))).toHaveProperty(['toString', 'left'], 100);
  });
});
