/** The facilitator map from what it says: sides, heights, lines, references, pages. */
import type { MapContent } from '../content.ts';
import type { Frame, MapPlan } from '../plan.ts';
import { book, wholePage } from './one-page.ts';
import { severalPages } from './pages.ts';
import { type Candidate, isBetter } from './parts.ts';
import { SMALLEST } from './sizes.ts';

/** Of the search: at first, so that there is something to see, and then. */
const QUICK = 0.02;
const FULL = 1;

function onOnePage(content: MapContent, frame: Frame, effort: number): Candidate | undefined {
  const whole = wholePage(content, frame, effort);
  if (frame.width < frame.height) return whole;
  const two = book(content, frame, effort, whole?.size ?? SMALLEST);
  return two && isBetter(two, whole) ? two : whole;
}

/** Better and better plans; the last is the best. Whoever stops iterating has cancelled it. */
export function* planMap(content: MapContent, frame: Frame): Generator<MapPlan, MapPlan> {
  const quick = onOnePage(content, frame, QUICK) ?? severalPages(content, frame, QUICK);
  yield quick.plan;
  const full = onOnePage(content, frame, FULL) ?? severalPages(content, frame, FULL);
  return full.plan;
}
