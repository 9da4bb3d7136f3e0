/** Faults of the lines between things, and how many of them cross. */
import type { LineMark, Spot } from '../../../src/sheets/drawing.ts';
import {
  boxAround,
  cross,
  grown,
  inside,
  lengthOf,
  meet,
  runTogether,
  type Segment,
  segmentsOf,
} from './boxes.ts';
import type { Fault } from './fault.ts';
import { linesThroughSigns } from './marks.ts';
import { type Page, type PaintedLine, spotText } from './page.ts';
import { called, type Used } from './used.ts';

/** Two lines nearer than this look like one. */
const NEAR = 1.5;

function endsOf(used: Used, links: readonly string[], end: 'from' | 'to'): Set<string> {
  return new Set(links.flatMap((id) => used.links.get(id)?.[end] ?? []));
}

const idsOf = ({ mark }: { mark: LineMark }) => mark.links ?? [];
const label = (line: PaintedLine) => idsOf(line).join(' ') || 'a line';

/** Lines into one thing may join, and lines out of one. */
function shareAnEnd(used: Used, a: PaintedLine, b: PaintedLine): boolean {
  return (['from', 'to'] as const).some((end) => {
    const ends = endsOf(used, idsOf(a), end);
    return [...endsOf(used, idsOf(b), end)].some((id) => ends.has(id));
  });
}

function together(a: readonly Segment[], b: readonly Segment[]): number {
  let length = 0;
  for (const one of a) for (const other of b) length += runTogether(one, other, NEAR);
  return length;
}

function onEachOther(page: Page, used: Used): Fault[] {
  const faults: Fault[] = [];
  for (const [i, a] of page.links.entries()) {
    const box = grown(boxAround(a.mark.points), NEAR);
    for (const b of page.links.slice(i + 1)) {
      if (!meet(box, grown(boxAround(b.mark.points), NEAR), 0) || shareAnEnd(used, a, b)) continue;
      const length = together(a.segments, b.segments);
      if (length <= 1) continue;
      const what = `${label(a)} and ${label(b)} for ${length.toFixed(0)} ${spotText(box)}`;
      faults.push({ kind: 'line on line', page: page.number, what });
    }
    const doubled = a.segments.some((segment, j) => together([segment], a.segments.slice(j + 1)) > 1);
    if (doubled) faults.push({ kind: 'line on line', page: page.number, what: `${label(a)} on itself` });
  }
  return faults;
}

function alongWalls(page: Page): Fault[] {
  const walls = page.trays.map(({ mark, box }) => ({
    of: mark.of,
    box: grown(box, NEAR),
    segments: segmentsOf([...mark.corners, ...mark.corners.slice(0, 1)]),
  }));
  return page.links.flatMap((line) => {
    const box = boxAround(line.mark.points);
    return walls
      .filter((wall) => meet(wall.box, grown(box, NEAR), 0) && together(line.segments, wall.segments) > 3)
      .map(
        (wall): Fault => ({
          kind: 'line along a wall',
          page: page.number,
          what: `${label(line)} along ${wall.of ?? 'a group'} ${spotText(box)}`,
        }),
      );
  });
}

/** A line may enter the trays that its ends are in, and no bar. */
function throughAreas(page: Page, used: Used): Fault[] {
  return page.links.flatMap((line) => {
    const ends = [...endsOf(used, idsOf(line), 'from'), ...endsOf(used, idsOf(line), 'to')];
    const served = new Set(ends.flatMap((id) => used.chain(id)));
    const hasLoose = ends.some((id) => used.isLoose(id));
    return page.trays.flatMap((tray): Fault[] => {
      const { role, of } = tray.mark;
      const mayEnter = role === 'group' ? hasLoose : role !== 'puzzle' && of !== undefined && served.has(of);
      if (mayEnter) return [];
      const depth = role === 'puzzle' ? 2.5 : 1;
      const isThrough = line.segments.some((segment) => {
        const part = inside(segment, grown(tray.box, -0.75));
        return part !== undefined && (part[1] - part[0]) * lengthOf(segment) > depth;
      });
      if (!isThrough) return [];
      const what = `${label(line)} through ${role === 'group' ? 'a group' : called(used, of)} ${spotText(tray.box)}`;
      return [{ kind: 'line through an area', page: page.number, what }];
    });
  });
}

function slanted(page: Page): Fault[] {
  const isSlanted = ({ from, to }: { from: Spot; to: Spot }) =>
    Math.abs(from.x - to.x) > 0.05 && Math.abs(from.y - to.y) > 0.05;
  return page.links
    .filter(({ segments }) => segments.some(isSlanted))
    .map((line) => ({ kind: 'slanted line', page: page.number, what: label(line) }));
}

export function lineFaults(page: Page, used: Used): Fault[] {
  const ends = (links: readonly string[]) =>
    new Set([...endsOf(used, links, 'from'), ...endsOf(used, links, 'to')]);
  return [
    ...onEachOther(page, used),
    ...alongWalls(page),
    ...throughAreas(page, used),
    ...slanted(page),
    ...linesThroughSigns(page, ends),
  ];
}

/** Pairs of lines that cross, those that share an end left out. */
export function crossingsOf(page: Page, used: Used): number {
  let crossings = 0;
  for (const [i, a] of page.links.entries()) {
    for (const b of page.links.slice(i + 1)) {
      if (shareAnEnd(used, a, b)) continue;
      for (const one of a.segments) for (const other of b.segments) if (cross(one, other)) crossings++;
    }
  }
  return crossings;
}
