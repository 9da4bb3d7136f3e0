/** The arrows to be drawn, and how heavy each. */
import type { Game, LinkId, NodeId } from '../../../src/game/model.ts';
import type { MapLayout, Rect, Route } from '../../../src/map/layout.ts';
import { LINE, NAME, NOTE } from '../../../src/map/sizes.ts';
import { textWidth } from '../../../src/type/text.ts';
import { noteText } from '../../../src/words/canvas.ts';
import type { Look } from '../card.ts';
import { matRects } from '../geometry.ts';
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
  /** Drawn elsewhere while one of their ends is dragged. */
  readonly without: ReadonlySet<NodeId> | undefined;
}

export function arrowsOf(scene: ArrowScene): readonly Arrow[] {
  const arrows: Arrow[] = [];
  for (const [id, route] of scene.routes) {
    const link = scene.game.links.get(id);
    if (!link || scene.without?.has(link.from) || scene.without?.has(link.to)) continue;
    arrows.push({ route, weight: weightOf(scene, id, link.from, link.to) });
  }
  return arrows;
}

function weightOf(scene: ArrowScene, id: LinkId, from: NodeId, to: NodeId): Weight {
  if (scene.selectedLinks.has(id)) return 'picked';
  if (scene.stopping.has(id)) return 'stops';
  if (scene.hovered === id || scene.selectedNodes.has(from) || scene.selectedNodes.has(to)) return 'dark';
  const out = scene.game.nodes.get(from)?.leftOut === true || scene.game.nodes.get(to)?.leftOut === true;
  return out || scene.looks.get(from)?.pale === true ? 'pale' : 'plain';
}

const PAD = 2;

/** Where names and lines under them stand on trays: a line that crosses a tray passes under its words. */
export function trayWords(layout: MapLayout): readonly Rect[] {
  const rects = matRects(layout);
  const words: Rect[] = [];
  for (const [id, slot] of layout.slots) {
    const rect = rects.get(id);
    if (!rect || (slot.kind !== 'place' && slot.kind !== 'container')) continue;
    const widths = [
      ...slot.lines.map((line) => textWidth(line, NAME)),
      ...slot.notes.map((note) => textWidth(noteText(note), NOTE)),
    ];
    words.push({
      x: rect.x + slot.text.x - PAD,
      y: rect.y + slot.text.y - PAD,
      width: Math.max(...widths) + 2 * PAD,
      height: widths.length * LINE + 2 * PAD,
    });
  }
  return words;
}
