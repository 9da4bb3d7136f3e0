/** What is drawn under the rows of a tray: tape corners round a place, walls of a box, the edge of a group, the bar of a hasp. */
import type { NodeId } from '../../../game/model.ts';
import type { Caption } from '../../../map/layout.ts';
import type { Ink, Mark, Spot } from '../../drawing.ts';
import { rectangle } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import { isCaption } from './head.ts';
import type { Type } from './type.ts';
import type { TrayWalls } from './walls.ts';

export interface Extent {
  readonly id: NodeId | Caption;
  readonly depth: number;
  readonly top: number;
  readonly bottom: number;
  /** It began before this part, or goes on after it. */
  readonly continued: boolean;
  readonly continues?: boolean;
}

const OPEN_DASH = [3, 2.5];
/** The inside of boxes, by how deep they are; the fourth is white again. */
const SHADES: readonly Ink[] = ['paper', 'shade', 'deepShade'];

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function backdrop(facts: Facts, extent: Extent, walls: TrayWalls, type: Type): Mark[] {
  const { left, right } = walls.at(extent.depth);
  const box = { left, right, top: extent.top, bottom: extent.bottom };
  if (isCaption(extent.id, facts)) return group(box, extent);
  return facts.node(extent.id)?.kind === 'place'
    ? place(facts, extent.id, box, extent, type)
    : container(extent.id, box, extent, extent.depth);
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

/** Dashed all round where a step opens it; where it is cut, that edge is open. */
function place(facts: Facts, id: NodeId, box: Box, extent: Extent, { size }: Type): Mark[] {
  const isHidden = facts.isOpened(id);
  const area: Mark = {
    mark: 'area',
    role: 'place',
    corners: field(box),
    fill: 'shade',
    stroke: isHidden ? 'second' : 'hair',
    width: isHidden ? 1 : 0.5,
    ...(isHidden && { dash: OPEN_DASH }),
    of: id,
  };
  return isHidden ? [area] : [area, ...tape(box, extent, 1.1 * size, id)];
}

const TAPE = 2.2;

function tape({ left, right, top, bottom }: Box, extent: Extent, length: number, of: NodeId): Mark[] {
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
    ...(extent.continued ? [] : [corner(left, top, 1, 1), corner(right, top, -1, 1)]),
    ...(extent.continues ? [] : [corner(left, bottom, 1, -1), corner(right, bottom, -1, -1)]),
  ];
}

const OUTER = 1.4;
const HEAVY = 3;
/** From the outer wall to the inner. */
const DOUBLE = 2.4;

function container(id: NodeId, box: Box, extent: Extent, depth: number): Mark[] {
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
    edge(bottom, OUTER, extent.continues === true),
    edge(top, HEAVY, extent.continued),
  ];
}

/** A thick upper edge carries the caption. */
function group(box: Box, extent: Extent): Mark[] {
  const { left, right, top } = box;
  return [
    { mark: 'area', role: 'group', corners: field(box), fill: 'shade', stroke: 'hair', width: 0.5 },
    wall(
      [
        { x: left, y: top + TAPE / 2 },
        { x: right, y: top + TAPE / 2 },
      ],
      extent.continued ? 1 : TAPE,
      'ink',
      undefined,
      extent.continued ? OPEN_DASH : undefined,
    ),
  ];
}

/** A bar along the wall joins the plates of several locks. */
export function hasp(walls: TrayWalls, depth: number, locks: readonly number[], { size }: Type): Mark[] {
  const [first, ...rest] = locks;
  const last = rest.at(-1);
  if (first === undefined || last === undefined) return [];
  const { left, right } = walls.at(depth);
  const x = walls.side === 'left' ? right : left;
  return [
    wall(
      [
        { x, y: first },
        { x, y: last },
      ],
      0.45 * size,
      'metal',
    ),
  ];
}
