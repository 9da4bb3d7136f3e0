/** Marks moved, and the few shapes that many pages share. */
import type { NodeId } from '../game/model.ts';
import { textWidth } from '../type/text.ts';
import type { AreaMark, Ink, LineMark, Mark, Spot, TextMark } from './drawing.ts';
import { millimetres } from './paper.ts';

/** The same mark, farther right and lower by so much. */
export function moved(mark: Mark, right: number, down: number): Mark {
  const shift = ({ x, y }: Spot): Spot => ({ x: x + right, y: y + down });
  switch (mark.mark) {
    case 'text':
    case 'sign':
      return { ...mark, x: mark.x + right, y: mark.y + down };
    case 'line':
      return { ...mark, points: mark.points.map(shift) };
    case 'area':
      return { ...mark, corners: mark.corners.map(shift) };
  }
}

/** The same mark, lower by so much. */
export function movedDown(mark: Mark, by: number): Mark {
  return moved(mark, 0, by);
}

export function rectangle(x: number, y: number, width: number, height: number): Spot[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

export function rule(from: Spot, to: Spot, width: number, ink: Ink, dash?: readonly number[]): LineMark {
  return { mark: 'line', role: 'rule', points: [from, to], width, ink, ...(dash && { dash }) };
}

/** Side of a box to be ticked with a pencil. */
export const TICK = millimetres(4);

export function tickBox(x: number, y: number, of?: NodeId): AreaMark {
  return {
    mark: 'area',
    role: 'tick',
    corners: rectangle(x, y, TICK, TICK),
    rounded: 1,
    fill: 'paper',
    stroke: 'ink',
    width: 0.8,
    ...(of !== undefined && { of }),
  };
}

/** A line of text as it is measured; what is not given is plain text in the first ink. */
export function textMark(
  text: string,
  at: Spot,
  how: Partial<Omit<TextMark, 'mark' | 'text' | 'x' | 'y' | 'width'>> & { readonly size: number },
): TextMark {
  const { role = 'plain', align = 'start', weight = 'regular', family = 'words', ink = 'ink', ...rest } = how;
  const style = {
    size: rest.size,
    weight,
    family,
    ...(rest.spacing && { spacing: rest.spacing }),
    ...(rest.italic && { italic: true }),
  };
  const width = textWidth(text, style);
  return { mark: 'text', role, text, x: at.x, y: at.y, align, width, weight, family, ink, ...rest };
}
