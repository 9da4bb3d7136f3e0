/** One page, as it is printed. */
import { memo, useLayoutEffect, useMemo, useRef } from 'react';
import type { Drawing } from '../../src/sheets/drawing.ts';
import { svgOf } from '../../src/sheets/svg.ts';
import { naturalWidth } from './natural-width.ts';

interface PageProps {
  readonly drawing: Drawing;
  readonly colour: boolean;
  readonly name: string;
}

function parsed(svg: string): Element {
  return document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
}

export const Page = memo(function Page({ drawing, colour, name }: PageProps) {
  const figure = useRef<HTMLElement>(null);
  const svg = useMemo(() => svgOf(drawing, { colour, naturalWidth }), [drawing, colour]);
  // The same page twice is the same text, and stays as it is.
  useLayoutEffect(() => figure.current?.replaceChildren(parsed(svg)), [svg]);
  return <figure ref={figure} className="print-page" aria-label={name} data-paper={pageName(drawing)} />;
});

/** Names the rule of the style sheet that has the size of this paper. */
function pageName({ width, height }: Drawing): string {
  const paper = Math.min(width, height) > 600 ? 'letter' : 'a4';
  return `${paper}-${width > height ? 'landscape' : 'portrait'}`;
}
