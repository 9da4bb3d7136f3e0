/** What is told, cut short where it would be higher than a page. */
import type { NodeId } from '../../../game/model.ts';
import { moreTold } from '../../../words/sheet-map.ts';
import type { Told } from '../content.ts';
import { type Line, textLines } from './pieces.ts';
import type { Type } from './type.ts';

/** In lines: so high may a bar or a plate be, at the least size of type, on a page that lies. */
export const MOST_LINES = 30;
/** However much else stands there, so much is told. */
const LEAST_TOLD = 4;

interface Cap {
  readonly of: NodeId;
  readonly width: number;
  /** Lines that stand there anyway. */
  readonly beside: number;
}

/** As many of the first as there is room for, and how many more there are. */
export function cappedLines(
  told: readonly Told[],
  linesOf: (told: readonly Told[]) => readonly Line[],
  { of, width, beside }: Cap,
  type: Type,
): readonly Line[] {
  const room = Math.max(LEAST_TOLD, MOST_LINES - beside);
  const all = linesOf(told);
  if (all.length <= room) return all;
  const first = (count: number) => {
    const rest = told.slice(count);
    const links = rest.map(({ link }) => link);
    const look = { role: 'reference', ink: 'ink', of, links } as const;
    return [...linesOf(told.slice(0, count)), ...textLines(moreTold(rest.length), width, type.told, look)];
  };
  let [low, high] = [0, told.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (first(middle).length <= room) low = middle;
    else high = middle - 1;
  }
  return first(low);
}
