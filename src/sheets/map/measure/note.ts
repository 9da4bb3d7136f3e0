/** A rescue line at the edge of the page: the numbers of its steps, what stays shut without them, and what to do. */

import type { NodeId } from '../../../game/model.ts';
import type { Mark } from '../../drawing.ts';
import { movedDown, rule } from '../../marks.ts';
import { prose } from '../../prose.ts';
import type { Facts } from '../content/facts.ts';
import type { RescueNote } from '../content.ts';
import type { Figure } from './figure.ts';
import { typeOf } from './type.ts';

const PAD = 5;

export function noteFigure(facts: Facts, note: RescueNote, size: number, width: number): Figure {
  const { note: style } = typeOf(size);
  const numbers = note.steps.map(facts.number).join(', ');
  const words = facts.rescue(note);
  const strips = prose([{ strong: `${numbers}\u00A0` }, ' ', ...words], PAD, width - PAD, {
    size: style.size,
    leading: 1.2 * style.size,
    role: 'rescue',
    directions: facts.directionCodes,
  });
  const marks: Mark[] = [];
  let y = 0;
  for (const strip of strips) {
    for (const mark of strip.marks) marks.push(asRescue(movedDown(mark, y)));
    y += strip.height;
  }
  return {
    height: y,
    marks: [rule({ x: 0.5, y: 1 }, { x: 0.5, y: y - 1 }, 1, 'hair'), ...marks],
    ends: new Map<NodeId, number>(),
  };
}

/** All of it is the rescue line, names and codes too. */
function asRescue(mark: Mark): Mark {
  if (mark.mark !== 'text') return mark;
  const { of: _, ...rest } = mark;
  return { ...rest, role: 'rescue' };
}
