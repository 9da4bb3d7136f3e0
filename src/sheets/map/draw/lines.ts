/** Lines from the row that they begin at to what they mean: across the channel, and inside the trays at either end. */
import type { NodeId } from '../../../game/model.ts';
import type { LineMark, Mark, Spot } from '../../drawing.ts';
import type { PlannedLine } from '../plan.ts';

const WIDTH = 1.1;
/** Inside a tray, from the row to the wall. */
const THIN = 0.8;
const ROUNDED = 4;
const CASING = 1.6;
/** Shorter than this there is nothing to be seen. */
const NOTHING = 0.5;

/** Where a line leaves or reaches what stands in a tray, by node; undefined for a bar. */
export type Reach = (id: NodeId) => number | undefined;

/** The lines of one net after another: first what keeps them off all that they pass, then they themselves. */
export function lineMarks(lines: readonly PlannedLine[], reach: Reach): Mark[] {
  const nets = new Map<string, PlannedLine[]>();
  for (const line of lines) {
    const net = nets.get(line.net);
    if (net) net.push(line);
    else nets.set(line.net, [line]);
  }
  return [...nets.values()].flatMap((net) => [
    ...net.map(casing),
    ...net.flatMap((line) => drawn(line, reach)),
  ]);
}

function casing({ points }: PlannedLine): LineMark {
  return {
    mark: 'line',
    role: 'rule',
    points,
    width: WIDTH + 2 * CASING,
    ink: 'paper',
    rounded: ROUNDED,
  };
}

function drawn({ points, links, from, to }: PlannedLine, reach: Reach): LineMark[] {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return [];
  const begin = inside(first, reach(from));
  const end = inside(last, reach(to));
  const line = (spots: readonly Spot[], width: number, arrow: boolean): LineMark => ({
    mark: 'line',
    role: 'link',
    points: spots,
    width,
    ink: 'second',
    rounded: ROUNDED,
    links,
    ...(arrow && { arrow }),
  });
  return [
    ...(begin ? [line([begin, first], THIN, false)] : []),
    line(end ? [...points, end] : points, WIDTH, true),
  ];
}

function inside(wall: Spot, x: number | undefined): Spot | undefined {
  return x === undefined || Math.abs(x - wall.x) < NOTHING ? undefined : { x, y: wall.y };
}
