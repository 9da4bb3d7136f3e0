/** The pointer on the map; a long press lifts a thing: what if nobody finds this? */

import type { PointerEvent } from 'react';
import { useMemo } from 'react';
import { useView } from '../store/view.ts';
import { nodeUnder, onPointerMove } from './pointing.ts';

const LONG = 500;
/** A hand that holds still trembles by this much, in screen pixels. */
const TREMBLE = 5;

export interface Press {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: () => void;
}

export function usePress(): Press {
  return useMemo(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let start = { x: 0, y: 0 };
    const end = () => {
      clearTimeout(timer);
      timer = undefined;
    };
    return {
      onPointerDown(event) {
        end();
        const id = nodeUnder(event.target);
        if (id === undefined || event.button !== 0) return;
        start = { x: event.clientX, y: event.clientY };
        timer = setTimeout(() => useView.getState().lift(id), LONG);
      },
      onPointerMove(event) {
        onPointerMove(event);
        if (timer !== undefined && Math.hypot(event.clientX - start.x, event.clientY - start.y) > TREMBLE)
          end();
      },
      onPointerUp: end,
    };
  }, []);
}
