/** How the figures of the open game come and go: asked anew after an edit that counts, never after one that does not, by a worker or the page. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { SimulationAnswer, SimulationQuestion } from '../../../app/engine/simulating.ts';
import type { Edit } from '../../../src/game/edits/edit.ts';
import { gameOf, LINKS, NODES } from '../open-game.ts';

/** A browser's worker as the page sees it: what it is asked is kept, and answered by hand with the real work. */
class Asked {
  static all: Asked[] = [];
  onmessage: ((event: { readonly data: SimulationAnswer }) => void) | undefined;
  onerror: (() => void) | undefined;
  terminate = () => undefined;
  questions: (SimulationQuestion | undefined)[] = [];

  constructor() {
    Asked.all.push(this);
  }

  postMessage(question: SimulationQuestion | undefined) {
    this.questions.push(question);
  }
}

async function start() {
  const [{ useGame }, { useSimulated }, { startSimulating }, { figuresOf }, { openGame }] = await Promise.all(
    [
      import('../../../app/store/game.ts'),
      import('../../../app/engine/simulation.ts'),
      import('../../../app/engine/simulating.ts'),
      import('../../../app/engine/figures.ts'),
      import('../open-game.ts'),
    ],
  );
  openGame();
  startSimulating();
  const [worker] = Asked.all;
  if (!worker) throw new Error('a worker');
  const edit = (...edits: Edit[]) => expect(useGame.getState().apply(edits)).toBe(true);
  /** Answers a question, the last one if no other is given, with all that there is to find out or the first of it. */
  const answer = (question = worker.questions.at(-1), most = Number.POSITIVE_INFINITY) => {
    if (!question) throw new Error('a question');
    let told = 0;
    for (const one of figuresOf(question.clock, { coarse: 20, runs: 60 }, question.whole)) {
      if (!one) continue;
      worker.onmessage?.({ data: { ticket: question.ticket, answer: one } });
      told += 1;
      if (told >= most) return;
    }
  };
  return { worker, edit, answer, openGame, now: () => useSimulated.getState() };
}

beforeEach(() => {
  vi.resetModules();
  Asked.all = [];
  vi.stubGlobal('Worker', Asked);
});
afterEach(() => vi.unstubAllGlobals());

const longer: Edit = {
  type: 'setFields',
  id: 'sum',
  fields: { minutes: { low: 60, likely: 61, high: 62 } },
};

test('an edit asks anew; the last figures stand, marked as old, until new ones come', async () => {
  const { worker, edit, answer, now } = await start();
  expect(worker.questions).toHaveLength(1);
  answer();
  const before = now().figures;
  expect(before?.costs?.minutes.length).toBe(NODES.length);
  expect(before?.byHints).toHaveLength(4);
  expect(before?.byChoosing).toHaveLength(3);
  expect(now().isOld).toBe(false);
  edit(longer);
  expect(worker.questions).toHaveLength(2);
  expect(now()).toMatchObject({ figures: before, isOld: true });
  answer(undefined, 1);
  expect(now().isOld).toBe(false);
  expect(now().figures?.coarse).toBe(true);
  expect(now().figures?.simulated.inTime).toBe(0);
  expect(now().findings.map(({ code }) => code)).toContain('tooLong');
  // The costs of before stand until there are new ones.
  expect(now().figures?.costs).toBeUndefined();
  expect(now().complete?.simulated).toBe(before?.simulated);
  answer();
  expect(now().complete).toBe(now().figures);
});

test('moving and renaming ask nothing', async () => {
  const { worker, edit, answer, now } = await start();
  answer();
  const before = now();
  edit({ type: 'move', positions: [['sum', { x: 40, y: 40 }]] });
  edit({ type: 'rename', id: 'sum', name: 'Add the columns' });
  expect(worker.questions).toHaveLength(1);
  expect(now()).toBe(before);
});

test('the chance of the whole game is asked for as long as something is left out, and anew when that changes', async () => {
  const { worker, edit, answer, now } = await start();
  answer();
  expect(worker.questions.at(-1)?.whole).toBeUndefined();
  expect(now().figures?.whole).toBeUndefined();
  edit(
    {
      type: 'add',
      nodes: [{ id: 'spare', kind: 'puzzle', name: 'Spare', minutes: { low: 60, likely: 61, high: 62 } }],
      links: [{ id: 'l9', from: 'spare', to: 'lock', at: [1] }],
      positions: [],
    },
    { type: 'leaveOut', ids: ['spare'], leftOut: true },
  );
  answer();
  const { simulated, whole } = now().figures ?? {};
  expect(simulated?.inTime).toBeGreaterThan(0);
  expect(whole).toEqual({ inTime: 0 });
  const asked = worker.questions.length;
  edit({ type: 'setFields', id: 'spare', fields: { minutes: { low: 0, likely: 0, high: 0 } } });
  expect(worker.questions).toHaveLength(asked + 1);
  answer();
  expect(now().figures?.whole).toEqual({ inTime: simulated?.inTime });
  edit({ type: 'leaveOut', ids: ['spare'], leftOut: false });
  answer();
  expect(now().figures?.whole).toBeUndefined();
});

test('an answer to an older question is not heard', async () => {
  const { worker, edit, answer, now } = await start();
  edit(longer);
  answer(worker.questions[0]);
  expect(now().figures).toBeUndefined();
  answer();
  expect(now().figures?.simulated.inTime).toBe(0);
});

test('of a game that cannot be won nothing is told, and nothing old; so when another game is opened', async () => {
  const { worker, edit, answer, now, openGame } = await start();
  answer();
  edit({ type: 'unlink', ids: ['l2'] });
  expect(now()).toMatchObject({ figures: undefined, complete: undefined, findings: [] });
  expect(worker.questions.at(-1)).toBeUndefined();
  openGame();
  answer();
  expect(now().figures).toBeDefined();
  openGame(gameOf([...NODES, { id: 'shelf', kind: 'place', name: 'Shelf' }], LINKS));
  expect(now().figures).toBeUndefined();
});

test('what cannot be worked out is said to be so, until it can', async () => {
  const { worker, edit, answer, now } = await start();
  worker.onmessage?.({ data: { ticket: worker.questions.at(-1)?.ticket ?? 0, answer: undefined } });
  expect(now()).toMatchObject({ figures: undefined, failed: true });
  edit(longer);
  answer();
  expect(now()).toMatchObject({ failed: false, isOld: false });
});

test('nor of one that a wrong code stops', async () => {
  const { worker, edit, answer, now } = await start();
  answer();
  edit({ type: 'setFields', id: 'lock', fields: { code: '471' } });
  expect(now()).toMatchObject({ figures: undefined, findings: [] });
  edit({ type: 'setFields', id: 'lock', fields: { code: '472' } });
  expect(worker.questions.at(-1)).toBeDefined();
});

test('a finding about what is no longer there is not told', async () => {
  const { edit, answer, now } = await start();
  edit({ type: 'setFields', id: 'sum', fields: { hands: 1, minutes: { low: 8, likely: 8, high: 8 } } });
  answer();
  const about = () => now().findings.filter(({ nodes }) => nodes.includes('sum'));
  expect(about()).toHaveLength(1);
  edit({ type: 'link', id: 'l5', from: 'note', to: 'lock' }, { type: 'remove', nodes: ['sum'], links: [] });
  expect(now().isOld).toBe(true);
  expect(about()).toEqual([]);
});

test('where a worker fails, the page works it out in slices, from fewer runs', async () => {
  const { worker, now } = await start();
  worker.onerror?.();
  expect(now().figures).toBeUndefined();
  await vi.waitFor(() => expect(now().figures?.byChoosing).toBeDefined(), { timeout: 60_000 });
  expect(now().figures?.simulated.runs).toBe(500);
});
