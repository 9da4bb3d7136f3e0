/** Places, boxes, and what shares a caption, as they stand around their contents on the lists: the shapes of the map. */
import type { Game, NodeId } from '../../game/model.ts';
import { CONTINUED, type Ticks } from '../../words/lists.ts';
import { sentence } from '../../words/say.ts';
import type { Sentence } from '../../words/sentence.ts';
import type { Backdrop, Row, Strip } from '../flow.ts';
import { container, group, place } from '../map/measure/wall-marks.ts';
import { rectangle, TICK } from '../marks.ts';
import { prose } from '../prose.ts';
import { signStrip, space } from './parts.ts';
import { HEADING, NOTE, SIGN, TEXT } from './type.ts';

/** Where boxes to be ticked stand in a tray: one for each set, or one for all. */
export interface SetTicks {
  readonly xs: readonly number[];
  /** Of the first, or where they would begin. */
  readonly left: number;
  /** Each set has its own. */
  readonly numbered: boolean;
}

/** More sets than these share one box. */
const MOST_SETS = 8;
const TICK_STEP = TICK + 5;

export function ticksFor(teams: number, shown: boolean): Ticks {
  if (!shown) return 'none';
  return teams > 1 && teams <= MOST_SETS ? 'each' : 'one';
}

/** `copies`: of what there are not as many as teams, so that none belongs to one of them. */
export function setTicks(teams: number, right: number, shown: boolean, copies?: number): SetTicks {
  if (!shown) return { xs: [], left: right, numbered: false };
  const isEach = ticksFor(teams, shown) === 'each';
  const numbered = isEach && copies === undefined;
  const count = isEach ? (copies ?? teams) : 1;
  const xs = Array.from({ length: count }, (_, i) => right - TICK - (count - 1 - i) * TICK_STEP);
  return { xs, left: xs[0] ?? right, numbered };
}

export interface TrayHeading {
  readonly name: Sentence;
  /** Room kept before the name, for the number of a step. */
  readonly mark?: { readonly width: number; readonly strip: Strip };
  /** Lines under the name; only where the tray begins. */
  readonly told: readonly Sentence[];
  readonly left: number;
  readonly right: number;
}

export function headingRow(heading: TrayHeading, continued: boolean): Row {
  const { name, mark, told, left, right } = heading;
  const x = left + (mark?.width ?? 0);
  const title = continued ? sentence(name, { topic: 'steps', text: `, ${CONTINUED}` }) : name;
  const lines = continued ? [] : told.filter((line) => line.length > 0);
  return {
    before: 14,
    cells: [[space(7), ...prose(title, x, right - x, HEADING)], mark ? [space(7), mark.strip] : []],
    below: lines.flatMap((line) => prose(line, left, right - left, NOTE)),
  };
}

/** The sign of a thing; a box as a small tray with its heavy upper edge. */
export function thingSign(game: Game, id: NodeId, x: number): Strip[] {
  const kind = game.nodes.get(id)?.kind;
  if (kind === 'clue' || kind === 'key' || kind === 'tool' || kind === 'prize') {
    return [signStrip(kind, x, id)];
  }
  const top = (TEXT.leading - SIGN) / 2 + 1.5;
  return [
    {
      height: TEXT.leading,
      marks: [
        {
          mark: 'area',
          role: 'plain',
          of: id,
          corners: rectangle(x + 1, top, SIGN - 2, SIGN - 3),
          stroke: 'ink',
          width: 0.9,
        },
        {
          mark: 'line',
          role: 'wall',
          of: id,
          points: [
            { x: x + 0.5, y: top },
            { x: x + SIGN - 0.5, y: top },
          ],
          width: 2,
          ink: 'ink',
        },
      ],
    },
  ];
}

/** Walls are drawn half inside and half outside: at the margin of the page nothing may stand out. */
const INSET = 1.2;
const ARM = 13;

export function boxBackdrop(left: number, right: number, of: NodeId): Backdrop {
  return (part) => container(of, boxOf(left, right, part), part, 0);
}

/** `isHidden`: a step opens it. */
export function placeBackdrop(left: number, right: number, of: NodeId, isHidden: boolean): Backdrop {
  return (part) => place(of, boxOf(left, right, part), part, isHidden, ARM);
}

export function groupBackdrop(left: number, right: number): Backdrop {
  return (part) => group(boxOf(left, right, part), part);
}

function boxOf(left: number, right: number, { top, bottom }: Parameters<Backdrop>[0]) {
  return { left: left + INSET, right: right - INSET, top, bottom };
}
