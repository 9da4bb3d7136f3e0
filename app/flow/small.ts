/**
 * Words for the map drawn small: names as large on the screen as ever, with what a tray holds in words where its rows would
 * be too small to read. The room for them is fixed, so the size that still fits is found here, once for each card.
 */
import type { Game, Kind, NodeId } from '../../src/game/model.ts';
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
export const SHORT_PLATE = 78;

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
/** A line keeps its height when its words grow: a single one has the edge of the card to grow towards, several have each other. */
const GROWN_ALONE = 18.5;
const GROWN_TOGETHER = 16;
const AFTER = 12;

/** How large the name or code of a card may be set without leaving its room, so that it stays readable while the map grows smaller. */
export function growth(slot: Slot): number {
  const { code } = slot;
  const widths = slot.lines.map((line) => textWidth(line, styleOf(slot)));
  if (code) widths.push(codeWidth(code) + (slot.kind === 'puzzle' ? GIVES_WIDTH : 0));
  const widest = Math.max(1, ...widths);
  const room = slot.width - slot.text.x - AFTER;
  const lines = slot.lines.length + slot.notes.length + (code?.lines.length ?? 0);
  return Math.max(FULL, Math.min((FULL * room) / widest, lines > 1 ? GROWN_TOGETHER : GROWN_ALONE));
}

function styleOf({ kind }: Slot): TextStyle {
  return kind === 'place' || kind === 'container' || kind === 'puzzle' ? NAME : THING;
}

/** A word that is cut across two lines is worse than smaller type. */
function breaksWord(name: string, lines: readonly string[]): boolean {
  const words = new Set(name.split(/\s+/));
  return lines.some((line) => line.split(' ').some((word) => word !== '' && !words.has(word)));
}
