/**
 * What the printer gets: copies of the pages that the preview shows, outside of the program, made when the browser begins to print
 * (by the button, its keys or its own menu) and taken away when it has.
 */

/** Listens for printing. `pages` is what holds them. Returns what undoes it. */
export function printPagesOf(pages: () => Iterable<Element>): () => void {
  let run: HTMLElement | undefined;
  const begin = () => {
    end();
    const copies = Array.from(pages(), (page) => page.cloneNode(true));
    if (copies.length === 0) return;
    run = document.createElement('div');
    run.className = 'print-run';
    run.append(...copies);
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
