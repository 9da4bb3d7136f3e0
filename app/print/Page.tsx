/** One page, as it is printed. It is drawn when it comes near the view: a large game has hundreds. */
import { memo, type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Drawing } from '../../src/sheets/drawing.ts';
import type { Paper } from '../../src/sheets/paper.ts';
import { elementOf, pageMarkup, paperName } from './page-svg.ts';

interface PageProps {
  readonly drawing: Drawing;
  readonly paper: Paper;
  readonly colour: boolean;
  readonly name: string;
}

/** How far outside the view a page is drawn: a view and a half. */
const NEAR = '150%';

/** Whether it has ever been near the view. */
function useSeen(element: RefObject<HTMLElement | null>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    if (seen || !element.current) return;
    const watch = new IntersectionObserver(
      (entries) => setSeen(entries.some(({ isIntersecting }) => isIntersecting)),
      { root: element.current.closest('.print-mat'), rootMargin: NEAR },
    );
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element, seen]);
  return seen;
}

export const Page = memo(function Page({ drawing, paper, colour, name }: PageProps) {
  const figure = useRef<HTMLElement>(null);
  const seen = useSeen(figure);
  const markup = useMemo(() => (seen ? pageMarkup(drawing, colour) : undefined), [seen, drawing, colour]);
  // The same page twice is the same markup, and stays as it is.
  useLayoutEffect(() => {
    if (markup !== undefined) figure.current?.replaceChildren(elementOf(markup));
  }, [markup]);
  return <figure ref={figure} className="print-page" aria-label={name} data-paper={paperName(paper)} />;
});
