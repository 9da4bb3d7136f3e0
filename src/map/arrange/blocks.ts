/** What is arranged: what stands on the mat, as rigid blocks, and the links that join them at the heights of their rows. */
import { byCodePoint } from '../../game/compare.ts';
import type { Game, GameLink, NodeId } from '../../game/model.ts';
import type { Block, Held, Spine, Tie } from '../../spine/spine.ts';
import { absolute, type Caption, type MapLayout, shownAs } from '../layout.ts';
import { standsIn } from '../outline.ts';
import { CAPTION_HEIGHT, FIELD_GAP, FIELD_PAD, LINE } from '../sizes.ts';

export interface Part {
  readonly id: NodeId;
  /** Below the block's upper edge. */
  readonly y: number;
}

export interface MapBlock extends Block {
  /** None in an obstacle: what stands fast in the way of a column. */
  readonly parts: readonly Part[];
  readonly caption: Caption | undefined;
  /** An obstacle that stands across the column and not in it. */
  readonly across?: boolean;
  /** Where in the order of play it is first of use. */
  readonly firstUse: number;
}

/** In pixels; puzzles are the bars, in the order of play. */
export interface MapSpine extends Spine {
  readonly blocks: readonly MapBlock[];
}

const BETWEEN = 28;
/** From what stands across a column to what carries a caption: so far apart, the two share no field. */
const CAPTION_APART = FIELD_GAP + 8;
/** Between those that share a field. */
export const FIELD_ROW_GAP = 18;

/** The least distance from the end of one block to the start of the next below it in a column. */
function gapBetween(above: MapBlock, below: MapBlock): number {
  const captioned = (above.caption ?? below.caption) !== undefined;
  if ((above.across || below.across) && captioned) return CAPTION_APART;
  if (above.caption !== undefined && above.caption === below.caption) return FIELD_ROW_GAP;
  const fieldAbove = above.caption ? FIELD_PAD : 0;
  const fieldBelow = below.caption ? FIELD_PAD + CAPTION_HEIGHT : 0;
  return fieldAbove + BETWEEN + fieldBelow;
}

export function mapSpine(
  blocks: readonly MapBlock[],
  bars: number,
  ties: readonly Tie[],
  held?: ReadonlyMap<number, Held>,
): MapSpine {
  const gap = (above: number, below: number) => {
    const [a, b] = [blocks[above], blocks[below]];
    return a && b ? gapBetween(a, b) : 0;
  };
  return { blocks, bars, ties, gap, unit: LINE, ...(held && { held }) };
}

/** For each node, the first number in the order of play at which it, or anything that it leads to, is done. */
export function firstUses(game: Game, numbers: ReadonlyMap<NodeId, number>): (id: NodeId) => number {
  const uses = new Map<NodeId, number>();
  for (const { from, to } of game.links.values()) {
    const number = numbers.get(to);
    if (number !== undefined) uses.set(from, Math.min(uses.get(from) ?? number, number));
  }
  return (id) =>
    Math.min(numbers.get(id) ?? Number.POSITIVE_INFINITY, uses.get(id) ?? Number.POSITIVE_INFINITY);
}

/** Who finds a key looks for its lock at once: the two stand closer together than other things that belong together. */
const KEY_WEIGHT = 3;

function weightOf(game: Game, { from, to }: GameLink): number {
  const isKey = game.nodes.get(from)?.kind === 'key' && game.nodes.get(to)?.kind === 'fastener';
  return isKey ? KEY_WEIGHT : 1;
}

/** Height of the line of a link at a node, on the mat. */
function lineHeight(layout: MapLayout, id: NodeId): number {
  const rect = absolute(layout, id);
  const slot = layout.slots.get(id);
  const tray = slot?.kind === 'place' || slot?.kind === 'container';
  return tray ? rect.y + slot.text.y + 8 : rect.y + rect.height / 2;
}

/**
 * Blocks from a layout in which nothing stands close to anything else, so that each carries its own caption: puzzles, then the
 * rest of what moves, both by first use, then what stands fast. Ties with what is in none of the two are left away.
 */
export function blocksOf(
  game: Game,
  layout: MapLayout,
  numbers: ReadonlyMap<NodeId, number>,
  moves: ReadonlySet<NodeId>,
  fixed: ReadonlyMap<NodeId, Held> = new Map(),
): MapSpine {
  const firstUse = firstUses(game, numbers);
  const earliest = new Map<NodeId, number>();
  for (const id of game.nodes.keys()) {
    const root = standsIn(layout, id);
    if (root === undefined) continue;
    earliest.set(root, Math.min(earliest.get(root) ?? Number.POSITIVE_INFINITY, firstUse(id)));
  }
  const isPuzzle = (id: NodeId) => layout.slots.get(id)?.kind === 'puzzle';
  const order = (id: NodeId) =>
    (isPuzzle(id) ? numbers.get(id) : earliest.get(id)) ?? Number.POSITIVE_INFINITY;
  const byUse = (ids: Iterable<NodeId>) =>
    [...ids].sort((a, b) => {
      const [p, q] = [order(a), order(b)];
      return p === q ? byCodePoint(a, b) : p - q;
    });
  const moving = byUse(moves);
  const bars = moving.filter(isPuzzle);
  const ids = [...bars, ...moving.filter((id) => !isPuzzle(id)), ...byUse(fixed.keys())];
  const index = new Map(ids.map((id, i) => [id, i]));
  const blocks = ids.map((id): MapBlock => {
    const slot = layout.slots.get(id);
    return { parts: [{ id, y: 0 }], height: slot?.height ?? 0, caption: slot?.caption, firstUse: order(id) };
  });
  const ties: Tie[] = [];
  for (const link of game.links.values()) {
    const ends = [link.from, link.to].map((id) => {
      const root = standsIn(layout, id);
      const block = root === undefined ? undefined : index.get(root);
      const shown = shownAs(layout, id);
      if (root === undefined || block === undefined || shown === undefined) return undefined;
      return { block, y: lineHeight(layout, shown) - absolute(layout, root).y };
    });
    const [from, to] = ends;
    if (!from || !to || from.block === to.block) continue;
    ties.push({ from: from.block, fromY: from.y, to: to.block, toY: to.y, weight: weightOf(game, link) });
  }
  const held = new Map<number, Held>();
  for (const [id, at] of fixed) {
    const i = index.get(id);
    if (i !== undefined) held.set(i, at);
  }
  return mapSpine(blocks, bars.length, ties, held);
}
