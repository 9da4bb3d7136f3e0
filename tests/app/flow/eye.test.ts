/** What the eye is at, and whether the map has been rearranged under it. */
import { expect, test } from 'vitest';
import { carried, eyeAt, isAnyInView, isPinInView, isRearranged, shiftsOf } from '../../../app/flow/eye.ts';
import { matRects } from '../../../app/flow/geometry.ts';
import type { Point } from '../../../src/game/model.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView } from '../../../src/map/layout.ts';
import { gameOf, LINKS, NODES } from '../open-game.ts';

const layoutAt = (sill: Point, sum: Point) =>
  layOut(
    {
      ...gameOf(NODES, LINKS),
      positions: new Map([
        ['sill', sill],
        ['sum', sum],
      ]),
    },
    plainView,
  );

const before = layoutAt({ x: 0, y: 0 }, { x: 500, y: 0 });
const none = new Set<string>();

test('one that moved, or several by the same way, is no rearrangement', () => {
  const one = shiftsOf(before, layoutAt({ x: 0, y: 0 }, { x: 500, y: 40 }));
  expect([...one]).toEqual([['sum', { x: 0, y: 40 }]]);
  expect(isRearranged(one)).toBe(false);
  expect(carried(before, one)).toBe(1);
  expect(isRearranged(shiftsOf(before, layoutAt({ x: 8, y: 0 }, { x: 508, y: 0 })))).toBe(false);
  expect(isRearranged(shiftsOf(before, layoutAt({ x: 8, y: 0 }, { x: 500, y: 40 })))).toBe(true);
  expect(isRearranged(shiftsOf(before, before))).toBe(false);
  expect(carried(before, shiftsOf(before, layoutAt({ x: 8, y: 0 }, { x: 500, y: 0 })))).toBe(5);
});

test('the eye is at what is under the middle, else at the nearest; what is selected and in view comes first', () => {
  const sill = matRects(before).get('sill') ?? { x: 0, y: 0, width: 0, height: 0 };
  const round = (x: number, y: number) => ({ x: x - 700, y: y - 400, width: 1400, height: 800 });
  expect(eyeAt(before, none, round(sill.width - 5, 20))).toBe('sill');
  expect(eyeAt(before, none, round(495, 20))).toBe('sum');
  expect(eyeAt(before, none, round(sill.width + 4, 20))).toBe('sill');
  expect(eyeAt(before, new Set(['sum', 'note']), round(20, 20))).toBe('sum');
  const far = { x: -300, y: -300, width: 500, height: 500 };
  expect(eyeAt(before, new Set(['sum']), far)).toBe('sill');
  expect(eyeAt(layOut(gameOf([]), plainView), none, far)).toBeUndefined();
});

test('the map is in view when any of it is', () => {
  expect(isAnyInView(before, { x: -100, y: -100, width: 101, height: 101 })).toBe(true);
  expect(isAnyInView(before, { x: -100, y: -100, width: 100, height: 100 })).toBe(false);
});

test('a pin is in view when what it holds to the mat is', () => {
  const pinned = new Map([['sum', { x: 500, y: 0, pinned: true }]]);
  const near = { x: 450, y: -50, width: 200, height: 200 };
  expect(isPinInView(before, pinned, near)).toBe(true);
  expect(isPinInView(before, pinned, { ...near, x: -100 })).toBe(false);
  expect(isPinInView(before, new Map([['sum', { x: 500, y: 0 }]]), near)).toBe(false);
  expect(isPinInView(before, new Map([['note', { x: 0, y: 0, pinned: true }]]), { ...near, x: 0 })).toBe(
    false,
  );
});
