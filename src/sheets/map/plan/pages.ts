/** The map on several pages: as few as may be at a size that reads well, cut where the fewest links are cut. */
import { lastOf } from '../../../last-of.ts';
import type { MapContent } from '../content.ts';
import type { Frame } from '../plan.ts';
import { columnsOf, hasTallTray, mayFit } from './columns.ts';
import { fewestParts, fills, halves, leastParts, partsInto } from './cuts.ts';
import { type Division, divide } from './divide.ts';
import type { Part } from './part.ts';
import { assembled, type Candidate, partsOf } from './parts.ts';
import { type Placed, place } from './place.ts';
import { sharesOf } from './shares.ts';
import { SEVERAL, SIZES, SMALLEST } from './sizes.ts';

/** With more parts than this, fewer are not tried one by one. */
const TRIED = 8;
/** So many parts at the most hold trays alone. */
const TRAYS_ALONE = 2;
/** Two parts that are estimated to be fuller than this are not put together. */
const WORTH_A_TRY = 1.3;
const LARGER: readonly number[] = [...SIZES].reverse().filter((size) => size > SEVERAL);

function fitsAt(part: Part, size: number, effort: number): Placed | undefined {
  if (!mayFit(part, size)) return undefined;
  return place(part, size, lastOf(columnsOf(part, size, { effort })));
}

/** All parts, if there is a way for the bars in so many, and no more than `most` with those that hold trays alone. */
function inParts(division: Division, bars: number, most: number, effort: number): Placed[] | undefined {
  const { content, frame, perPage, trays, uses, cutting, room, size } = division;
  const starts = partsInto(cutting, bars);
  const shares = starts && sharesOf(content, trays, uses, starts, room);
  if (!shares || shares.length > most) return undefined;
  const placed: Placed[] = [];
  for (const part of partsOf(content, frame, shares, perPage)) {
    const one = fitsAt(part, size, effort / most);
    if (!one) return undefined;
    placed.push(one);
  }
  return placed;
}

/** In so many parts, at the largest size at which that can be; undefined when it cannot be at the least. */
function inFew(divisions: readonly Division[], count: number, effort: number): Placed[] | undefined {
  for (const { content, frame, perPage, careful, cutting } of divisions) {
    let found: Placed[] | undefined;
    for (const size of [SEVERAL, ...LARGER]) {
      const division = divide(content, frame, perPage, size, careful);
      let placed: Placed[] | undefined;
      for (let bars = count; bars >= Math.max(1, count - TRAYS_ALONE) && !placed; bars--) {
        if (cutting.loads.bars.length >= bars) placed = inParts(division, bars, count, effort);
      }
      if (!placed) break;
      found = placed;
    }
    if (found) return found;
  }
  return undefined;
}

/**
 * First bars of parts that fit: what is too full is cut in two as long as it can be, then what fits together is put together.
 * Undefined when a tray turns out to be too high.
 */
function fittingStarts(division: Division, effort: number): readonly number[] | undefined {
  const { content, frame, perPage, trays, uses, room, cutting, size, careful } = division;
  const known = new Map<string, boolean>();
  const fits = (part: Part) => {
    const key = JSON.stringify([
      part.bars,
      part.trays.map((tray) => tray.key),
      part.area.top,
      part.area.width,
    ]);
    const does = known.get(key) ?? fitsAt(part, size, effort) !== undefined;
    known.set(key, does);
    return does;
  };
  const partsAt = (starts: readonly number[]) =>
    partsOf(content, frame, sharesOf(content, trays, uses, starts, room), perPage);
  let starts = fewestParts(cutting);
  for (;;) {
    const cuts: number[] = [];
    const parts = partsAt(starts);
    if (!careful && parts.some((part) => hasTallTray(part, size))) return undefined;
    for (const [i, part] of parts.entries()) {
      const from = starts[i];
      if (part.bars.length < 2 || from === undefined || fits(part)) continue;
      const middle = halves(cutting, from, starts[i + 1] ?? content.bars.length)[0];
      if (middle !== undefined) cuts.push(middle);
    }
    if (cuts.length === 0) break;
    starts = [...starts, ...cuts].sort((a, b) => a - b);
  }
  let parts = partsAt(starts).length;
  for (const start of starts.slice(1)) {
    const fewer = starts.filter((other) => other !== start);
    const at = fewer.findLastIndex((other) => other < start);
    if (fills(cutting, fewer[at] ?? 0, fewer[at + 1] ?? content.bars.length) > WORTH_A_TRY) continue;
    const merged = partsAt(fewer);
    if (merged.length >= parts || !merged.every(fits)) continue;
    starts = fewer;
    parts = merged.length;
  }
  return starts;
}

/** On as many pages as it takes. `fits`: it does so at some size; else a bar or a row is higher than a page. Undefined when a tray has to be cut once more. */
function inAny(division: Division, effort: number): { placed: Placed[]; fits: boolean } | undefined {
  const { content, frame, perPage, trays, uses, room } = division;
  const count = fewestParts(division.cutting).length;
  const starts = fittingStarts(division, effort / (4 * count));
  if (!starts) return undefined;
  const shares = sharesOf(content, trays, uses, starts, room);
  let fits = true;
  const placed = partsOf(content, frame, shares, perPage).map((part) => {
    for (let size = division.size; size >= SMALLEST; size -= 0.5) {
      const one = fitsAt(part, size, effort / count);
      if (one) return one;
    }
    fits = false;
    return place(part, SMALLEST, lastOf(columnsOf(part, SMALLEST, { effort })), true);
  });
  return { placed: placed.flatMap((one) => one ?? []), fits };
}

function onAnyNumber(divisions: readonly Division[], effort: number): Placed[] {
  let placed: Placed[] = [];
  for (const division of divisions) {
    const found = inAny(division, effort);
    if (found) placed = found.placed;
    if (found?.fits) break;
  }
  return placed;
}

const divisionsOf = (content: MapContent, frame: Frame, perPage: 1 | 2) =>
  [false, true].map((careful) => divide(content, frame, perPage, SEVERAL, careful));

function withParts(content: MapContent, frame: Frame, perPage: 1 | 2, effort: number): Candidate {
  const divisions = divisionsOf(content, frame, perPage);
  const least = Math.min(...divisions.map(({ cutting }) => leastParts(cutting)));
  const most = Math.min(TRIED, Math.max(...divisions.map(({ cutting }) => fewestParts(cutting).length)) + 2);
  for (let count = least; count <= most; count++) {
    const found = inFew(divisions, count, effort);
    if (found) return assembled(found, perPage);
  }
  return assembled(onAnyNumber(divisions, effort), perPage);
}

/** Quickly, on more pages than may be needed. */
export function somePages(content: MapContent, frame: Frame, effort: number): Candidate {
  return assembled(onAnyNumber(divisionsOf(content, frame, 1), effort), 1);
}

/** A book cuts more trays and tells more links than pages in one piece: it has to save so much of their number. */
const SAVED = 0.3;

/** `effort`: of all pages together. Upright pages hold one part; so do those that lie, unless books save many of them. */
export function severalPages(content: MapContent, frame: Frame, effort: number): Candidate {
  const one = withParts(content, frame, 1, effort);
  if (frame.width < frame.height) return one;
  const two = withParts(content, frame, 2, effort);
  return two.plan.pages.length <= (1 - SAVED) * one.plan.pages.length ? two : one;
}
