/** Who answers: a worker, the same one again, or the page where workers fail. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { TidyAnswer, TidyQuestion } from '../../../../app/flow/tidy/work.ts';
import type { Failed } from '../../../../app/parts/run.ts';
import { gameOf, LINKS, NODES } from '../../open-game.ts';

const question: TidyQuestion = {
  game: gameOf(NODES, LINKS),
  numbers: new Map(),
  opened: new Set(),
  only: undefined,
  from: 'scratch',
};

const final: TidyAnswer = { positions: new Map(), routes: undefined, final: true };

class Answering {
  static all: Answering[] = [];
  onmessage: ((event: { readonly data: TidyAnswer | Failed }) => void) | undefined;
  onerror: (() => void) | undefined;
  questions: TidyQuestion[] = [];
  ended = false;

  constructor() {
    Answering.all.push(this);
  }

  postMessage(asked: TidyQuestion) {
    this.questions.push(asked);
  }

  terminate() {
    this.ended = true;
  }
}

let ask: typeof import('../../../../app/flow/tidy/ask.ts').ask;
let prepare: typeof import('../../../../app/flow/tidy/ask.ts').prepare;

beforeEach(async () => {
  vi.resetModules();
  Answering.all = [];
  vi.stubGlobal('Worker', Answering);
  ({ ask, prepare } = await import('../../../../app/flow/tidy/ask.ts'));
});
afterEach(() => vi.unstubAllGlobals());

/** The answers up to the final one. */
function answers(): Promise<TidyAnswer[]> {
  return new Promise((resolve, reject) => {
    const heard: TidyAnswer[] = [];
    const hear = (answer: TidyAnswer) => {
      heard.push(answer);
      if (answer.final) resolve(heard);
    };
    ask(question, { hear, fail: reject });
  });
}

test('one worker answers one question after the other; one that is stopped is ended', () => {
  prepare();
  const [hear, fail] = [vi.fn(), vi.fn()];
  ask(question, { hear, fail });
  const [first] = Answering.all;
  first?.onmessage?.({ data: final });
  expect(hear).toHaveBeenCalledExactlyOnceWith(final);
  const stop = ask(question, { hear, fail });
  expect(Answering.all).toHaveLength(1);
  expect(first?.questions).toHaveLength(2);
  stop();
  expect(first?.ended).toBe(true);
  ask(question, { hear, fail });
  expect(Answering.all).toHaveLength(2);
});

test('where the worker fails, the page answers', async () => {
  const heard = answers();
  Answering.all[0]?.onerror?.();
  const list = await heard;
  expect(list.at(-1)?.positions.size).toBe(NODES.length);
  expect(list.filter(({ final: last }) => last)).toHaveLength(1);
});

test('one that fails before it is asked is not asked', async () => {
  prepare();
  Answering.all[0]?.onerror?.();
  expect((await answers()).at(-1)?.positions.size).toBe(NODES.length);
  expect(Answering.all).toHaveLength(1);
});

test('work that throws in the worker fails, once; the worker is whole, and answers the next question', () => {
  const [hear, fail] = [vi.fn(), vi.fn()];
  ask(question, { hear, fail });
  const [worker] = Answering.all;
  worker?.onmessage?.({ data: { failed: 'no such node' } });
  expect(fail).toHaveBeenCalledExactlyOnceWith('no such node');
  expect(hear).not.toHaveBeenCalled();
  ask(question, { hear, fail });
  worker?.onmessage?.({ data: final });
  expect(hear).toHaveBeenCalledExactlyOnceWith(final);
  expect(Answering.all).toEqual([worker]);
});
