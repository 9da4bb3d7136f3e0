/** The map on several pages: as few as may be at a size that reads well, cut where the fewest links are cut. */
import type { MapContent } from '../content.ts';
import type { Frame } from '../plan.ts';
import { columnsOf, lastOf, mayFit } from './columns.ts';
import { fewestParts, halves, leastParts, partsInto } from './cuts.ts';
import { type Division, divide } from './divide.ts';
import type { Part, Share } from './part.ts';
import { assembled, type Candidate, isBetter, partsOf } from './parts.ts';
import { type Placed, place } from './place.ts';
import { sharesOf } from './shares.ts';
import { SEVERAL, SIZES, SMALLEST } from './sizes.ts';

/** With more parts than this, fewer are not tried one by one. */
const TRIED = 8;
const LARGER: readonly number[] = [...SIZES].reverse().filter((size) => size > SEVERAL);

function fitsAt(part: Part, size: number, effort: number): Placed | undefined {
  if (!mayFit(part, size)) return undefined;
  return place(part, size, lastOf(columnsOf(part, size, { effort })));
}

/** All parts, if there is a way for exactly so many. */
function inParts(division: Division, count: number, effort: number): Placed[] | undefined {
  const { content, frame, perPage, trays, uses, cutting, room, size } = division;
  const starts = partsInto(cutting, count);
  const shares = starts && sharesOf(content, trays, uses, starts, room);
  if (!shares || shares.length > count) return undefined;
  const placed: Placed[] = [];
  for (const part of partsOf(content, frame, shares, perPage)) {
    const one = fitsAt(part, size, effort / count);
    if (!one) return undefined;
    placed.push(one);
  }
  return placed;
}

/** Cuts parts that turn out to be too full in two, until all fit or cannot be cut. */
function fittingShares(division: Division, effort: number): Share[] {
  const { content, frame, perPage, trays, uses, room, cutting, size } = division;
  let starts = fewestParts(cutting);
  const known = new Map<string, boolean>();
  for (;;) {
    const shares = sharesOf(content, trays, uses, starts, room);
    const cuts: number[] = [];
    for (const [i, part] of partsOf(content, frame, shares, perPage).entries()) {
      if (part.bars.length < 2) continue;
      const key = JSON.stringify([part.bars, part.trays.map((tray) => tray.key), part.area.width]);
      const fits = known.get(key) ?? fitsAt(part, size, effort) !== undefined;
      known.set(key, fits);
      const from = starts[i];
      if (fits || from === undefined) continue;
      const middle = halves(cutting, from, starts[i + 1] ?? content.bars.length)[0];
      if (middle !== undefined) cuts.push(middle);
    }
    if (cuts.length === 0) return shares;
    starts = [...starts, ...cuts].sort((a, b) => a - b);
  }
}

/** On as many pages as it takes. `fits`: it does so at some size; else a bar or a row is higher than a page. */
function inAny(division: Division, effort: number): { placed: Placed[]; fits: boolean } {
  const { content, frame, perPage } = division;
  const count = fewestParts(division.cutting).length;
  const shares = fittingShares(division, effort / (4 * count));
  let fits = true;
  const placed = partsOf(content, frame, shares, perPage).map((part) => {
    let size = division.size;
    for (; size >= SMALLEST; size -= 0.5) {
      const one = fitsAt(part, size, effort / count);
      if (one) return one;
    }
    fits = false;
    return place(part, SMALLEST, lastOf(columnsOf(part, SMALLEST, { effort })), true);
  });
  return { placed: placed.flatMap((one) => one ?? []), fits };
}

function withParts(content: MapContent, frame: Frame, perPage: 1 | 2, effort: number): Candidate {
  const hopeful = divide(content, frame, perPage, SEVERAL, false);
  const most = fewestParts(hopeful.cutting).length;
  for (let count = leastParts(hopeful.cutting); count <= Math.min(most, TRIED); count++) {
    let found = inParts(hopeful, count, effort);
    if (!found) continue;
    for (const size of LARGER) {
      const larger = inParts(divide(content, frame, perPage, size, false), count, effort);
      if (!larger) break;
      found = larger;
    }
    return assembled(found, perPage);
  }
  return onAnyNumber(hopeful, effort);
}

function onAnyNumber(hopeful: Division, effort: number): Candidate {
  const { content, frame, perPage } = hopeful;
  const first = inAny(hopeful, effort);
  if (first.fits) return assembled(first.placed, perPage);
  return assembled(inAny(divide(content, frame, perPage, SEVERAL, true), effort).placed, perPage);
}

/** Quickly, on more pages than may be needed. */
export function somePages(content: MapContent, frame: Frame, effort: number): Candidate {
  return onAnyNumber(divide(content, frame, 1, SEVERAL, false), effort);
}

/** `effort`: of all pages together. Upright pages hold one part; those that lie are books, unless that takes more of them. */
export function severalPages(content: MapContent, frame: Frame, effort: number): Candidate {
  const one = withParts(content, frame, 1, effort);
  if (frame.width < frame.height) return one;
  const two = withParts(content, frame, 2, effort);
  const more = two.plan.pages.length - one.plan.pages.length;
  return more < 0 || (more === 0 && isBetter(two, one)) ? two : one;
}
