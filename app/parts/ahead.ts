/**
 * Fetches, while the page has nothing else to do, what it may need later: a school's network goes, or the terminal that serves the page
 * is closed, and all of the program is there. One thing at a time, so that nothing that a person waits for has to queue behind it.
 */

declare global {
  interface Navigator {
    /** Where a browser tells of it (Network Information API, WICG). */
    readonly connection?: { readonly saveData?: boolean };
  }
}

/** False: it could not be had now. */
type Fetching = () => Promise<boolean>;

const wanted: Fetching[] = [];
let next = 0;
let started = false;
let underWay = false;

const atRest = () =>
  new Promise<void>((resume) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => resume(), { timeout: 3_000 });
    else setTimeout(resume, 200);
  });

/** Has it fetched when its turn comes. Also called by what is itself fetched ahead. */
export function ahead(fetching: Fetching): void {
  wanted.push(fetching);
}

/** Goes on where it stopped. It stops when something cannot be had; the browser tells when the connection is back, or a press that succeeds does. */
export async function goOnAhead(): Promise<void> {
  if (!started || underWay) return;
  underWay = true;
  for (;;) {
    const fetching = wanted[next];
    if (!fetching) break;
    await atRest();
    if (!(await fetching())) break;
    next += 1;
  }
  underWay = false;
}

/** Called once, when the first view stands. Nothing is fetched ahead for those who asked their browser to save data. */
export function startAhead(): void {
  if (navigator.connection?.saveData) return;
  started = true;
  const begin = () => void goOnAhead();
  addEventListener('online', begin);
  if (document.readyState === 'complete') begin();
  else addEventListener('load', begin, { once: true });
}
