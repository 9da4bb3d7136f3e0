/** The open game stands in the address, so that a reload and each of two windows find theirs again. */

const KEY = 'game';

export function addressedGame(hash: string): string | undefined {
  return new URLSearchParams(hash.replace(/^#/, '')).get(KEY) ?? undefined;
}

const LAST = 'latchmap.last';

/** The game that was last on the page, for a page that is opened without an address. A convenience: where storage is refused there is none. */
export function lastShown(): string | undefined {
  try {
    return localStorage.getItem(LAST) ?? undefined;
  } catch {
    return undefined;
  }
}

function rememberShown(id: string): void {
  try {
    localStorage.setItem(LAST, id);
  } catch {
    return;
  }
}

/** No entry in the browser's history: 'back' leaves the page, as it did before. */
export function setAddress(id: string | undefined): void {
  if (id !== undefined) rememberShown(id);
  if (addressedGame(location.hash) === id) return;
  const address = new URL(location.href);
  address.hash = id === undefined ? '' : new URLSearchParams([[KEY, id]]).toString();
  history.replaceState(history.state, '', address);
}
