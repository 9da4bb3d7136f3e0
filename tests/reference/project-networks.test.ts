/**
 * Shortest time, critical steps and drag against worked project networks of textbooks, and against Devaux's published rule.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { floatOf } from '../../src/engine/float.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import type { Game } from '../../src/game/model.ts';
import { fixed, gameOf } from '../game-of.ts';
import { type Activity, activity, project, RELIABLE_CONSTRUCTION } from './project.ts';

function measured(game: Game) {
  const network = compile(game);
  const measures = measure(network);
  return {
    shortest: measures.shortest,
    chain: Array.from(measures.chain, (step) => network.ids[step]).join(''),
    drag: Object.fromEntries(
      network.ids.flatMap((id, i) => ((measures.drag[i] ?? 0) > 0 ? [[id, measures.drag[i]]] : [])),
    ),
  };
}

/** Total float: what an activity may take longer without delaying the end, and not a minute more. */
function expectFloat(activities: readonly Activity[], id: string, float: number) {
  const { shortest } = measured(project(activities));
  expect(measured(project(activities, new Map([[id, float]]))).shortest, id).toBeCloseTo(shortest, 9);
  expect(measured(project(activities, new Map([[id, float + 1]]))).shortest, id).toBeCloseTo(shortest + 1, 9);
  const network = compile(project(activities));
  expect(floatOf(network, measure(network), network.index.get(id) ?? -1), id).toBeCloseTo(float, 9);
}

describe('the construction project of Hillier and Lieberman, Introduction to Operations Research', () => {
  // Activities, durations in weeks and predecessors of the worked example (Reliable Construction Co.), and its published results:
  // critical path A B C E F J L N of 44 weeks, float of the others. Drags by Devaux's rule.
  const activities = RELIABLE_CONSTRUCTION;

  it('takes 44 weeks, with the published drags', () => {
    const { shortest, drag } = measured(project(activities));
    expect(shortest).toBe(44);
    expect(drag).toEqual({ A: 2, B: 4, C: 10, E: 2, F: 2, J: 4, L: 1, N: 4 });
  });

  it('has the published float', () => {
    for (const id of 'ABCEFJLN') expectFloat(activities, id, 0);
    for (const id of 'DGHM') expectFloat(activities, id, 4);
    expectFloat(activities, 'I', 2);
    expectFloat(activities, 'K', 1);
  });
});

describe('the pollution-control project of Heizer and Render, Operations Management', () => {
  // Three estimates in weeks and predecessors (Milwaukee Paper Manufacturing), from memory: expected 2 3 2 4 4 3 5 2; critical path
  // A C E G H of 15 weeks; slack B 1, D 1, F 6. Drags by hand with Devaux's rule from these.
  const activities = [
    activity('A', 1, 2, 3),
    activity('B', 2, 3, 4),
    activity('C', 1, 2, 3, 'A'),
    activity('D', 2, 4, 6, 'AB'),
    activity('E', 1, 4, 7, 'C'),
    activity('F', 1, 2, 9, 'C'),
    activity('G', 3, 4, 11, 'DE'),
    activity('H', 1, 2, 3, 'FG'),
  ];

  it('takes 15 weeks along A C E G H', () => {
    expect(measured(project(activities))).toEqual({
      shortest: 15,
      chain: 'ACEGH',
      drag: { A: 1, C: 1, E: 1, G: 5, H: 2 },
    });
  });

  it('has the published expected times and slack', () => {
    const network = compile(project(activities));
    expect([...network.minutes.slice(0, 8)]).toEqual([2, 3, 2, 4, 4, 3, 5, 2]);
    for (const id of 'ACEGH') expectFloat(activities, id, 0);
    expectFloat(activities, 'B', 1);
    expectFloat(activities, 'D', 1);
    expectFloat(activities, 'F', 6);
  });
});

describe('critical-path drag', { timeout: 60_000 }, () => {
  /** By position: after whom each activity comes (all smaller), and its duration. */
  const networks = fc
    .array(fc.tuple(fc.nat(12), fc.array(fc.nat(1000), { maxLength: 3 })), {
      minLength: 1,
      maxLength: 18,
      size: 'max',
    })
    .map((plans) =>
      plans.map(([duration, before], i) => ({
        duration,
        after: i === 0 ? [] : [...new Set(before.map((number) => number % i))],
      })),
    );

  // Devaux, Total Project Control (1999): the drag of an activity off the critical path is 0; of one on it the smaller of its own duration
  // and the least total float among the activities parallel to it (neither before nor after it).
  it('is what Devaux states, on random networks in which all is needed', () => {
    fc.assert(
      fc.property(networks, (activities) => {
        const count = activities.length;
        const early: number[] = [];
        for (const { after } of activities) {
          early.push(Math.max(0, ...after.map((i) => (early[i] ?? 0) + (activities[i]?.duration ?? 0))));
        }
        const end = Math.max(...activities.map(({ duration }, i) => (early[i] ?? 0) + duration));
        const late: number[] = new Array(count).fill(end);
        for (let i = count - 1; i >= 0; i--) {
          const begin = (late[i] ?? 0) - (activities[i]?.duration ?? 0);
          for (const before of activities[i]?.after ?? [])
            late[before] = Math.min(late[before] ?? end, begin);
        }
        const float = activities.map(({ duration }, i) => (late[i] ?? 0) - duration - (early[i] ?? 0));
        const ancestors = activities.map(() => new Set<number>());
        for (const [i, { after }] of activities.entries()) {
          for (const before of after) {
            ancestors[i]?.add(before);
            for (const other of ancestors[before] ?? []) ancestors[i]?.add(other);
          }
        }
        const drag = activities.map(({ duration }, i) => {
          if ((float[i] ?? 0) > 0) return 0;
          const parallel = float.filter((_, j) => j !== i && !ancestors[i]?.has(j) && !ancestors[j]?.has(i));
          return Math.min(duration, ...parallel);
        });

        const id = (i: number) => `a${String(i).padStart(2, '0')}`;
        const game = gameOf(
          [
            ...activities.map(({ duration }, i) => ({
              id: id(i),
              kind: 'puzzle' as const,
              ...fixed(duration),
            })),
            { id: 'done', kind: 'prize' },
          ],
          activities.flatMap(({ after }, i) => [
            ...after.map((before) => `${id(before)}>${id(i)}`),
            `${id(i)}>done`,
          ]),
        );
        const network = compile(game);
        const measures = measure(network);
        expect(measures.shortest).toBe(end);
        // Total float: latest start less earliest start (Kelley and Walker 1959).
        expect(activities.map((_, i) => floatOf(network, measures, i) ?? 0)).toEqual(
          activities.map(({ duration }, i) => (duration > 0 ? float[i] : 0)),
        );
        expect([...measures.drag.slice(0, count)]).toEqual(drag);
      }),
      { seed: 1999, numRuns: 500 },
    );
  });
});
