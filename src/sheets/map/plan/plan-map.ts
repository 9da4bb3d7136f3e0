/** The facilitator map from what it says: sides, heights, lines, references, pages. */

import { search } from '../../../spine/search.ts';
import { type Columns, join } from '../../../spine/spine.ts';
import type { MapContent } from '../content.ts';
import type { Frame, MapPlan } from '../plan.ts';
import { measuring, spineOf } from './blocks.ts';
import { geometryOf } from './geometry.ts';
import type { Part } from './part.ts';
import { type Placed, place } from './place.ts';
import { neverDrawn } from './references.ts';

/** Sizes of the type, wanted first. */
const SIZES = [11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5] as const;
const SEARCHED_AT = 9;
const REACH = 0.24;
const CROSSINGS = 8;

function measured(part: Part, size: number) {
  return measuring(part, geometryOf(part.x, part.width, size, part.noteSides).metrics);
}

function* columnsOf(part: Part, effort: number, start?: Columns): Generator<Columns, Columns> {
  const measure = measured(part, SEARCHED_AT);
  const told = neverDrawn(part, measure(new Set()));
  const joined = join(spineOf(part, measure(told), told, SEARCHED_AT));
  const searching = search(joined, { effort, ...(start && { start }) });
  for (let step = searching.next(); ; step = searching.next()) {
    if (step.done) return step.value.columns;
    yield step.value.columns;
  }
}

function largest(part: Part, columns: Columns): Placed {
  let placed: Placed | undefined;
  for (const size of SIZES) {
    placed = place(part, size, columns, measured(part, size));
    if (placed.excess === 0) return placed;
  }
  return placed ?? place(part, 7.5, columns, measured(part, 7.5));
}

const planOf = (placed: Placed): MapPlan => ({
  pages: [{ parts: [placed.part] }],
  told: placed.tellings,
  left: [],
});

/** Better and better plans; the last is the best. Whoever stops iterating has cancelled it. */
export function* planMap(content: MapContent, frame: Frame): Generator<MapPlan, MapPlan> {
  const height = frame.height - 2 * frame.margin - frame.headFirst;
  const part: Part = {
    content,
    bars: content.bars,
    trays: content.trays,
    notes: content.notes,
    links: content.links,
    x: frame.margin,
    width: frame.width - 2 * frame.margin,
    top: frame.margin + frame.headFirst,
    bottom: frame.height - frame.margin,
    noteSides: [],
    reach: REACH * height,
    crossings: CROSSINGS,
    elsewhere: () => undefined,
  };
  const searching = columnsOf(part, 1);
  const first = searching.next().value;
  yield planOf(largest(part, first));
  let columns = first;
  for (let step = searching.next(); ; step = searching.next()) {
    columns = step.value;
    if (step.done) break;
  }
  return planOf(largest(part, columns));
}
