/** My kit in the browser's store: kept, shared between windows, and safe when the store is full or damaged. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Cupboard, Stored } from '../../../app/kit/database.ts';
import { TEMPLATES } from '../../../app/kit/templates.ts';
import { KIT_DAMAGED } from '../../../src/words/screen-kit.ts';

const browser = vi.hoisted((): { stored: Stored; damaged: unknown; full: boolean; lasts: boolean } => ({
  stored: { kit: undefined, pins: undefined },
  damaged: undefined,
  full: false,
  lasts: true,
}));

vi.mock(import('../../../app/kit/database.ts'), async (load) => ({
  ...(await load()),
  openCupboard: async (): Promise<Cupboard> => ({
    lasts: browser.lasts,
    read: async () => browser.stored,
    async write(stored) {
      if (browser.full) throw new DOMException('', 'QuotaExceededError');
      browser.stored = stored;
    },
    async putBy(damaged) {
      browser.damaged = damaged;
    },
  }),
}));

const open: BroadcastChannel[] = [];

/** A window of its own: the modules anew. */
async function openWindow() {
  vi.resetModules();
  const { startKit } = await import('../../../app/kit/keeping.ts');
  const { useKit } = await import('../../../app/kit/kit-state.ts');
  const { tap } = await import('../../../app/kit/write.ts');
  await startKit();
  const state = () => useKit.getState();
  return {
    state,
    total: () => state().owned.kit.items.reduce((sum, { count }) => sum + count, 0),
    tap: () => {
      const [number3] = TEMPLATES;
      if (number3) tap(number3);
    },
  };
}

const settled = (state: () => { stored: boolean }) => vi.waitFor(() => expect(state().stored).toBe(true));

beforeEach(() => {
  Object.assign(browser, {
    stored: { kit: undefined, pins: undefined },
    damaged: undefined,
    full: false,
    lasts: true,
  });
  const Channel = BroadcastChannel;
  vi.stubGlobal(
    'BroadcastChannel',
    class extends Channel {
      constructor(name: string) {
        super(name);
        open.push(this);
      }
    },
  );
});
afterEach(() => {
  for (const channel of open.splice(0)) channel.close();
  vi.unstubAllGlobals();
});

test('a change is kept, and is there when the page is opened again, pins too', async () => {
  const first = await openWindow();
  first.tap();
  expect(first.state().stored).toBe(false);
  const pins = new Map([['game', { nodes: new Map([['lock', ['a', null]]]), hasps: new Map() }]]);
  first.state().change({ ...first.state().owned, pins });
  await settled(first.state);
  const second = await openWindow();
  expect(second.total()).toBe(1);
  expect(second.state().owned.pins).toEqual(pins);
  expect(second.state().past).toEqual([]);
  expect(second.state().storage).toBe('kept');
});

test('the last change of two windows wins, both show it, and it can be taken back', async () => {
  const first = await openWindow();
  const second = await openWindow();
  first.tap();
  await vi.waitFor(() => expect(second.total()).toBe(1));
  second.tap();
  await vi.waitFor(() => expect(first.total()).toBe(2));
  first.state().undo();
  expect(first.total()).toBe(1);
  await vi.waitFor(() => expect(second.total()).toBe(1));
});

test('a full store is said, and what could not be kept is kept with the next change', async () => {
  const only = await openWindow();
  browser.full = true;
  only.tap();
  await vi.waitFor(() => expect(only.state().storage).toBe('full'));
  expect(only.state().stored).toBe(false);
  expect(only.total()).toBe(1);
  browser.full = false;
  only.tap();
  await settled(only.state);
  expect(only.state().storage).toBe('kept');
  expect((await openWindow()).total()).toBe(2);
});

test('a browser that keeps nothing is said from the start', async () => {
  browser.lasts = false;
  const only = await openWindow();
  expect(only.state().storage).toBe('refused');
  only.tap();
  await settled(only.state);
  expect(only.state().storage).toBe('refused');
});

test('what cannot be read is put by before anything is written', async () => {
  browser.stored = { kit: '{"format":"latch', pins: 'nonsense' };
  const only = await openWindow();
  expect(browser.damaged).toBe('{"format":"latch');
  expect(only.state().news?.lines).toEqual([KIT_DAMAGED]);
  only.tap();
  await settled(only.state);
  expect((await openWindow()).total()).toBe(1);
});
