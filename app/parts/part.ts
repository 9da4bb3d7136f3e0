/**
 * The parts of the program that the first view does not wait for. Every import() of the page is declared by `part`: as a rule fetched ahead
 * when the page rests, asked for again after it could not be had, and never a promise that fails unheard.
 */

import { PARTS } from '../../src/words/parts.ts';
import { ahead, goOnAhead } from './ahead.ts';
import { forgetTrouble, tellTrouble } from './trouble.ts';

export interface Part<Module> {
  /** Undefined: not fetched yet. */
  readonly now: () => Module | undefined;
  /** Fetches it, or tries again. Undefined when it cannot be had; nothing is said. */
  readonly load: () => Promise<Module | undefined>;
  /** The same at a person's wish: when it cannot be had, the head says so. */
  readonly ask: () => Promise<Module | undefined>;
  /** Calls once it is there. Returns what takes the wish back. */
  readonly whenThere: (hear: () => void) => () => void;
}

/** Style sheets that could not be fetched. Vite asks for each only once, so that the part would come without them the next time. */
const failedStyles = new Set<HTMLLinkElement>();

const isStyle = (target: EventTarget | null): target is HTMLLinkElement =>
  target instanceof HTMLLinkElement && target.rel === 'stylesheet';

globalThis.document?.addEventListener(
  'error',
  ({ target }) => {
    if (isStyle(target)) failedStyles.add(target);
  },
  true,
);

/** Asks for them again; fails when one still cannot be had. */
async function mendStyles(): Promise<void> {
  await Promise.all(
    Array.from(failedStyles, (failed) => {
      const fresh = document.createElement('link');
      fresh.rel = 'stylesheet';
      fresh.href = failed.href;
      failedStyles.delete(failed);
      return new Promise<void>((resolve, reject) => {
        fresh.onload = () => resolve();
        fresh.onerror = () => reject(new Error(`${fresh.href} could not be fetched`));
        failed.replaceWith(fresh);
      });
    }),
  );
}

interface Fetching {
  /** False: not before it is asked for. For what is large and seldom wanted. */
  readonly ahead?: boolean;
}

export function part<Module>(
  fetching: () => Promise<Module>,
  { ahead: isAhead = true }: Fetching = {},
): Part<Module> {
  let module: Module | undefined;
  let coming: Promise<Module | undefined> | undefined;
  let isMissed = false;
  const waiting = new Set<() => void>();

  const fetchOnce = async () => {
    try {
      if (failedStyles.size > 0) await mendStyles();
      module = await fetching();
    } catch {
      // Browsers tell of it themselves; whoever asked tells the person.
      return undefined;
    } finally {
      coming = undefined;
    }
    for (const hear of waiting) hear();
    waiting.clear();
    // Of another part it may still be true.
    if (isMissed) forgetTrouble(PARTS.lost);
    void goOnAhead();
    return module;
  };
  const load = async () => {
    coming ??= module === undefined ? fetchOnce() : Promise.resolve(module);
    return coming;
  };
  const ask = async () => {
    forgetTrouble(PARTS.lost);
    const asked = await load();
    isMissed = asked === undefined;
    if (isMissed) tellTrouble(PARTS.lost);
    return asked;
  };
  if (isAhead) ahead(async () => (await load()) !== undefined);
  return {
    now: () => module,
    load,
    ask,
    whenThere: (hear) => {
      if (module !== undefined) queueMicrotask(hear);
      else waiting.add(hear);
      return () => waiting.delete(hear);
    },
  };
}
