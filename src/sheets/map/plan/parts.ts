/** Parts from shares: which page and half each is given, which links and rescue lines it has, where everything else is. */
import type { NodeId } from '../../../game/model.ts';
import type { Side } from '../../../map/layout.ts';
import type { MapContent, PageLink, RescueNote, Tellings } from '../content.ts';
import type { Frame, MapPlan, PlannedPart } from '../plan.ts';
import { areaOf } from './areas.ts';
import { type Part, placesOf, type Share } from './part.ts';
import type { Placed } from './place.ts';
import { MIDDLE } from './sizes.ts';

interface Seat {
  readonly page: number;
  readonly half: Side | undefined;
}

/** `perPage`: 1, or 2 for a book; a part that is left over has its page to itself. */
function seatsOf(parts: number, perPage: 1 | 2): Seat[] {
  return Array.from({ length: parts }, (_, i) => {
    if (perPage === 1) return { page: i, half: undefined };
    const alone = i === parts - 1 && i % 2 === 0;
    return { page: Math.floor(i / 2), half: alone ? undefined : i % 2 === 0 ? 'left' : 'right' };
  });
}

export function partsOf(content: MapContent, frame: Frame, shares: readonly Share[], perPage: 1 | 2): Part[] {
  const seats = seatsOf(shares.length, perPage);
  const places = placesOf(shares);
  const links = shares.map((): PageLink[] => []);
  for (const link of content.links) {
    const [from, to] = [places.get(link.from), places.get(link.to)];
    if (from !== undefined) links[from]?.push(link);
    if (to !== undefined && to !== from) links[to]?.push(link);
  }
  const notes = shares.map((): RescueNote[] => []);
  for (const note of content.notes) {
    const at = note.steps.map((step) => places.get(step)).find((place) => place !== undefined);
    notes[at ?? 0]?.push(note);
  }
  return shares.map((share, i) => {
    const seat = seats[i] ?? { page: i, half: undefined };
    return {
      ...share,
      content,
      links: links[i] ?? [],
      notes: notes[i] ?? [],
      area: areaOf(frame, seat.page, seat.half, content.notes.length > 0),
      elsewhere: (id: NodeId) => {
        const other = places.get(id);
        if (other === undefined || other === i) return undefined;
        const { page, half } = seats[other] ?? seat;
        return page === seat.page && half ? { half } : { page: page + 1 };
      },
    };
  });
}

export interface Candidate {
  readonly plan: MapPlan;
  /** The smallest on any page. */
  readonly size: number;
  /** How many links are told. */
  readonly told: number;
  /** Lengths of all lines. */
  readonly length: number;
  /** Bars in which an answer is broken that should not be. */
  readonly broken: number;
}

export function assembled(placed: readonly Placed[], perPage: 1 | 2): Candidate {
  const pages: { parts: PlannedPart[] }[] = [];
  for (const [i, { part }] of placed.entries()) {
    if (i % perPage === 0) pages.push({ parts: [part] });
    else pages.at(-1)?.parts.push(part);
  }
  const told: Tellings = new Map(placed.flatMap(({ tellings }) => [...tellings]));
  return {
    plan: { pages, told, unplaced: placed.flatMap(({ unplaced }) => unplaced) },
    size: Math.min(...placed.map(({ part }) => part.metrics.size)),
    told: new Set(placed.flatMap((one) => [...one.told])).size,
    length: placed.reduce((sum, { length }) => sum + length, 0),
    broken: placed.reduce((sum, { broken }) => sum + broken, 0),
  };
}

/** What a told link is worth in points of the type: it costs a finger a search, and the other rows some room. */
const TOLD = 0.2;
/** The same for a map in two halves. */
const IN_HALVES = 1.5;

/** The same for an answer that is broken and should not be. */
const BROKEN = 0.5;
/** Larger type reads no better by much: each point above this counts for so much of one. */
const BEYOND = 0.4;

const readable = (size: number) => (size > MIDDLE ? MIDDLE + BEYOND * (size - MIDDLE) : size);
const sizeOf = (reads: number) => (reads > MIDDLE ? MIDDLE + (reads - MIDDLE) / BEYOND : reads);

const worth = ({ size, told, broken, plan }: Candidate) =>
  readable(size) - TOLD * told - BROKEN * broken - (plan.pages[0]?.parts.length === 2 ? IN_HALVES : 0);

/** Smaller type than this, and a book cannot be better. */
export const leastForBook = (best: Candidate | undefined) => (best ? sizeOf(worth(best) + IN_HALVES) : 0);

/** What reads better: larger type, fewer links told and answers broken, then shorter lines. */
export function isBetter(a: Candidate, b: Candidate | undefined): boolean {
  if (!b) return true;
  const more = worth(a) - worth(b);
  return more > 0 || (more === 0 && a.length < b.length);
}
