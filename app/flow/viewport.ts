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
/** Bars in the corners stand over the mat; what is fitted ends above them. */
const FIT_FOOT = 68;

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
  if (!instance || !box || box.width === 0) return;
  const width = box.width - 2 * FIT_PADDING;
  const height = box.height - FIT_PADDING - FIT_FOOT;
  const zoom = Math.min(1, Math.max(least, Math.min(width / rect.width, height / rect.height)));
  const left = Math.max(FIT_PADDING, (box.width - rect.width * zoom) / 2);
  const top = Math.min(LOWEST_TOP, Math.max(FIT_PADDING, FIT_PADDING + (height - rect.height * zoom) / 2));
  const view = { x: left - rect.x * zoom, y: top - rect.y * zoom, zoom };
  void instance.setViewport(view, { duration: movement(duration) });
}

/** Brings the rectangle into view by the shortest way, at the present size; does nothing where it is in view already. */
export function bringIntoView(rect: Rect): void {
  const { instance, element } = useMounted.getState();
  const box = element?.getBoundingClientRect();
  if (!instance || !box || box.width === 0) return;
  const { x, y, zoom } = instance.getViewport();
  const dx = shortest(rect.x * zoom + x, rect.width * zoom, FIT_PADDING, box.width - FIT_PADDING);
  const dy = shortest(rect.y * zoom + y, rect.height * zoom, FIT_PADDING, box.height - FIT_FOOT);
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
