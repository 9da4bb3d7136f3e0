/** Keeps my kit in the browser: every change is stored, and every window shows the last one. */
import { readKit } from '../../src/kit/read.ts';
import { writeKit } from '../../src/kit/write.ts';
import { KIT, KIT_DAMAGED, KIT_FILES } from '../../src/words/screen-kit.ts';
import { download } from '../keep/download.ts';
import { troubleOf } from '../keep/keeping.ts';
import { freshId } from '../store/ids.ts';
import { type Cupboard, openCupboard, passingCupboard, type Stored } from './database.ts';
import { useKit } from './kit-state.ts';
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
  const reading = typeof kit === 'string' ? readKit(kit, { newId: freshId }) : undefined;
  return reading?.ok ? { kit: reading.kit, pins: readPins(pins) } : undefined;
}

/** The request to the browser is made before the first await. */
async function flush(): Promise<void> {
  clearTimeout(timer);
  const { stored, owned } = useKit.getState();
  if (stored) return;
  try {
    await cupboard.write({ kit: writeKit(owned.kit), pins: writePins(owned.pins) });
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

const allOf = ({ kit, pins }: Owned) => JSON.stringify([writeKit(kit), writePins(pins)]);

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

/** What was kept, as it is. */
const asText = (kept: unknown) => (typeof kept === 'string' ? kept : JSON.stringify(kept));

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
    const saveRaw = () => download(KIT_FILES.damaged, new Blob([asText(held.kit)], { type: 'text/plain' }));
    useKit
      .getState()
      .tell({ lines: [KIT_DAMAGED], trouble: true, act: { label: KIT.saveRaw, run: saveRaw } });
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
