/** What the lists are made of: numbers in circles, signs, boxes to be ticked, findings. */
import type { Assessment } from '../../findings/assess.ts';
import type { Finding } from '../../findings/finding.ts';
import type { NodeId } from '../../game/model.ts';
import { findingTold } from '../../words/lists.ts';
import type { Mark } from '../drawing.ts';
import type { Strip } from '../flow.ts';
import { rectangle, rule, TICK, textMark, tickBox } from '../marks.ts';
import { prose } from '../prose.ts';
import type { SignName } from '../signs.ts';
import { SIGN, SMALL, TEXT } from './type.ts';

export const space = (height: number): Strip => ({ height, marks: [] });

const CIRCLE = 8.5;

/** The number of a step in its circle, its middle on the middle of a line of text. */
export function numberStrip(number: number, x: number, of: NodeId, height: number = TEXT.leading): Strip {
  const digits = String(number).length;
  const half = digits > 2 ? CIRCLE + (digits - 2) * 2.5 : CIRCLE;
  const middle = height / 2;
  return {
    height: Math.max(height, 2 * CIRCLE),
    marks: [
      {
        mark: 'area',
        role: 'step',
        of,
        corners: rectangle(x, middle - CIRCLE, 2 * half, 2 * CIRCLE),
        rounded: CIRCLE,
        fill: 'ink',
      },
      textMark(
        String(number),
        { x: x + half, y: middle + 3.2 },
        { size: 9, weight: 'strong', role: 'step', ink: 'paper', align: 'middle', of },
      ),
    ],
  };
}

export function signStrip(sign: SignName, x: number, of: NodeId, height: number = TEXT.leading): Strip {
  return {
    height,
    marks: [{ mark: 'sign', sign, x, y: (height - SIGN) / 2, size: SIGN, ink: 'ink', of }],
  };
}

/** Boxes to be ticked, on the middle of a line; with the numbers of the sets in them, as on the map. */
export function tickStrip(
  { xs, numbered }: { readonly xs: readonly number[]; readonly numbered: boolean },
  of: NodeId,
): Strip {
  const middle = TEXT.leading / 2;
  return {
    height: Math.max(TEXT.leading, TICK),
    marks: xs.flatMap((x, i): Mark[] => [
      tickBox(x, middle - TICK / 2, of),
      ...(numbered ? [setNumber(i + 1, x + TICK / 2, middle)] : []),
    ]),
  };
}

function setNumber(number: number, x: number, middle: number): Mark {
  return textMark(String(number), { x, y: middle + 2.6 }, { size: 7.5, ink: 'second', align: 'middle' });
}

/** What the program has to say of something on the list. */
export function findingStrips(
  { game }: Assessment,
  finding: Finding,
  x: number,
  width: number,
  directions?: ReadonlySet<string>,
): Strip[] {
  return prose(findingTold(game, finding), x, width, {
    ...SMALL,
    ink: finding.level === 'stops' ? 'stop' : 'ink',
    names: 'regular',
    ...(directions && { directions }),
  });
}

/** A hair line under a row. */
export function ruleStrip(left: number, right: number, height = 6): Strip {
  return { height, marks: [rule({ x: left, y: height }, { x: right, y: height }, 0.5, 'hair')] };
}
