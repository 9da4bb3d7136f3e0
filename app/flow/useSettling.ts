/** When the layout changes, what moved glides to its new place (flow.css); not while the hand moves it, and not when another game is opened. */
import { useLayoutEffect, useRef } from 'react';
import type { MapLayout } from '../../src/map/layout.ts';
import { useGame } from '../store/game.ts';

/** As long as the transition in the style sheet, and a frame more. */
const GLIDE = 160;

export function useSettling(layout: MapLayout, held: boolean, element: HTMLElement | undefined): void {
  const game = useGame((state) => state.provenance.id);
  const last = useRef({ layout, game, held });
  useLayoutEffect(() => {
    const before = last.current;
    last.current = { layout, game, held };
    if (!element || held || before.game !== game) return;
    if (before.layout === layout && !before.held) return;
    element.classList.add('flow-settling');
    const end = () => element.classList.remove('flow-settling');
    const timer = setTimeout(end, GLIDE);
    return () => {
      clearTimeout(timer);
      end();
    };
  }, [layout, game, held, element]);
}
