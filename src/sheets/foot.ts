/** The foot of a printed page: the game, which codes, when it was printed, and which page of how many it is. */

import { wrap } from '../type/text.ts';
import { pageOf, printedOn } from '../words/sheets.ts';
import type { Drawing, Mark } from './drawing.ts';
import { rule, textMark } from './marks.ts';
import type { Paper } from './paper.ts';

/** Kept at the lower edge, inside the margin. */
export const FOOT_HEIGHT = 24;

const SIZE = 8;

export interface FootText {
  readonly title: string;
  readonly codes: string;
  readonly date: string;
}

/** The same drawing with its foot. A title that is longer than the line stands at the head of the first page only. */
export function withFoot(
  drawing: Drawing,
  paper: Paper,
  { title, codes, date }: FootText,
  page: number,
  pages: number,
): Drawing {
  const { margin, width, height } = paper;
  const y = height - margin - 2;
  const right = textMark(
    pageOf(page, pages),
    { x: width - margin, y },
    { size: SIZE, weight: 'strong', align: 'end' },
  );
  const told = [codes, printedOn(date)].join(' · ');
  const room = width - 2 * margin - right.width - 12;
  const style = { size: SIZE, weight: 'regular', family: 'words' } as const;
  const isShort = title !== '' && wrap(`${title} · ${told}`, room, style).length === 1;
  const marks: Mark[] = [
    ...drawing.marks,
    rule({ x: margin, y: y - 12 }, { x: width - margin, y: y - 12 }, 0.5, 'hair'),
    right,
  ];
  let x = margin;
  if (isShort) {
    const name = textMark(title, { x, y }, { size: SIZE, role: 'name', ink: 'second' });
    marks.push(name);
    x += name.width;
  }
  marks.push(textMark(isShort ? ` · ${told}` : told, { x, y }, { size: SIZE, ink: 'second' }));
  return { ...drawing, marks };
}
