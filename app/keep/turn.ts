/**
 * One window at a time edits a game. The browser's own locks see to it: they end with the window, whatever way it ends.
 * Browsers without them (or pages that may not use them) let every window edit.
 */
export interface Turn {
  /** False while another window has the game; `onMine` is called when it lets go. */
  readonly mine: boolean;
  /** Gives the turn to the next window, or stops waiting for it. */
  letGo(): void;
}

const FREE: Turn = { mine: true, letGo: () => undefined };

export async function takeTurn(id: string, onMine: () => void): Promise<Turn> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  if (!locks) return FREE;
  const name = `latchmap game ${id}`;
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  let mine = await new Promise<boolean>((decide, fail) => {
    locks
      .request(name, { ifAvailable: true }, (lock) => {
        decide(lock !== null);
        return lock ? held : undefined;
      })
      .catch(fail);
  });
  const waiting = new AbortController();
  if (!mine) {
    locks
      .request(name, { signal: waiting.signal }, () => {
        mine = true;
        onMine();
        return held;
      })
      .catch((error: unknown) => {
        if (!waiting.signal.aborted) throw error;
      });
  }
  return {
    get mine() {
      return mine;
    },
    letGo() {
      waiting.abort();
      letGo();
    },
  };
}
