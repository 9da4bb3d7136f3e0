/** Places, boxes, and what shares a caption, as they stand around their contents on the lists: the shapes of the map. */
import type { Game, NodeId } from '../../game/model.ts';
import { CONTINUED } from '../../words/lists.ts';
import { sentence } from '../../words/say.ts';
import type { Sentence } from '../../words/sentence.ts';
import type { Mark } from '../drawing.ts';
import type { Backdrop, Row, Strip } from '../flow.ts';
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

export function setTicks(teams: number, right: number, shown: boolean): SetTicks {
  if (!shown) return { xs: [], left: right, numbered: false };
  const numbered = teams > 1 && teams <= MOST_SETS;
  const count = numbered ? teams : 1;
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

/** Middles of walls of this thickness whose outer edges are at `left` and `right`: what stands at the margin prints nothing beyond it. */
function within(left: number, right: number, wallWidth: number): [number, number] {
  return [left + wallWidth / 2, right - wallWidth / 2];
}

/** A box: a wall all round, its upper edge heavy. Where it goes on, the wall is open. */
export function boxBackdrop(outerLeft: number, outerRight: number, of: NodeId): Backdrop {
  const [left, right] = within(outerLeft, outerRight, 1);
  return ({ top, bottom, continued, continues }) => [
    {
      mark: 'area',
      role: 'container',
      of,
      corners: rectangle(left, top, right - left, bottom - top),
      fill: 'shade',
    },
    wall(
      [
        ...(continues ? [] : [{ x: left, y: bottom }]),
        ...(continues ? [{ x: left, y: bottom }] : []),
        { x: left, y: top },
      ],
      1,
      of,
    ),
    wall(
      [{ x: right, y: top }, { x: right, y: bottom }, ...(continues ? [] : [{ x: left, y: bottom }])],
      1,
      of,
    ),
    ...(continued
      ? []
      : [
          wall(
            [
              { x: left - 0.5, y: top },
              { x: right + 0.5, y: top },
            ],
            2.6,
            of,
          ),
        ]),
  ];
}

function wall(
  points: readonly { readonly x: number; readonly y: number }[],
  width: number,
  of?: NodeId,
): Mark {
  return { mark: 'line', role: 'wall', points, width, ink: 'ink', ...(of !== undefined && { of }) };
}

const CORNER = 13;

/** A place: four tape corners round a pale field. */
export function placeBackdrop(outerLeft: number, outerRight: number, of: NodeId): Backdrop {
  const [left, right] = within(outerLeft, outerRight, 2.4);
  return ({ top, bottom, continued, continues }) => {
    const corner = (x: number, y: number, dx: number, dy: number): Mark =>
      wall(
        [
          { x: x + dx * CORNER, y },
          { x, y },
          { x, y: y + dy * CORNER },
        ],
        2.4,
        of,
      );
    return [
      {
        mark: 'area',
        role: 'place',
        of,
        corners: rectangle(left, top, right - left, bottom - top),
        fill: 'shade',
      },
      ...(continued ? [] : [corner(left, top, 1, 1), corner(right, top, -1, 1)]),
      ...(continues ? [] : [corner(left, bottom, 1, -1), corner(right, bottom, -1, -1)]),
    ];
  };
}

/** What shares a caption: one field with a thick upper edge. */
export function groupBackdrop(left: number, right: number): Backdrop {
  return ({ top, bottom, continued }) => [
    { mark: 'area', role: 'group', corners: rectangle(left, top, right - left, bottom - top), fill: 'shade' },
    ...(continued
      ? []
      : [
          wall(
            [
              { x: left, y: top },
              { x: right, y: top },
            ],
            2,
          ),
        ]),
  ];
}
