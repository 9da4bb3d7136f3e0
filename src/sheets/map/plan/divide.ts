/** What a cut of the map into parts is judged by, at one size of type. */
import type { MapContent, Tellings, Tray } from '../content.ts';
import type { Frame } from '../plan.ts';
import { TRAY_GAP } from './blocks.ts';
import type { Cutting } from './cuts.ts';
import { loadsOf, toldAmongTrays } from './loads.ts';
import type { Part, Share } from './part.ts';
import { partsOf } from './parts.ts';
import { geometryIn } from './place.ts';
import type { Room } from './shares.ts';
import { allTold, cutTall } from './tall.ts';
import { type Uses, usesOf } from './uses.ts';

/** Of the height of a column: what a tray is cut to, when more will be told in it than is known. */
const HOPEFUL = 0.95;

export interface Division {
  readonly content: MapContent;
  readonly frame: Frame;
  /** Parts of a page. */
  readonly perPage: 1 | 2;
  readonly size: number;
  /** Trays have room for whatever may be told in them. */
  readonly careful: boolean;
  /** Those too high for a column are cut. */
  readonly trays: readonly Tray[];
  readonly uses: Uses;
  readonly cutting: Cutting;
  readonly room: Room;
}

/** Part of the least height and width that any will have. */
function sampleOf(content: MapContent, frame: Frame, perPage: 1 | 2): Part {
  const head = Math.max(frame.headFirst, frame.headOther);
  const shares = Array.from({ length: perPage }, (): Share => ({ bars: [], trays: [] }));
  const [sample] = partsOf(content, { ...frame, headFirst: head }, shares, perPage);
  if (!sample) throw new RangeError('a page has at least one part');
  return sample;
}

/** `careful`: with room for whatever may be told in a tray; else for what surely is. */
export function divide(
  content: MapContent,
  frame: Frame,
  perPage: 1 | 2,
  size: number,
  careful: boolean,
): Division {
  const sample = sampleOf(content, frame, perPage);
  const height = sample.area.bottom - sample.area.top;
  const { metrics } = geometryIn(sample, size);
  const told: Tellings = careful ? allTold(content) : toldAmongTrays(content, content.trays);
  const trays = cutTall(content, metrics, told, careful ? height : HOPEFUL * height);
  const uses = usesOf(content, trays);
  const heights = trays.map((tray) => content.measureTray(tray, metrics, told).height);
  return {
    content,
    frame,
    perPage,
    size,
    careful,
    trays,
    uses,
    cutting: { loads: loadsOf(content, trays, uses, metrics), across: uses.across, room: height },
    room: { height, gap: TRAY_GAP * size, heightOf: (tray: number) => heights[tray] ?? 0 },
  };
}
