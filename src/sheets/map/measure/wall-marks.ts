/** What is drawn under the rows of a tray: tape corners round a place, walls of a box, the edge of a group, the bar of a hasp. */
import type { NodeId } from '../../../game/model.ts';
import type { Ink, LineMark, Mark, Spot } from '../../drawing.ts';
import { rectangle } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import type { Opening } from '../content.ts';
import type { Type } from './type.ts';
import type { TrayWalls } from './walls.ts';

/** A tray that is cut: it began before this part, or goes on after it. */
export interface Cut {
  readonly continued: boolean;
  readonly continues?: boolean;
}

export interface Extent {
  readonly top: number;
  readonly bottom: number;
  /** The rest is in a later part of the tray. */
  readonly continues: boolean;
}

const OPEN_DASH = [3, 2.5];
/** The inside of boxes, by how many boxes are around them; the fourth is white again. */
const SHADES: readonly Ink[] = ['paper', 'shade', 'deepShade'];

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function backdrop(
  facts: Facts,
  row: Opening,
  { top, bottom, continues }: Extent,
  walls: TrayWalls,
  type: Type,
): Mark[] {
  const box = { ...walls.at(row.depth), top, bottom };
  const cut = { continued: row.continued, continues };
  if (row.row === 'caption') return group(box, cut);
  return facts.node(row.id)?.kind === 'place'
    ? place(row.id, box, cut, facts.isOpened(row.id), 1.1 * type.size)
    : container(row.id, box, cut, row.depth - walls.base);
}

const field = ({ left, right, top, bottom }: Box) => rectangle(left, top, right - left, bottom - top);

function wall(points: readonly Spot[], width: number, ink: Ink, of?: NodeId, dash?: readonly number[]): Mark {
  return {
    mark: 'line',
    role: 'wall',
    points,
    width,
    ink,
    ...(of !== undefined && { of }),
    ...(dash && { dash }),
  };
}

/** Tape corners with arms of this length; dashed all round where a step opens it. Where it is cut, that edge is open. */
export function place(id: NodeId, box: Box, cut: Cut, isHidden: boolean, arm: number): Mark[] {
  const area: Mark = {
    mark: 'area',
    role: 'place',
    corners: field(box),
    fill: 'shade',
    stroke: isHidden ? 'second' : 'hair',
    width: isHidden ? 1 : 0.5,
    ...(isHidden && { hidden: true, dash: OPEN_DASH }),
    of: id,
  };
  return isHidden ? [area] : [area, ...tape(box, cut, arm, id)];
}

const TAPE = 2.2;

function tape({ left, right, top, bottom }: Box, cut: Cut, length: number, of: NodeId): Mark[] {
  const arm = Math.min(length, (bottom - top) / 3);
  const w = TAPE / 2;
  const corner = (x: number, y: number, dx: number, dy: number) =>
    wall(
      [
        { x: x + dx * length, y: y + dy * w },
        { x: x + dx * w, y: y + dy * w },
        { x: x + dx * w, y: y + dy * arm },
      ],
      TAPE,
      'ink',
      of,
    );
  return [
    ...(cut.continued ? [] : [corner(left, top, 1, 1), corner(right, top, -1, 1)]),
    ...(cut.continues ? [] : [corner(left, bottom, 1, -1), corner(right, bottom, -1, -1)]),
  ];
}

const OUTER = 1.4;
const HEAVY = 3;
/** From the outer wall to the inner. */
const DOUBLE = 2.4;

/** Double walls, the upper one heavy. */
export function container(id: NodeId, box: Box, cut: Cut, depth: number): Mark[] {
  const { left, right, top, bottom } = box;
  const fill = SHADES[depth % SHADES.length] ?? 'paper';
  const inner = { left: left + DOUBLE, right: right - DOUBLE, top, bottom: bottom - DOUBLE };
  const edge = (y: number, width: number, isOpen: boolean) =>
    wall(
      [
        { x: left, y },
        { x: right, y },
      ],
      isOpen ? 1 : width,
      'ink',
      id,
      isOpen ? OPEN_DASH : undefined,
    );
  const side = (x: number) =>
    wall(
      [
        { x, y: top },
        { x, y: bottom },
      ],
      OUTER,
      'ink',
      id,
    );
  return [
    { mark: 'area', role: 'container', corners: field(box), fill, of: id },
    wall(
      [
        { x: inner.left, y: inner.top },
        { x: inner.left, y: inner.bottom },
        { x: inner.right, y: inner.bottom },
        { x: inner.right, y: inner.top },
      ],
      0.5,
      'hair',
      id,
    ),
    side(left),
    side(right),
    edge(bottom, OUTER, cut.continues === true),
    edge(top, HEAVY, cut.continued),
  ];
}

/** A thick upper edge carries the caption. */
export function group(box: Box, cut: Cut): Mark[] {
  const { left, right, top } = box;
  return [
    { mark: 'area', role: 'group', corners: field(box), fill: 'shade', stroke: 'hair', width: 0.5 },
    wall(
      [
        { x: left, y: top + TAPE / 2 },
        { x: right, y: top + TAPE / 2 },
      ],
      cut.continued ? 1 : TAPE,
      'ink',
      undefined,
      cut.continued ? OPEN_DASH : undefined,
    ),
  ];
}

/** A bar along the wall joins the plates of several locks. */
export function hasp(walls: TrayWalls, depth: number, locks: readonly number[], { size }: Type): Mark[] {
  const [first, ...rest] = locks;
  const last = rest.at(-1);
  if (first === undefined || last === undefined) return [];
  const { left, right } = walls.at(depth);
  return [haspBar(walls.side === 'left' ? right : left, first, last, 0.45 * size)];
}

export function haspBar(x: number, top: number, bottom: number, width: number): LineMark {
  return {
    mark: 'line',
    role: 'hasp',
    points: [
      { x, y: top },
      { x, y: bottom },
    ],
    width,
    ink: 'metal',
  };
}
