/**
 * One window at a time edits a game. The browser's own locks see to it: they end with the window, whatever way it ends.
 * Browsers without them, and pages that may not use them, let every window edit.
 */
export interface Turn {
  /** False while another window has the game; `onMine` is called when it lets go. */
  readonly mine: boolean;
  /** Gives the turn to the next window, or stops waiting for it. */
  letGo(): void;
}

const FREE: Turn = { mine: true, letGo: () => undefined };

/**
 * `onMine` is called when the turn comes later. A page that is being reloaded holds its turn a little longer than it lives:
 * for so many milliseconds of `patience` the answer waits for it.
 */
export async function takeTurn(id: string, onMine: () => void, patience = 0): Promise<Turn> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  if (!locks) return FREE;
  const name = `latchmap game ${id}`;
  const waiting = new AbortController();
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  let mine = false;
  let told = false;

  await new Promise<void>((decide) => {
    const refused = () => {
      if (told) return;
      mine = true;
      decide();
    };
    const granted = () => {
      mine = true;
      if (told) onMine();
      else decide();
      return held;
    };
    const waitInLine = () => {
      setTimeout(decide, patience);
      // Whoever has it has it: only the wait has failed, or was ended.
      locks.request(name, { signal: waiting.signal }, granted).catch(decide);
    };
    locks.request(name, { ifAvailable: true }, (lock) => (lock ? granted() : waitInLine())).catch(refused);
  });
  told = true;
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
