/** What is told, cut short where it would be higher than a page. */
import type { NodeId } from '../../../game/model.ts';
import { moreTold } from '../../../words/sheet-map.ts';
import { paperOf } from '../../paper.ts';
import type { LayoutOptions } from '../../sheet.ts';
import type { Told } from '../content.ts';
import { type Line, textLines } from './pieces.ts';
import { LEAST, type Type, typeOf } from './type.ts';

/** In points: kept for the head of the page, its foot, and what stands round a bar or plate in its column. */
const ROUND_ABOUT = 150;
/** However much else stands there, so much is told. */
const LEAST_TOLD = 8;

/** So many lines may a bar or a plate have: a page of them at the least size of type, so that the choice of the size changes no words. */
function mostLines({ paper, orientation }: LayoutOptions): number {
  const { height, margin } = paperOf(paper, orientation);
  return Math.floor((height - 2 * margin - ROUND_ABOUT) / typeOf(LEAST).line);
}

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
  options: LayoutOptions,
  type: Type,
): readonly Line[] {
  const room = Math.max(LEAST_TOLD, mostLines(options) - beside);
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
