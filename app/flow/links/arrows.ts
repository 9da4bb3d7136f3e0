/** The arrows to be drawn, and how heavy each. */
import { isLeftOut } from '../../../src/engine/left-out.ts';
import { type Game, isHolder, type LinkId, type NodeId } from '../../../src/game/model.ts';
import type { MapLayout, Rect, Route, Slot } from '../../../src/map/layout.ts';
import { LINE, NAME, NOTE } from '../../../src/map/sizes.ts';
import { textWidth } from '../../../src/type/text.ts';
import { noteText } from '../../../src/words/canvas.ts';
import type { Look } from '../card.ts';
import type { Cards } from '../cards.ts';
import { matRects } from '../geometry.ts';
import type { Level } from '../levels.ts';
import type { Arrow, Weight } from './paint.ts';

export interface ArrowScene {
  readonly game: Game;
  readonly routes: ReadonlyMap<LinkId, Route>;
  readonly looks: ReadonlyMap<NodeId, Look>;
  readonly selectedNodes: ReadonlySet<NodeId>;
  readonly selectedLinks: ReadonlySet<LinkId>;
  readonly hovered: LinkId | undefined;
  /** Arrows that a finding which stops the game speaks of. */
  readonly stopping: ReadonlySet<LinkId>;
  /** What follows each thing on the chain that decides the end, while that is shown. */
  readonly chain?: ReadonlyMap<NodeId, NodeId> | undefined;
  /** Drawn elsewhere while one of their ends is dragged. */
  readonly without: ReadonlySet<NodeId> | undefined;
}

export function arrowsOf(scene: ArrowScene): readonly Arrow[] {
  const arrows: Arrow[] = [];
  for (const [id, route] of scene.routes) {
    const link = scene.game.links.get(id);
    if (!link || scene.without?.has(link.from) || scene.without?.has(link.to)) continue;
    const crossed = scene.stopping.has(id) && scene.looks.get(link.from)?.culprit === true;
    arrows.push({ route, weight: weightOf(scene, id, link.from, link.to), crossed });
  }
  return arrows;
}

function weightOf(scene: ArrowScene, id: LinkId, from: NodeId, to: NodeId): Weight {
  if (scene.selectedLinks.has(id)) return 'picked';
  if (scene.stopping.has(id)) return 'stops';
  if (scene.chain?.get(from) === to) return 'chain';
  if (scene.hovered === id || scene.selectedNodes.has(from) || scene.selectedNodes.has(to)) return 'dark';
  const out = isLeftOut(scene.game, from) || isLeftOut(scene.game, to);
  const { pale, moment } = scene.looks.get(from) ?? {};
  return out || pale || (moment && moment.state !== 'done') ? 'pale' : 'plain';
}

const PAD = 2;
const WALL = 4;

/**
 * Where arrows are not drawn, so that they pass under the words: names on trays and the lines under them; and when the map is drawn
 * small, the whole inside of a box, of which only the count is shown.
 */
export function clearings(layout: MapLayout, cards: Cards, level: Level): readonly Rect[] {
  const rects = matRects(layout);
  const words: Rect[] = [];
  for (const [id, slot] of layout.slots) {
    const rect = rects.get(id);
    if (!rect || !isHolder(slot)) continue;
    const small = cards.byId.get(id)?.data.small;
    if (level === 'full') words.push(headOf(rect, slot));
    else if (level === 'names' && slot.kind === 'container') words.push(inset(rect, WALL));
    else if (level === 'names' && small) {
      words.push({ x: rect.x + small.x, y: rect.y + small.y, width: small.width, height: small.height });
    }
  }
  return words;
}

function inset({ x, y, width, height }: Rect, by: number): Rect {
  return { x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by };
}

function headOf(rect: Rect, slot: Slot): Rect {
  const widths = [
    ...slot.lines.map((line) => textWidth(line, NAME)),
    ...slot.notes.map((note) => textWidth(noteText(note), NOTE)),
  ];
  return {
    x: rect.x + slot.text.x - PAD,
    y: rect.y + slot.text.y - PAD,
    width: Math.max(...widths) + 2 * PAD,
    height: widths.length * LINE + 2 * PAD,
  };
}
