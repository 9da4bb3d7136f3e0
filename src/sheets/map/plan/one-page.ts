/** The whole map on one page: in one piece, or as a book of two halves. */
import { lastOf } from '../../../last-of.ts';
import type { Columns } from '../../../spine/spine.ts';
import type { MapContent } from '../content.ts';
import type { Frame } from '../plan.ts';
import { columnsOf, mayFit } from './columns.ts';
import { halves } from './cuts.ts';
import { loadsOf } from './loads.ts';
import type { Part, Share } from './part.ts';
import { assembled, type Candidate, isBetter, partsOf } from './parts.ts';
import { geometryIn, type Placed, place } from './place.ts';
import { sharesOf } from './shares.ts';
import { FEW_SIZES, MIDDLE, SIZES } from './sizes.ts';
import { usesOf } from './uses.ts';

/** So many places to cut a book in two are tried. */
const CUTS_TRIED = 3;
/** With less effort than this, a picture soon is wanted more than a good one. */
const THOROUGH = 0.1;

function placeAll(parts: readonly Part[], columns: readonly Columns[], size: number): Placed[] | undefined {
  const placed: Placed[] = [];
  for (const [i, part] of parts.entries()) {
    const its = columns[i];
    const one = its && place(part, size, its);
    if (!one) return undefined;
    placed.push(one);
  }
  return placed;
}

/** Sizes at which nothing speaks against it yet. The larger the type, the higher everything: found by halving. */
function sizesFor(parts: readonly Part[], all: readonly number[], least: number): readonly number[] {
  const sizes = all.filter((size) => size >= least);
  const fits = (size: number) => parts.every((part) => mayFit(part, size));
  let [low, high] = [0, sizes.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (fits(sizes[middle] ?? 0)) high = middle;
    else low = middle + 1;
  }
  return sizes.slice(low);
}

/** The largest size at which all parts fit, no smaller than `least`, searched once more at that size; smaller where that saves breaking answers. */
function largest(
  parts: readonly Part[],
  perPage: 1 | 2,
  effort: number,
  least: number,
): Candidate | undefined {
  const isQuick = effort < THOROUGH;
  const sizes = sizesFor(parts, isQuick ? FEW_SIZES : SIZES, least);
  const first = sizes[0];
  if (first === undefined) return undefined;
  const columns = parts.map((part) => lastOf(columnsOf(part, first, { effort })));
  let best: Candidate | undefined;
  for (const size of sizes) {
    // In smaller type the bars may be wide enough for every answer.
    if (best?.broken === 0) break;
    const tries = [columns];
    if (!isQuick) {
      const again = (part: Part, i: number) => {
        const start = columns[i];
        return lastOf(columnsOf(part, size, { effort: effort / 4, ...(start && { start }) }));
      };
      tries.push(parts.map(again));
    }
    for (const tried of tries) {
      const placed = placeAll(parts, tried, size);
      const candidate = placed && assembled(placed, perPage);
      if (candidate && isBetter(candidate, best)) best = candidate;
    }
  }
  return best;
}

export function wholePage(content: MapContent, frame: Frame, effort: number): Candidate | undefined {
  return largest(partsOf(content, frame, [content], 1), 1, effort, 0);
}

/** `least`: no smaller type is of use. */
export function book(
  content: MapContent,
  frame: Frame,
  effort: number,
  least: number,
): Candidate | undefined {
  if (content.bars.length < 2) return undefined;
  const sample = partsOf(content, frame, [content, { bars: [], trays: [] }] satisfies Share[], 2)[0];
  if (!sample) return undefined;
  const uses = usesOf(content, content.trays);
  const { metrics } = geometryIn(sample, MIDDLE);
  const loads = loadsOf(content, content.trays, uses, metrics);
  const cutting = { loads, across: uses.across, room: sample.area.bottom - sample.area.top };
  let best: Candidate | undefined;
  for (const middle of halves(cutting, 0, content.bars.length).slice(0, effort < THOROUGH ? 1 : CUTS_TRIED)) {
    const shares = sharesOf(content, content.trays, uses, [0, middle]);
    const parts = partsOf(content, frame, shares, 2);
    const found = largest(parts, 2, effort, Math.max(least, best?.size ?? 0));
    if (found && isBetter(found, best)) best = found;
  }
  return best;
}
