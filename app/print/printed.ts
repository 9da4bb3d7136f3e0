/**
 * What the printer gets: the pages alone, outside of the program, made when the browser begins to print (by the button, its keys or
 * its own menu) and taken away when it has.
 */
import type { Drawing } from '../../src/sheets/drawing.ts';
import { elementOf, pageMarkup } from './page-svg.ts';

/** Copies of the pages of a preview. One that has not been near the view is drawn now. */
export function copiesOf(
  pages: ArrayLike<Element>,
  drawings: readonly Drawing[],
  colour: boolean,
): readonly Node[] {
  return Array.from(pages, (page, i) => {
    const copy = page.cloneNode(true);
    const drawing = drawings[i];
    if (drawing && !copy.hasChildNodes()) copy.appendChild(elementOf(pageMarkup(drawing, colour)));
    return copy;
  });
}

/** Listens for printing. `pages` gives what is printed. Returns what undoes it. */
export function printPages(pages: () => readonly Node[]): () => void {
  let run: HTMLElement | undefined;
  const begin = () => {
    end();
    const printed = pages();
    if (printed.length === 0) return;
    run = document.createElement('div');
    run.className = 'print-run';
    run.append(...printed);
    document.body.append(run);
  };
  const end = () => {
    run?.remove();
    run = undefined;
  };
  window.addEventListener('beforeprint', begin);
  window.addEventListener('afterprint', end);
  return () => {
    window.removeEventListener('beforeprint', begin);
    window.removeEventListener('afterprint', end);
    end();
  };
}
