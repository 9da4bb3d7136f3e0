/** The keyboard on the map: Tab goes from thing to thing, Enter selects, arrows move, Escape ends what the hand is doing. The rest are commands. */

import type { KeyboardEvent } from 'react';
import { useEffect, useMemo } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import { useGame } from '../store/game.ts';
import { currentLayout } from '../store/layout.ts';
import { useView } from '../store/view.ts';
import { cancelDrag } from './drag/nodeDrag.ts';
import { cancelPaletteDrag } from './drag/palette.ts';
import { matRects } from './geometry.ts';
import { cancelLinking } from './links/linking.ts';
import { nudge } from './nudge.ts';
import { nodeUnder, pointAtNothing } from './pointing.ts';
import { bringIntoView } from './viewport.ts';

const STEP = 8;
const LONG_STEP = 40;

const DIRECTIONS = new Map([
  ['ArrowUp', { x: 0, y: -1 }],
  ['ArrowDown', { x: 0, y: 1 }],
  ['ArrowLeft', { x: -1, y: 0 }],
  ['ArrowRight', { x: 1, y: 0 }],
]);

/** The focus that a click leaves behind means nothing. */
function isByKeyboard(target: EventTarget): boolean {
  return target instanceof Element && target.matches(':focus-visible');
}

export interface Keys {
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onFocus: (event: { target: EventTarget }) => void;
}

export function useKeys(): Keys {
  useEffect(() => {
    const onEscape = (event: globalThis.KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      pointAtNothing();
      if (cancelDrag() || cancelLinking() || cancelPaletteDrag()) {
        event.preventDefault();
        event.stopPropagation();
      }
    };
    addEventListener('keydown', onEscape, true);
    return () => removeEventListener('keydown', onEscape, true);
  }, []);

  return useMemo(
    () => ({
      onKeyDown(event) {
        if (event.altKey || event.ctrlKey || event.metaKey) return;
        const focused = nodeUnder(event.target);
        const view = useView.getState();
        const direction = DIRECTIONS.get(event.key);
        if ((event.key === 'Delete' || event.key === 'Backspace') && focused !== undefined) {
          // The command removes what is selected; with nothing selected, what the keyboard is at is meant.
          if (view.nodes.size + view.links.size === 0 && isByKeyboard(event.target)) view.select([focused]);
          return;
        }
        if ((event.key === 'Enter' || event.key === ' ') && focused !== undefined) {
          if (event.shiftKey) view.select(toggled(view.nodes, focused));
          else openUp(focused);
        } else if (direction && (focused !== undefined || view.nodes.size > 0)) {
          const meant = focused !== undefined && isByKeyboard(event.target) && !view.nodes.has(focused);
          const ids = meant ? new Set([focused]) : view.nodes;
          if (ids !== view.nodes) view.select(ids);
          const { game, apply } = useGame.getState();
          const edits = nudge(game, currentLayout(), ids, direction, event.shiftKey ? LONG_STEP : STEP);
          apply(edits, `nudge ${[...ids].sort().join(' ')}`);
        } else return;
        event.preventDefault();
        event.stopPropagation();
      },
      onFocus({ target }) {
        const id = nodeUnder(target);
        const rect = id === undefined ? undefined : matRects(currentLayout()).get(id);
        if (rect && isByKeyboard(target)) bringIntoView(rect);
      },
    }),
    [],
  );
}

/** Selects it; a folded box is opened as well. What is selected already gets a name. */
function openUp(id: NodeId): void {
  const view = useView.getState();
  if (view.nodes.size === 1 && view.nodes.has(id) && !useGame.getState().readOnly) {
    view.askName(id);
    return;
  }
  if (currentLayout().slots.get(id)?.folded) view.setOpened(id, true);
  view.show([id]);
}

function toggled(ids: ReadonlySet<NodeId>, id: NodeId): ReadonlySet<NodeId> {
  const next = new Set(ids);
  if (!next.delete(id)) next.add(id);
  return next;
}
