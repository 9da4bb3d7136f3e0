/** Arrows that change while the hand moves: those of what is dragged, and the one being drawn. On a canvas of their own, above the rest. */
import { useMemo } from 'react';
import type { Game, NodeId } from '../../../src/game/model.ts';
import type { MapLayout, Rect } from '../../../src/map/layout.ts';
import { type Held, useDrag } from '../drag/held.ts';
import { matRects } from '../geometry.ts';
import { elbow } from './elbow.ts';
import { LinkLayer } from './LinkLayer.tsx';
import { type Linking, useLinking } from './linking.ts';
import type { Arrow } from './paint.ts';

const ABOVE_ALL = 3000;
const NO_TEXT: readonly Rect[] = [];

export function MovingLinks({ game, layout }: { game: Game; layout: MapLayout }) {
  const held = useDrag((state) => state.held);
  const linking = useLinking((state) => state.linking);
  const touched = useTouched(game, held?.moving);
  if (held && touched.length > 0) return <Layer arrows={dragged(touched, layout, held)} />;
  if (linking) return <Layer arrows={drawn(layout, linking)} />;
  return null;
}

function Layer({ arrows }: { arrows: readonly Arrow[] }) {
  return <LinkLayer arrows={arrows} text={NO_TEXT} zIndex={ABOVE_ALL} casings={false} margin={0} />;
}

interface Ends {
  readonly from: NodeId;
  readonly to: NodeId;
}

function useTouched(game: Game, moving: ReadonlySet<NodeId> | undefined): readonly Ends[] {
  return useMemo(() => {
    if (!moving) return [];
    return [...game.links.values()].filter(({ from, to }) => moving.has(from) || moving.has(to));
  }, [game, moving]);
}

function dragged(touched: readonly Ends[], layout: MapLayout, held: Held): readonly Arrow[] {
  const shift = shifts(layout, held);
  const rects = matRects(layout);
  const rectOf = (id: NodeId): Rect | undefined => {
    const rect = rects.get(id);
    const by = shift(id);
    return rect && { ...rect, x: rect.x + by.x, y: rect.y + by.y };
  };
  const arrows: Arrow[] = [];
  for (const { from, to } of touched) {
    const a = rectOf(from);
    const b = rectOf(to);
    if (a && b) arrows.push({ route: elbow(a, b), weight: 'dark' });
  }
  return arrows;
}

/** How far each thing has been carried: as far as the one in the hand that it is, or lies in. */
function shifts(layout: MapLayout, held: Held): (id: NodeId) => { x: number; y: number } {
  return (id) => {
    for (let at: NodeId | undefined = id; at !== undefined; at = layout.slots.get(at)?.parent) {
      const now = held.positions.get(at);
      const slot = layout.slots.get(at);
      if (now && slot) return { x: now.x - slot.x, y: now.y - slot.y };
    }
    return { x: 0, y: 0 };
  };
}

function drawn(layout: MapLayout, { from, to, at }: Linking): readonly Arrow[] {
  const rects = matRects(layout);
  const start = rects.get(from);
  const end = (to === undefined ? undefined : rects.get(to)) ?? { x: at.x, y: at.y, width: 0, height: 0 };
  return start ? [{ route: elbow(start, end), weight: 'picked' }] : [];
}
