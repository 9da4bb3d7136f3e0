/**
 * When the layout changes, what moved glides to its new place (flow.css); not while the hand moves it, and not when another game is opened.
 * When the whole is rearranged (tidied, or that undone), the view follows what the eye is at, and arrows come back once all stands.
 */
import { useLayoutEffect, useRef } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import type { MapLayout, Rect } from '../../src/map/layout.ts';
import { same } from '../../src/map/same.ts';
import { useGame } from '../store/game.ts';
import { useTidying } from '../store/tidying.ts';
import { useView } from '../store/view.ts';
import { carried, eyeAt, isAnyInView, isPinInView, isRearranged, shiftsOf } from './eye.ts';
import { fitAll, showFirstAgain } from './useInView.ts';
import { inView, shiftView } from './viewport.ts';

/** As long as the transition in the style sheet, and a frame more. */
const GLIDE = 160;
/** Until the arrows are back. */
const REARRANGED = 320;
/** More than these do not glide: so many layers moved at once would cost more frames than the eye gains by them. */
const MOST_GLIDING = 150;

/** What the eye was at last, and the view that was in. */
let kept: { readonly eye: NodeId; readonly view: Rect } | undefined;

/** The same as before for as long as nobody has moved the view, so that better results, and an undo, end where the first began. */
function eyeOn(layout: MapLayout, view: Rect): NodeId | undefined {
  const still = kept && same(kept.view, view) && layout.slots.has(kept.eye);
  return still ? kept?.eye : eyeAt(layout, useView.getState().nodes, view);
}

/** A game that is rearranged by no edit has just got the positions that it came without. */
function isStillOpening(): boolean {
  const { past, future } = useGame.getState().history;
  return past.length === 0 && future.length === 0 && !useTidying.getState().shown;
}

/** Keeps what is pinned and in view, else what the eye is at, where it is on the screen; when nothing would be in view, goes to where the map is. */
function keepEye(before: MapLayout, after: MapLayout): void {
  if (isStillOpening() && showFirstAgain(after)) return;
  const view = inView();
  if (isPinInView(before, useGame.getState().game.positions, view)) return;
  const eye = eyeOn(before, view);
  const old = eye === undefined ? undefined : before.slots.get(eye);
  const now = eye === undefined ? undefined : after.slots.get(eye);
  const by = old && now ? { x: now.x - old.x, y: now.y - old.y } : { x: 0, y: 0 };
  if (isAnyInView(after, { ...view, x: view.x + by.x, y: view.y + by.y })) shiftView(by);
  else fitAll();
  kept = eye === undefined ? undefined : { eye, view: inView() };
}

/** Carries a class for so many milliseconds, or until what is returned is called. */
function carry(element: HTMLElement, name: string, milliseconds: number): () => void {
  element.classList.add(name);
  const end = () => element.classList.remove(name);
  const timer = setTimeout(end, milliseconds);
  return () => {
    clearTimeout(timer);
    end();
  };
}

export function useSettling(layout: MapLayout, held: boolean, element: HTMLElement | undefined): void {
  const game = useGame((state) => state.provenance.id);
  const nodes = useGame((state) => state.game.nodes);
  const last = useRef({ layout, game, nodes, held });
  useLayoutEffect(() => {
    const before = last.current;
    last.current = { layout, game, nodes, held };
    if (!element || held || before.game !== game) return;
    if (before.layout === layout && !before.held) return;
    const shifts = shiftsOf(before.layout, layout);
    const rearranged = !before.held && before.nodes === nodes && isRearranged(shifts);
    const endGlide =
      carried(layout, shifts) > MOST_GLIDING ? undefined : carry(element, 'flow-settling', GLIDE);
    const endBlank = rearranged ? carry(element, 'flow-rearranged', REARRANGED) : undefined;
    // Not before the classes are there: it asks for sizes, and with that all would be where it is to glide to.
    if (rearranged) keepEye(before.layout, layout);
    return () => {
      endGlide?.();
      endBlank?.();
    };
  }, [layout, game, nodes, held, element]);
}
