/** Boxes to tick beside a lock, one for each team. */
import type { NodeId } from '../../../game/model.ts';
import type { Mark } from '../../drawing.ts';
import { TICK, textMark, tickBox } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import { dropOf } from './type.ts';

/** Between boxes to tick. */
const TICK_GAP = 2;

interface Span {
  readonly from: number;
  readonly to: number;
}

export interface TickRoom {
  /** Beside the plate, and below it, from side to side. */
  readonly plate: Span;
  readonly below: Span;
  readonly middle: number;
  readonly bottom: number;
  readonly isLeft: boolean;
}

/** At the wall that is away from the spine, one under another from lock to lock; below the plate where they do not fit beside it. */
export function tickMarks(
  { options, teams }: Facts,
  id: NodeId,
  { plate, below, middle, bottom, isLeft }: TickRoom,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  if (!options.ticks) return { marks: [], bottom: 0 };
  const pitch = TICK + TICK_GAP;
  const isBeside = plate.to - plate.from >= teams * pitch + TICK_GAP;
  const room = isBeside ? plate : below;
  const most = Math.max(1, Math.floor((room.to - room.from + TICK_GAP) / pitch));
  const rows = Math.ceil(teams / most);
  const perRow = Math.ceil(teams / rows);
  const top = isBeside ? middle - TICK / 2 : bottom + TICK_GAP;
  const marks: Mark[] = [];
  for (let team = 0; team < teams; team++) {
    const first = isLeft ? room.from : room.to - perRow * pitch + TICK_GAP;
    const x = first + (team % perRow) * pitch;
    const y = top + Math.floor(team / perRow) * pitch;
    marks.push(tickBox(x, y, id));
    if (teams > 1) marks.push(teamNumber(team + 1, x, y, id));
  }
  return { marks, bottom: top + rows * pitch - TICK_GAP };
}

const TEAM = { size: 7.5, weight: 'regular', family: 'words' } as const;

/** In the box at x and y. */
export function teamNumber(team: number, x: number, y: number, of?: NodeId): Mark {
  return textMark(
    String(team),
    { x: x + TICK / 2, y: y + TICK / 2 + dropOf(TEAM) },
    { ...TEAM, align: 'middle', ink: 'second', ...(of !== undefined && { of }) },
  );
}
