/** What comes into view by itself: a game that is opened, and what another part of the page asks to be shown. */
import { useEffect, useRef } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import type { MapLayout, Rect } from '../../src/map/layout.ts';
import { same } from '../../src/map/same.ts';
import { useGame } from '../store/game.ts';
import { currentLayout } from '../store/layout.ts';
import { useView } from '../store/view.ts';
import { bounds, matRects } from './geometry.ts';
import { NAMES_READABLE } from './levels.ts';
import { bringIntoView, fitTo, inView, useMounted } from './viewport.ts';

/** Everything on the mat. */
export function wholeOf(layout: MapLayout): Rect | undefined {
  return bounds([...matRects(layout).values(), ...layout.fields]);
}

/** All of the game in view. */
export function fitAll(): void {
  const all = wholeOf(currentLayout());
  if (all) fitTo(all, { duration: 140 });
}

/** What was in view when the game had been opened. */
let first: Rect | undefined;

/** False for an empty map. */
function showFirst(layout: MapLayout): boolean {
  const all = wholeOf(layout);
  if (!all) return false;
  fitTo(all, { least: NAMES_READABLE });
  first = inView();
  return true;
}

/** Shows the map as when it was opened, where nobody has moved the view since. */
export function showFirstAgain(layout: MapLayout): boolean {
  return same(first, inView()) && showFirst(layout);
}

/** A game that is opened is shown whole, but no smaller than its names can be read; then from its upper left. */
export function useFirstView(layout: MapLayout): void {
  const id = useGame((state) => state.provenance.id);
  const shown = useRef<string>(undefined);
  const instance = useMounted((state) => state.instance);
  const element = useMounted((state) => state.element);
  useEffect(() => {
    if (!instance || !element || shown.current === id) return;
    shown.current = id;
    if (showFirst(layout)) return;
    // An empty game is shown at full size; that view stays, so that the first thing lies where it is let go.
    void instance.setViewport({ x: 0, y: 0, zoom: 1 });
  }, [instance, element, id, layout]);
}

/** Answers requests to bring the selection into view. */
export function useShown(): void {
  const shown = useView((state) => state.shown);
  useEffect(() => {
    if (shown === 0) return;
    const { nodes, links } = useView.getState();
    const { game } = useGame.getState();
    const ends = [...links].flatMap((id) => {
      const link = game.links.get(id);
      return link ? [link.from, link.to] : [];
    });
    showThings([...nodes, ...ends]);
  }, [shown]);
}

/** Pans until they are in view, no farther than needed. */
export function showThings(ids: readonly NodeId[]): void {
  const rects = matRects(currentLayout());
  const wanted = bounds(ids.flatMap((id) => rects.get(id) ?? []));
  if (wanted) bringIntoView(wanted);
}
