/** What helps is asked for while it is looked at, anew after an edit, and never of a game that is gone. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { HelpsQuestion, HelpsReply } from '../../../app/engine/helping.ts';

/** A browser's worker as the page sees it: what it is asked is kept, and answered by hand with the real work. */
class Asked {
  static all: Asked[] = [];
  onmessage: ((event: { readonly data: HelpsReply }) => void) | undefined;
  onerror: (() => void) | undefined;
  questions: (HelpsQuestion | undefined)[] = [];

  constructor() {
    Asked.all.push(this);
  }

  postMessage(question: HelpsQuestion | undefined) {
    this.questions.push(question);
  }
}

async function start() {
  const [{ useGame }, helping, { helpsAnswers }, { openGame }] = await Promise.all([
    import('../../../app/store/game.ts'),
    import('../../../app/engine/helping.ts'),
    import('../../../app/engine/helps-work.ts'),
    import('../open-game.ts'),
  ]);
  openGame();
  const worker = () => {
    const [only] = Asked.all;
    if (!only) throw new Error('a worker');
    return only;
  };
  const asked = () => worker().questions.filter((question) => question !== undefined);
  const answer = (question = asked().at(-1)) => {
    if (!question) throw new Error('a question');
    for (const one of helpsAnswers(question.game, question.parts, 40)) {
      if (one) worker().onmessage?.({ data: { ticket: question.ticket, answer: one } });
    }
  };
  const { useHelps, lookAt, isOfGame } = helping;
  const now = () => useHelps.getState();
  const isNew = () => {
    const { helps } = now();
    return helps !== undefined && isOfGame(helps, useGame.getState().game);
  };
  const edit = (likely: number) =>
    useGame
      .getState()
      .apply([{ type: 'setFields', id: 'sum', fields: { minutes: { low: 1, likely, high: 60 } } }]);
  return { useGame, worker, asked, answer, lookAt, now, isNew, edit, openGame };
}

beforeEach(() => {
  vi.resetModules();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  Asked.all = [];
  vi.stubGlobal('Worker', Asked);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('nothing is asked until somebody looks, and nothing twice', async () => {
  const { asked, answer, lookAt, now, isNew } = await start();
  expect(Asked.all).toEqual([]);
  const leave = lookAt('helps');
  expect(asked().map(({ parts }) => parts)).toEqual([['helps']]);
  expect(asked()[0]?.game.positions.size).toBe(0);
  answer();
  expect(isNew()).toBe(true);
  expect(now().helps?.value?.tried).toBeGreaterThan(0);
  leave();
  lookAt('helps');
  expect(asked()).toHaveLength(1);
  lookAt('pace');
  expect(asked().map(({ parts }) => parts)).toEqual([['helps'], ['pace']]);
  answer();
  expect(now().pace?.value?.ids).toContain('lock');
});

test('edits are waited for, end what was asked, and make what is known old until new answers come', async () => {
  const { worker, asked, answer, lookAt, now, isNew, edit } = await start();
  lookAt('helps');
  answer();
  const before = now().helps;
  edit(20);
  edit(30);
  expect(asked()).toHaveLength(1);
  expect(now().helps).toBe(before);
  expect(isNew()).toBe(false);
  vi.runAllTimers();
  expect(asked()).toHaveLength(2);
  edit(31);
  expect(worker().questions.at(-1)).toBeUndefined();
  vi.runAllTimers();
  answer(asked()[1]);
  expect(isNew()).toBe(false);
  answer();
  expect(isNew()).toBe(true);
});

test('an undo brings back the game, and so what was found of it', async () => {
  const { useGame, asked, answer, lookAt, isNew, edit } = await start();
  lookAt('helps');
  answer();
  edit(20);
  useGame.getState().undo();
  vi.runAllTimers();
  answer();
  expect(isNew()).toBe(true);
  expect(asked().length).toBeLessThanOrEqual(2);
});

test('who looks away ends the work; another game has nothing from the one before', async () => {
  const { worker, asked, answer, lookAt, now, edit, openGame } = await start();
  const leave = lookAt('helps');
  answer();
  edit(20);
  vi.runAllTimers();
  expect(asked()).toHaveLength(2);
  leave();
  expect(worker().questions.at(-1)).toBeUndefined();
  edit(21);
  vi.runAllTimers();
  expect(asked()).toHaveLength(2);
  openGame();
  expect(now().helps).toBeUndefined();
});

test('of a game that cannot be won nothing is told', async () => {
  const { useGame, answer, lookAt, now } = await start();
  useGame.getState().apply([{ type: 'unlink', ids: ['l2'] }]);
  lookAt('helps');
  lookAt('pace');
  answer();
  expect(now().helps).toMatchObject({ value: undefined });
  expect(now().pace).toMatchObject({ value: undefined });
});
