/** The window onto the mat: where the pointer is in it, what is in view, going somewhere. */
import type { ReactFlowInstance } from 'reactflow';
import { create } from 'zustand';
import type { Rect } from '../../src/map/layout.ts';
import type { CardNode } from './card.ts';
import type { Spot } from './geometry.ts';

type Instance = ReactFlowInstance<CardNode>;

interface MountedCanvas {
  readonly instance: Instance | undefined;
  readonly element: HTMLElement | undefined;
}

/** The canvas that is on the page, if any. */
export const useMounted = create<MountedCanvas>()(() => ({ instance: undefined, element: undefined }));

export const MIN_ZOOM = 0.15;
export const MAX_ZOOM = 2;
const FIT_PADDING = 28;
/** From what stands over the mat to what is fitted. */
const FIT_APART = 12;

let pointer: Spot | undefined;

/** Called by the canvas with every move of the pointer over it, in the window's pixels. */
export function notePointer(at: Spot | undefined): void {
  pointer = at;
}

/** Where the pointer is, in the map's own pixels; undefined while it is not over the map. */
export function lastPointer(): Spot | undefined {
  const { instance } = useMounted.getState();
  return instance && pointer && instance.screenToFlowPosition(pointer);
}

/** What is in view, in the map's own pixels. */
export function inView(): Rect {
  const { instance, element } = useMounted.getState();
  const box = element?.getBoundingClientRect();
  if (!instance || !box) return { x: 0, y: 0, width: 0, height: 0 };
  const { x, y, zoom } = instance.getViewport();
  return { x: -x / zoom, y: -y / zoom, width: box.width / zoom, height: box.height / zoom };
}

/** 0 where the system asks for less movement. */
function movement(milliseconds: number): number {
  return matchMedia('(prefers-reduced-motion: reduce)').matches ? 0 : milliseconds;
}

export interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The part of the window in which things are shown, from its upper left corner: what stands over the mat leaves it free. */
export function freeOf(element: HTMLElement, box: DOMRect): Edges {
  let top = FIT_PADDING;
  let right = box.width - FIT_PADDING;
  let bottom = box.height - FIT_PADDING;
  const foot = element.querySelector('.flow-foot')?.getBoundingClientRect();
  if (foot) bottom = Math.min(bottom, foot.top - box.top - FIT_APART);
  const page = element.closest('.page');
  const rectOf = (name: string) => page?.querySelector(name)?.getBoundingClientRect();
  const panel = rectOf('.page-panel');
  const tab = rectOf('.panel-tab');
  if (panel && panel.width > 0 && panel.left < box.right - 1) {
    right = Math.min(right, panel.left - box.left - FIT_APART);
  }
  if (tab && tab.width > 0) top = Math.max(top, tab.bottom - box.top + FIT_APART);
  return { left: FIT_PADDING, top, right, bottom };
}

interface Fit {
  /** No smaller than this: then the upper left is in view, and the rest beyond the edges. */
  readonly least?: number;
  readonly duration?: number;
}

/** What is lower than the window stands in its upper part, and no farther down than this. */
const LOWEST_TOP = 90;

/** All of the rectangle in view, no larger than full size. */
export function fitTo(rect: Rect, { least = MIN_ZOOM, duration = 0 }: Fit = {}): void {
  const { instance, element } = useMounted.getState();
  const box = element?.getBoundingClientRect();
  if (!instance || !element || !box || box.width === 0) return;
  const free = freeOf(element, box);
  const width = free.right - free.left;
  const height = free.bottom - free.top;
  const zoom = Math.min(1, Math.max(least, Math.min(width / rect.width, height / rect.height)));
  const left = Math.max(free.left, free.left + (width - rect.width * zoom) / 2);
  const top = Math.min(LOWEST_TOP, Math.max(free.top, free.top + (height - rect.height * zoom) / 2));
  const view = { x: left - rect.x * zoom, y: top - rect.y * zoom, zoom };
  void instance.setViewport(view, { duration: movement(duration) });
}

/** Brings the rectangle into view by the shortest way, at the present size; does nothing where it is in view already. */
export function bringIntoView(rect: Rect): void {
  const { instance, element } = useMounted.getState();
  const box = element?.getBoundingClientRect();
  if (!instance || !element || !box || box.width === 0) return;
  const { x, y, zoom } = instance.getViewport();
  const free = freeOf(element, box);
  const dx = shortest(rect.x * zoom + x, rect.width * zoom, free.left, free.right);
  const dy = shortest(rect.y * zoom + y, rect.height * zoom, free.top, free.bottom);
  if (dx === 0 && dy === 0) return;
  void instance.setViewport({ x: x + dx, y: y + dy, zoom }, { duration: movement(160) });
}

/** Moves the view by so many pixels of the map, at the present size. */
export function shiftView({ x: dx, y: dy }: Spot): void {
  const { instance } = useMounted.getState();
  if (!instance || (dx === 0 && dy === 0)) return;
  const { x, y, zoom } = instance.getViewport();
  void instance.setViewport({ x: x - dx * zoom, y: y - dy * zoom, zoom });
}

/** How far to shift what starts at `start` so that it lies between the edges; its start when it is too large for them. */
function shortest(start: number, size: number, low: number, high: number): number {
  if (size > high - low || start < low) return low - start;
  return start + size > high ? high - (start + size) : 0;
}
