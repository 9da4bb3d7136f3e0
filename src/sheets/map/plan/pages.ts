/** The map on several pages: as few as may be at a size that reads well, cut where the fewest links are cut. */
import type { MapContent, Metrics, Tray } from '../content.ts';
import type { Frame } from '../plan.ts';
import { TRAY_GAP } from './blocks.ts';
import { columnsOf, lastOf } from './columns.ts';
import { type Cutting, fewestParts, halves } from './cuts.ts';
import { loadsOf } from './loads.ts';
import type { Part, Share } from './part.ts';
import { assembled, type Candidate, partsOf } from './parts.ts';
import { geometryIn, type Placed, place } from './place.ts';
import { type Room, sharesOf } from './shares.ts';
import { SEVERAL, SIZES, SMALLEST } from './sizes.ts';
import { allTold, cutTall } from './tall.ts';
import { type Uses, usesOf } from './uses.ts';

interface Division {
  readonly content: MapContent;
  readonly trays: readonly Tray[];
  readonly uses: Uses;
  readonly cutting: Cutting;
  readonly room: Room;
  readonly starts: readonly number[];
}

/** Part of the least height and width that any will have. */
function sampleOf(content: MapContent, frame: Frame, perPage: 1 | 2): Part | undefined {
  const head = Math.max(frame.headFirst, frame.headOther);
  const shares = Array.from({ length: perPage }, (): Share => ({ bars: [], trays: [] }));
  return partsOf(content, { ...frame, headFirst: head }, shares, perPage)[0];
}

function divide(content: MapContent, sample: Part, metrics: Metrics): Division {
  const height = sample.area.bottom - sample.area.top;
  const told = allTold(content);
  const trays = cutTall(content, metrics, told, height);
  const uses = usesOf(content, trays);
  const heights = trays.map((tray) => content.measureTray(tray, metrics, told).height);
  const cutting = { loads: loadsOf(content, trays, uses, metrics), across: uses.across, room: height };
  const room = { height, gap: TRAY_GAP * metrics.size, heightOf: (tray: number) => heights[tray] ?? 0 };
  return { content, trays, uses, cutting, room, starts: fewestParts(cutting) };
}

/** A part with so much work in it, however many there are. */
const effortFor = (parts: number, effort: number) => effort / Math.max(1, parts);

/** At this size, or smaller where it must be; at the smallest anyway. */
function placeOne(part: Part, size: number, effort: number): Placed {
  for (const smaller of SIZES) {
    if (smaller > size) continue;
    const columns = lastOf(columnsOf(part, smaller, { effort }));
    const placed = place(part, smaller, columns, smaller === SMALLEST);
    if (placed) return placed;
  }
  throw new RangeError('a part is placed at the smallest size, whatever its height');
}

/** Cuts parts that turn out to be too full in two, until all fit or cannot be cut. */
function fittingShares(
  division: Division,
  frame: Frame,
  perPage: 1 | 2,
  size: number,
  effort: number,
): Share[] {
  const { content, trays, uses, room, cutting } = division;
  let starts = division.starts;
  const known = new Map<string, boolean>();
  for (;;) {
    const shares = sharesOf(content, trays, uses, starts, room);
    const parts = partsOf(content, frame, shares, perPage);
    const cuts: number[] = [];
    for (const [i, part] of parts.entries()) {
      if (part.bars.length < 2) continue;
      const key = JSON.stringify([part.bars, part.trays.map((tray) => tray.key), part.area.width]);
      let fits = known.get(key);
      if (fits === undefined) {
        fits = place(part, size, lastOf(columnsOf(part, size, { effort })), false) !== undefined;
        known.set(key, fits);
      }
      const from = starts[i];
      if (fits || from === undefined) continue;
      const middle = halves(cutting, from, starts[i + 1] ?? content.bars.length)[0];
      if (middle !== undefined) cuts.push(middle);
    }
    if (cuts.length === 0) return shares;
    starts = [...starts, ...cuts].sort((a, b) => a - b);
  }
}

/** `effort`: of all pages together. */
export function severalPages(content: MapContent, frame: Frame, effort: number): Candidate {
  const perPage = frame.width > frame.height ? 2 : 1;
  const sample = sampleOf(content, frame, perPage);
  if (!sample) throw new RangeError('a page has at least one part');
  const divisionAt = (size: number) => divide(content, sample, geometryIn(sample, size).metrics);
  let size: number = SEVERAL;
  let division = divisionAt(size);
  for (const larger of [...SIZES].reverse().filter((one) => one > SEVERAL)) {
    const other = divisionAt(larger);
    if (other.starts.length > division.starts.length) break;
    [size, division] = [larger, other];
  }
  const each = effortFor(division.starts.length, effort);
  const shares = fittingShares(division, frame, perPage, size, each / 4);
  const parts = partsOf(content, frame, shares, perPage);
  return assembled(
    parts.map((part) => placeOne(part, size, each)),
    perPage,
  );
}
