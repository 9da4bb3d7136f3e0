/** Keeps my kit in the browser: every change is stored, and every window shows the last one. */
import { KIT_DAMAGED } from '../../src/words/screen-kit.ts';
import { troubleOf } from '../keep/keeping.ts';
import { type Cupboard, openCupboard, passingCupboard, type Stored } from './database.ts';
import { useKit } from './kit-state.ts';
import { kitOf, textOf } from './kit-text.ts';
import { NOTHING_OWNED, type Owned } from './owned.ts';
import { readPins, writePins } from './pins.ts';

/** Milliseconds of rest after which a change is stored. When the page is hidden or closed it is stored at once. */
const REST = 300;
const CHANNEL = 'latchmap-kit';

let cupboard: Cupboard = passingCupboard();
let channel: BroadcastChannel | undefined;
let timer: ReturnType<typeof setTimeout> | undefined;
let started: Promise<void> | undefined;
/** What is on the page comes from the browser's store at this moment, so it is no change. */
let receiving = false;

function ownedOf({ kit, pins }: Stored): Owned | undefined {
  if (kit === undefined) return NOTHING_OWNED;
  const read = kitOf(kit);
  return read && { kit: read, pins: readPins(pins) };
}

/** The request to the browser is made before the first await. */
async function flush(): Promise<void> {
  clearTimeout(timer);
  const { stored, owned } = useKit.getState();
  if (stored) return;
  try {
    await cupboard.write({ kit: textOf(owned.kit), pins: writePins(owned.pins) });
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    useKit.setState({ storage: troubleOf(error) });
    return;
  }
  useKit.setState({ storage: cupboard.lasts ? 'kept' : 'refused' });
  // Changed again meanwhile: stored with its own rest.
  if (useKit.getState().owned !== owned) return;
  useKit.setState({ stored: true });
  channel?.postMessage('stored');
}

function flushLater(): void {
  useKit.setState({ stored: false });
  clearTimeout(timer);
  timer = setTimeout(flush, REST);
}

const allOf = ({ kit, pins }: Owned) => JSON.stringify([textOf(kit), writePins(pins)]);

/** What another window has stored. What this one has not stored yet is the later change, and stays. */
async function readAgain(): Promise<void> {
  if (!useKit.getState().stored || !cupboard.lasts) return;
  const next = ownedOf(await cupboard.read());
  const { owned, stored } = useKit.getState();
  if (!next || !stored || allOf(next) === allOf(owned)) return;
  receiving = true;
  try {
    useKit.getState().change(next);
  } finally {
    receiving = false;
  }
}

function watchPage(): void {
  const now = () => void flush();
  addEventListener('beforeunload', now);
  addEventListener('pagehide', now);
  document.addEventListener('freeze', now);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') now();
    // A browser without channels: whoever comes back to this window sees what the other has left.
    else void readAgain();
  });
}

async function start(): Promise<void> {
  cupboard = await openCupboard();
  const held = await cupboard.read();
  const owned = ownedOf(held);
  if (owned) useKit.setState({ owned });
  else {
    await cupboard.putBy(held.kit);
    useKit.getState().tell({ lines: [KIT_DAMAGED], trouble: true });
  }
  useKit.setState({ ready: true, storage: cupboard.lasts ? 'kept' : 'refused' });
  useKit.subscribe((now, before) => {
    if (now.owned !== before.owned && !receiving) flushLater();
  });
  if (typeof BroadcastChannel !== 'undefined') {
    channel = new BroadcastChannel(CHANNEL);
    channel.onmessage = () => void readAgain();
  }
  watchPage();
}

/** Reads what is kept, and keeps it from then on. Called once; further calls wait for the first. */
export function startKit(): Promise<void> {
  started ??= start();
  return started;
}
