/** The open game stands in the address, so that a reload and each of two windows find theirs again. */

const KEY = 'game';

export function addressedGame(hash: string): string | undefined {
  return new URLSearchParams(hash.replace(/^#/, '')).get(KEY) ?? undefined;
}

/** No entry in the browser's history: 'back' leaves the page, as it did before. */
export function setAddress(id: string | undefined): void {
  if (addressedGame(location.hash) === id) return;
  const address = new URL(location.href);
  address.hash = id === undefined ? '' : new URLSearchParams([[KEY, id]]).toString();
  history.replaceState(history.state, '', address);
}
