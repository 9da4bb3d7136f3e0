/**
 * All arrows on one canvas between the trays and the things: a canvas is drawn in one go, where as many lines in SVG
 * are rastered anew with every move. It covers a little more than what is in view and is only redrawn when the view leaves it.
 */
import { useEffect, useMemo, useRef } from 'react';
import { useStoreApi, ViewportPortal } from 'reactflow';
import type { Rect } from '../../../src/map/layout.ts';
import { type Arrow, type Inks, inksOf, paint } from './paint.ts';

interface Drawn {
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly bottom: number;
  readonly zoom: number;
  readonly arrows: readonly Arrow[];
  readonly text: readonly Rect[];
}

interface Props {
  readonly arrows: readonly Arrow[];
  /** Words on the mat that a line passes under. */
  readonly text: readonly Rect[];
  readonly zIndex: number;
  readonly casings: boolean;
  /** Screen pixels beyond each edge of what is in view: what can be seen before it is drawn anew. */
  readonly margin: number;
}

export function LinkLayer(props: Props) {
  return (
    <ViewportPortal>
      <Layer {...props} />
    </ViewportPortal>
  );
}

/** The portal has no place in the page at first; what is in it is drawn once it has one. */
function Layer({ arrows, text, zIndex, casings, margin }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const store = useStoreApi();
  const layer = useMemo(() => createLayer(casings, margin), [casings, margin]);

  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    const view = () => store.getState();
    layer.show(element, view(), arrows, text);
    return store.subscribe((state) => layer.look(element, state));
  }, [layer, store, arrows, text]);

  useEffect(() => () => layer.stop(), [layer]);

  return <canvas ref={canvas} className="flow-links" style={{ zIndex }} />;
}

interface View {
  readonly transform: readonly [number, number, number];
  readonly width: number;
  readonly height: number;
}

function createLayer(casings: boolean, beyond: number) {
  // Asking for a style in every frame would have the whole page's style worked out in every frame.
  let inks: Inks | undefined;
  let drawn: Drawn | undefined;
  let wanted: View | undefined;
  let arrows: readonly Arrow[] = [];
  let text: readonly Rect[] = [];
  let frame = 0;

  const draw = (element: HTMLCanvasElement) => {
    frame = 0;
    if (!wanted) return;
    const [tx, ty, zoom] = wanted.transform;
    const left = -tx / zoom;
    const top = -ty / zoom;
    const right = left + wanted.width / zoom;
    const bottom = top + wanted.height / zoom;
    if (
      drawn &&
      covers(drawn, left, top, right, bottom, zoom) &&
      drawn.arrows === arrows &&
      drawn.text === text
    )
      return;
    const margin = beyond / zoom;
    const ratio = devicePixelRatio;
    const width = Math.ceil(wanted.width + 2 * beyond);
    const height = Math.ceil(wanted.height + 2 * beyond);
    if (element.width !== Math.round(width * ratio)) element.width = Math.round(width * ratio);
    if (element.height !== Math.round(height * ratio)) element.height = Math.round(height * ratio);
    // On whole pixels of the screen, or every line is blurred.
    const x = (Math.round((left - margin) * zoom * ratio) / ratio + fraction(tx, ratio)) / zoom;
    const y = (Math.round((top - margin) * zoom * ratio) / ratio + fraction(ty, ratio)) / zoom;
    element.style.width = `${width}px`;
    element.style.height = `${height}px`;
    element.style.transform = `translate(${x}px, ${y}px) scale(${1 / zoom})`;
    const context = element.getContext('2d');
    if (!context) return;
    inks ??= inksOf(element);
    paint(context, { x, y, scale: zoom * ratio }, arrows, inks, text, casings);
    drawn = { x, y, right: x + width / zoom, bottom: y + height / zoom, zoom, arrows, text };
  };

  const ask = (element: HTMLCanvasElement) => {
    if (frame === 0) frame = requestAnimationFrame(() => draw(element));
  };

  return {
    show(element: HTMLCanvasElement, view: View, nextArrows: readonly Arrow[], nextText: readonly Rect[]) {
      arrows = nextArrows;
      text = nextText;
      wanted = view;
      draw(element);
    },
    look(element: HTMLCanvasElement, view: View) {
      if (
        wanted?.transform === view.transform &&
        wanted.width === view.width &&
        wanted.height === view.height
      )
        return;
      wanted = view;
      ask(element);
    },
    stop() {
      if (frame !== 0) cancelAnimationFrame(frame);
      frame = 0;
    },
  };
}

/** What the translation of the view adds to whole pixels. */
function fraction(value: number, ratio: number): number {
  return Math.round(value * ratio) / ratio - value;
}

function covers(
  drawn: Drawn,
  left: number,
  top: number,
  right: number,
  bottom: number,
  zoom: number,
): boolean {
  return (
    drawn.zoom === zoom && drawn.x <= left && drawn.y <= top && drawn.right >= right && drawn.bottom >= bottom
  );
}
