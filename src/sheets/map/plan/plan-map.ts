/** The facilitator map from what it says: sides, heights, lines, references, pages. */
import type { MapContent } from '../content.ts';
import type { Frame, MapPlan } from '../plan.ts';
import { book, wholePage } from './one-page.ts';
import { severalPages, somePages } from './pages.ts';
import { type Candidate, isBetter, leastForBook } from './parts.ts';

/** Of the search: at first, so that there is something to see, and then. */
const QUICK = 0.02;
const FULL = 1;

/** Better and better plans; the last is the best. Whoever stops iterating has cancelled it. */
export function* planMap(content: MapContent, frame: Frame): Generator<MapPlan, MapPlan> {
  const lying = frame.width > frame.height;
  let best: Candidate | undefined;
  let several: Candidate | undefined;
  for (const effort of [QUICK, FULL]) {
    const whole = wholePage(content, frame, effort);
    if (whole && isBetter(whole, best)) {
      best = whole;
      yield best.plan;
    }
    const two = lying ? book(content, frame, effort, leastForBook(best)) : undefined;
    if (two && isBetter(two, best)) {
      best = two;
      yield best.plan;
    }
    if (best) continue;
    several = effort === QUICK ? somePages(content, frame, effort) : severalPages(content, frame, effort);
    yield several.plan;
  }
  const last = best ?? several ?? severalPages(content, frame, FULL);
  return last.plan;
}
