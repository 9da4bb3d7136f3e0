/** What asks for new pages, and which of the pages that come are shown. */
import { cleanup, renderHook, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { answers } from '../../../app/print/answers.ts';
import { usePages } from '../../../app/print/usePages.ts';
import type { Drawing } from '../../../src/sheets/drawing.ts';
import type { LayoutOptions, Sheet, SheetOptions } from '../../../src/sheets/sheet.ts';
import { ALL_ON } from '../../sheets/all-on.ts';
import { LayoutWorker } from './layout-workers.ts';
import { smallGame } from './small-game.ts';

/** Typefaces need a browser; here they come when a test says so. */
const faces = vi.hoisted(() => ({ load: async (_pages: readonly Drawing[]): Promise<void> => {} }));
vi.mock('../../../app/print/faces.ts', () => ({
  loadFaces: (pages: readonly Drawing[]) => faces.load(pages),
}));

const game = smallGame();
const printing = { date: '25 November 2026, 13:40' };

/** Another choice for each. */
const OTHERS: LayoutOptions = {
  paper: 'Letter',
  orientation: 'landscape',
  codes: false,
  times: false,
  rescue: false,
  ticks: false,
  sheets: ['map', 'order'],
};

function sheetsFor(options: LayoutOptions): readonly Sheet[] {
  const last = [...answers({ game, options, printing })].at(-1);
  if (!last || 'failed' in last) throw new Error('the game cannot be laid out');
  return last.sheets;
}

const shown = (options: SheetOptions) =>
  renderHook((chosen: SheetOptions) => usePages(game, chosen, printing), { initialProps: options });

beforeEach(() => {
  vi.stubGlobal('Worker', LayoutWorker);
  faces.load = async () => {};
});
afterEach(() => {
  cleanup();
  LayoutWorker.close();
  vi.unstubAllGlobals();
});

const ready = (hook: ReturnType<typeof shown>) =>
  waitFor(() => expect(hook.result.current.state).toBe('ready'), { timeout: 30_000 });

test.each(Object.entries(OTHERS))(
  'another choice of %s asks for other pages, and they are shown',
  async (name, value) => {
    const hook = shown(ALL_ON);
    await ready(hook);
    const before = hook.result.current.sheets;
    const options = { ...ALL_ON, [name]: value };
    hook.rerender(options);
    expect(hook.result.current).toEqual({ sheets: before, state: 'starting' });
    await ready(hook);
    expect(LayoutWorker.all).toHaveLength(2);
    expect(hook.result.current.sheets).toEqual(sheetsFor(options));
    expect(hook.result.current.sheets).not.toEqual(before);
  },
);

test('the same choice again and other ink ask for nothing', async () => {
  const hook = shown(ALL_ON);
  await ready(hook);
  const before = hook.result.current;
  hook.rerender({ ...ALL_ON, colour: false, sheets: [...ALL_ON.sheets] });
  expect(hook.result.current).toBe(before);
  expect(LayoutWorker.all).toHaveLength(1);
});

test('choices one after the other: what is shown in the end is the newest, and all other workers are ended', async () => {
  const hook = shown(ALL_ON);
  const chosen: SheetOptions[] = [];
  for (const [name, value] of Object.entries(OTHERS)) {
    chosen.push({ ...(chosen.at(-1) ?? ALL_ON), [name]: value });
  }
  for (const options of chosen) {
    hook.rerender(options);
    // As far as answers, so that some are in flight.
    await waitFor(() => expect(LayoutWorker.all.at(-1)?.answered).toBeGreaterThan(0));
  }
  await ready(hook);
  expect(hook.result.current.sheets).toEqual(sheetsFor({ ...OTHERS }));
  expect(LayoutWorker.all).toHaveLength(chosen.length + 1);
  expect(LayoutWorker.all.filter(({ ended }) => !ended)).toEqual([]);
});

/** Answers nothing by itself. */
class ToldWorker extends LayoutWorker {
  override postMessage() {}
}

test('faces that come late for an older answer do not put it over a newer one, nor over a failure', async () => {
  vi.stubGlobal('Worker', ToldWorker);
  const waiting: (() => void)[] = [];
  faces.load = () => new Promise((resolve) => waiting.push(resolve));
  const hook = shown(ALL_ON);
  const [worker] = LayoutWorker.all;
  const [first, last] = [
    { sheets: [], final: false },
    { sheets: sheetsFor(OTHERS), final: true },
  ];
  worker?.tell(first);
  worker?.tell(last);
  await waitFor(() => expect(waiting).toHaveLength(2));
  waiting[1]?.();
  await ready(hook);
  waiting[0]?.();
  await Promise.resolve();
  expect(hook.result.current).toEqual({ sheets: last.sheets, state: 'ready' });

  hook.rerender({ ...ALL_ON, codes: false });
  const next = LayoutWorker.all.at(-1);
  next?.tell(first);
  await waitFor(() => expect(waiting).toHaveLength(3));
  next?.tell({ failed: 'no paper is called so' });
  await waitFor(() => expect(hook.result.current.state).toBe('failed'));
  waiting[2]?.();
  await new Promise((rest) => setTimeout(rest, 20));
  expect(hook.result.current).toEqual({ sheets: [], state: 'failed' });
});
