/** The keyboard on the map: Tab goes from thing to thing, Enter selects, arrows move, Escape ends what the hand is doing. The rest are commands. */

import type { KeyboardEvent } from 'react';
import { useEffect, useMemo } from 'react';
import type { Edit } from '../../src/game/edits/edit.ts';
import type { Game, NodeId } from '../../src/game/model.ts';
import type { MapLayout } from '../../src/map/layout.ts';
import { useGame } from '../store/game.ts';
import { currentLayout } from '../store/layout.ts';
import { useView } from '../store/view.ts';
import { cancelDrag } from './drag/nodeDrag.ts';
import { cancelPaletteDrag } from './drag/palette.ts';
import { matRects } from './geometry.ts';
import { cancelLinking } from './links/linking.ts';
import { bringIntoView } from './viewport.ts';

const STEP = 8;
const LONG_STEP = 40;

const DIRECTIONS = new Map([
  ['ArrowUp', { x: 0, y: -1 }],
  ['ArrowDown', { x: 0, y: 1 }],
  ['ArrowLeft', { x: -1, y: 0 }],
  ['ArrowRight', { x: 1, y: 0 }],
]);

function nodeUnder(target: EventTarget): NodeId | undefined {
  const element = target instanceof Element ? target.closest('.react-flow__node') : null;
  return element instanceof HTMLElement ? element.dataset['id'] : undefined;
}

/** The focus that a click leaves behind means nothing. */
function isByKeyboard(target: EventTarget): boolean {
  return target instanceof Element && target.matches(':focus-visible');
}

/** On the mat a thing is shifted; in a tray, or on a wall, it changes places with its neighbour. */
export function nudge(
  game: Game,
  layout: MapLayout,
  ids: ReadonlySet<NodeId>,
  by: { x: number; y: number },
  step: number,
): readonly Edit[] {
  const edits: Edit[] = [];
  for (const id of ids) {
    const node = game.nodes.get(id);
    const slot = layout.slots.get(id);
    if (!node || !slot) continue;
    if (slot.parent === undefined) {
      edits.push({ type: 'move', positions: [[id, { x: slot.x + by.x * step, y: slot.y + by.y * step }]] });
      continue;
    }
    if (ids.has(slot.parent) || by.y === 0) continue;
    const before = neighbour(layout, slot.parent, id, by.y);
    if (before === undefined) continue;
    if (node.kind === 'fastener') edits.push({ type: 'fasten', ids: [id], on: node.on, before });
    else edits.push({ type: 'place', ids: [id], holder: slot.parent, before });
  }
  return edits;
}

/** What it would stand above after one step up or down; undefined at the end of its row. */
function neighbour(layout: MapLayout, parent: NodeId, id: NodeId, dy: number): NodeId | null | undefined {
  const kind = layout.slots.get(id)?.kind;
  const rank = (row: NodeId) => {
    const of = layout.slots.get(row)?.kind;
    return of === 'fastener' ? 0 : of === 'container' ? 2 : 1;
  };
  const mine = kind === 'fastener' ? 0 : kind === 'container' ? 2 : 1;
  const rows = (layout.rows.get(parent) ?? []).filter((row) => rank(row) === mine);
  const at = rows.indexOf(id);
  if (dy < 0) return at > 0 ? rows[at - 1] : undefined;
  return at < rows.length - 1 ? (rows[at + 2] ?? null) : undefined;
}

export interface Keys {
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onFocus: (event: { target: EventTarget }) => void;
}

export function useKeys(): Keys {
  useEffect(() => {
    const onEscape = (event: globalThis.KeyboardEvent) => {
      if (event.key !== 'Escape') return;
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

/** Selects it; a folded box is opened as well. */
function openUp(id: NodeId): void {
  const view = useView.getState();
  if (currentLayout().slots.get(id)?.folded) view.setOpened(id, true);
  view.show([id]);
}

function toggled(ids: ReadonlySet<NodeId>, id: NodeId): ReadonlySet<NodeId> {
  const next = new Set(ids);
  if (!next.delete(id)) next.add(id);
  return next;
}
