/**
 * When the window onto the mat becomes smaller or larger (the play-through opens, the legend of the time, the browser's window), what was
 * in its middle stays there; where all of the map was in view it is fitted anew if it no longer is. Back at the old size, the old view
 * is back too, unless it was moved meanwhile.
 */
import { useEffect } from 'react';
import type { Viewport } from 'reactflow';
import type { Rect } from '../../src/map/layout.ts';
import { same } from '../../src/map/same.ts';
import { currentLayout } from '../store/layout.ts';
import { wholeOf } from './useInView.ts';
import { type Edges, fitTo, freeOf, useMounted } from './viewport.ts';

/** From before the first of several changes that follow one another without the view being moved. */
interface Kept {
  readonly room: Room;
  readonly view: Viewport;
  /** What it was changed to. */
  readonly now: Viewport;
}

interface Room {
  readonly free: Edges;
  readonly width: number;
  readonly height: number;
}

/** @param least no smaller than this is anything fitted: below it words go */
export function useKeepInView(element: HTMLElement | undefined, least: number): void {
  useEffect(() => {
    if (!element) return;
    let last: Room | undefined;
    let kept: Kept | undefined;
    const watch = new ResizeObserver(() => {
      const { instance } = useMounted.getState();
      const room = roomOf(element);
      const before = last;
      last = room;
      if (!instance || !before || room.width === 0 || same(before, room)) return;
      const view = instance.getViewport();
      if (kept && !same(kept.now, view)) kept = undefined;
      if (kept && same(kept.room, room)) {
        void instance.setViewport(kept.view);
        kept = undefined;
        return;
      }
      const all = wholeOf(currentLayout());
      if (!all) return;
      const resized = room.width !== before.width || room.height !== before.height;
      // The panel over the map, and what stands along the edge beside it, are no smaller mat.
      if (!resized && room.free.right !== before.free.right) return;
      if (isWithin(all, view, before.free)) {
        if (!isWithin(all, view, room.free)) fitTo(all, { least: Math.min(view.zoom, least) });
      } else if (resized) {
        const x = view.x + middle(room.free).x - middle(before.free).x;
        const y = view.y + middle(room.free).y - middle(before.free).y;
        void instance.setViewport({ ...view, x, y });
      }
      kept = { room: kept?.room ?? before, view: kept?.view ?? view, now: instance.getViewport() };
    });
    watch.observe(element);
    const foot = element.querySelector('.flow-foot');
    if (foot) watch.observe(foot);
    return () => watch.disconnect();
  }, [element, least]);
}

function roomOf(element: HTMLElement): Room {
  const box = element.getBoundingClientRect();
  return { free: freeOf(element, box), width: box.width, height: box.height };
}

function isWithin(rect: Rect, { x, y, zoom }: Viewport, free: Edges): boolean {
  return (
    rect.x * zoom + x >= free.left - 1 &&
    rect.y * zoom + y >= free.top - 1 &&
    (rect.x + rect.width) * zoom + x <= free.right + 1 &&
    (rect.y + rect.height) * zoom + y <= free.bottom + 1
  );
}

function middle({ left, right, top, bottom }: Edges): { x: number; y: number } {
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}
