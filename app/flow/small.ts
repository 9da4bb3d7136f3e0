/**
 * Words for the map drawn small: names as large on the screen as ever, with what a tray holds in words where its rows would
 * be too small to read. The room for them is fixed, so the size that still fits is found here, once for each card.
 */
import { type Game, isHolder, type Kind, type NodeId } from '../../src/game/model.ts';
import { codeWidth } from '../../src/map/code.ts';
import type { MapLayout, Rect, Slot } from '../../src/map/layout.ts';
import { same } from '../../src/map/same.ts';
import { GIVES_WIDTH, NAME, OVERHANG, THING } from '../../src/map/sizes.ts';
import { type TextStyle, textWidth, wrap } from '../../src/type/text.ts';
import { holdsText } from '../../src/words/canvas.ts';

export interface SmallWords extends Rect {
  readonly name: string;
  /** Room is kept for a step number before the name. */
  readonly step: boolean;
  /** The largest size of type, in pixels of the map, at which name and count fit. */
  readonly size: number;
  /** Said below the name; empty for what holds nothing or still shows it. */
  readonly holds: string;
}

/** A name at 50 %. */
const LARGEST = 25;
const SMALLEST = 12.5;
const LINE = 1.18;
/** Width of a step number and the space after it, in parts of the size. */
const NUMBER = 1.75;
/** The count is set a little smaller than the name. */
export const HOLDS_SIZE = 0.92;
const PAD = 9;
/** How far a plate without its code reaches into the box. */
const SHORT_PLATE = 78;

/**
 * Undefined for what says nothing when it is small: what lies in a tray, and locks.
 * @param before what it said last: finding the size is the costly part, and is left out where nothing else has changed
 */
export function smallWords(
  game: Game,
  layout: MapLayout,
  id: NodeId,
  slot: Slot,
  before: SmallWords | undefined,
): SmallWords | undefined {
  const name = game.nodes.get(id)?.name ?? '';
  const room = roomFor(layout, id, slot);
  if (!room) return undefined;
  const held = slot.kind === 'place' ? directly(game, layout, id) : (slot.holds ?? []);
  const holds = held.length > 0 && !slot.folded ? holdsText(held) : '';
  const words = { ...room, name, step: slot.step, holds };
  if (before && same({ ...words, size: before.size }, before)) return before;
  return { ...words, size: fitting(words) };
}

function roomFor(layout: MapLayout, id: NodeId, slot: Slot): Rect | undefined {
  const inner = { x: PAD, y: PAD - 3, width: slot.width - 2 * PAD, height: slot.height - 2 * PAD + 6 };
  switch (slot.kind) {
    case 'place':
      return { ...inner, height: Math.min(inner.height, firstBox(layout, id) - PAD) };
    case 'container': {
      const walled =
        !slot.folded && (layout.rows.get(id) ?? []).some((row) => kindOf(layout, row) === 'fastener');
      const plate = walled ? SHORT_PLATE - OVERHANG : 0;
      const x = slot.wall === 'left' ? inner.x + plate : inner.x;
      return { ...inner, x, width: inner.width - plate };
    }
    case 'puzzle':
      return inner;
    case 'fastener':
      return undefined;
    default:
      return slot.parent === undefined
        ? { x: slot.text.x, y: 1, width: slot.width - slot.text.x - PAD, height: slot.height - 2 }
        : undefined;
  }
}

const kindOf = (layout: MapLayout, id: NodeId) => layout.slots.get(id)?.kind;

/** Boxes stand below the things in a place, and are still drawn. */
function firstBox(layout: MapLayout, place: NodeId): number {
  for (const row of layout.rows.get(place) ?? []) {
    const slot = layout.slots.get(row);
    if (slot?.kind === 'container') return slot.y;
  }
  return Number.POSITIVE_INFINITY;
}

function directly(game: Game, layout: MapLayout, place: NodeId): { kind: Kind; count: number }[] {
  const counts = new Map<Kind, number>();
  for (const row of layout.rows.get(place) ?? []) {
    const kind = game.nodes.get(row)?.kind;
    if (kind && kind !== 'container') counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return [...counts].map(([kind, count]) => ({ kind, count }));
}

function fitting({ name, holds, step, ...room }: Omit<SmallWords, 'size'>): number {
  for (let size = LARGEST; size > SMALLEST; size -= 0.5) {
    const width = room.width - (step ? NUMBER * size : 0);
    const lines = wrap(name, width, { size, weight: 'strong', family: 'words' });
    const small = size * HOLDS_SIZE;
    const count =
      holds === '' ? 0 : wrap(holds, width, { size: small, weight: 'regular', family: 'words' }).length;
    const whole = lines.join('').length >= name.replaceAll(/\s+/g, '').length && !breaksWord(name, lines);
    if (whole && (lines.length + count * HOLDS_SIZE) * size * LINE <= room.height) return size;
  }
  return SMALLEST;
}

/** Size of the words on a card at full size. */
const FULL = 13.5;
/** As high as the lowest card lets it be. */
const GROWN = 22;
/** Below the name of a tray are its rows, so that several lines have only each other to grow towards. */
const GROWN_IN_TRAY = 16;
const AFTER = 12;
/** Between the first line and the edge above it, and the last and the edge below. */
const EDGES = 4;
/** From line to line, in parts of the size of type. */
export const PITCH = 1.1;

/** How large its words may be set, in pixels of the map, so that they stay readable while the map grows smaller. */
export interface Growth {
  readonly name: number;
  readonly code: number;
}

/** What fits into the card beside all that stands there. */
export function growth(slot: Slot): Growth {
  const { code } = slot;
  const room = slot.width - slot.text.x - AFTER;
  const highest = highestType(slot);
  const sizeFor = (width: number) => Math.max(FULL, Math.min((FULL * room) / Math.max(1, width), highest));
  return {
    name: sizeFor(Math.max(0, ...slot.lines.map((line) => textWidth(line, styleOf(slot))))),
    code: sizeFor(code ? codeWidth(code) + (slot.kind === 'puzzle' ? GIVES_WIDTH : 0) : 0),
  };
}

function highestType(slot: Slot): number {
  const lines = lineCount(slot);
  if (isHolder(slot)) return lines > 1 || slot.folded ? GROWN_IN_TRAY : GROWN;
  return Math.min(GROWN, (slot.height - EDGES) / (lines * PITCH));
}

/** Name, answer and notes. */
export function lineCount({ lines, notes, code }: Slot): number {
  return lines.length + notes.length + (code?.lines.length ?? 0);
}

function styleOf(slot: Slot): TextStyle {
  return isHolder(slot) || slot.kind === 'puzzle' ? NAME : THING;
}

/** A word that is cut across two lines is worse than smaller type. */
function breaksWord(name: string, lines: readonly string[]): boolean {
  const words = new Set(name.split(/\s+/));
  return lines.some((line) => line.split(' ').some((word) => word !== '' && !words.has(word)));
}
