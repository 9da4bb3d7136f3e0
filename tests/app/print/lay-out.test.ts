// @vitest-environment node
/**
 * The real pages and the real code of the worker, on this thread: between the two lies a message channel, as in a browser. All that a
 * run has to say is on its way before the page hears the first of it, so whatever is stopped has answers in flight.
 */
import { setImmediate as turn } from 'node:timers/promises';
import { enableMapSet } from 'immer';
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { answers, type PagesAnswer, type PagesQuestion } from '../../../app/print/answers.ts';
import { layOutPages, prepareLayingOut } from '../../../app/print/lay-out.ts';
import { gameOf as exampleOf } from '../../games/example.ts';
import { ALL_ON } from '../../sheets/all-on.ts';

enableMapSet();

const game = exampleOf('front-page');
const printing = { date: '25 November 2026, 13:40' };
const asked: PagesQuestion = { game, options: ALL_ON, printing };
const other: PagesQuestion = { ...asked, options: { ...ALL_ON, codes: false, orientation: 'landscape' } };
/** No paper is called so. */
const unanswerable: PagesQuestion = JSON.parse(
  JSON.stringify({ ...asked, options: { ...ALL_ON, sheets: 5 } }),
);

const finalOf = (question: PagesQuestion) => [...answers(question)].at(-1);

/** What a worker's script is given to talk with. */
interface Scope {
  onmessage?: (event: { readonly data: PagesQuestion }) => void;
  postMessage(answer: PagesAnswer): void;
}

let answer: Scope['onmessage'];

beforeAll(async () => {
  const scope: Scope = { postMessage: () => {} };
  Object.assign(globalThis, { self: scope });
  await import('../../../app/print/lay-out.worker.ts');
  answer = scope.onmessage;
  expect(answer).toBeDefined();
});

const workers: InProcessWorker[] = [];

class InProcessWorker {
  onmessage: ((event: MessageEvent<PagesAnswer>) => void) | null = null;
  onerror: (() => void) | null = null;
  ended = false;
  #channel = new MessageChannel();

  constructor(script: URL | string) {
    expect(String(script)).toContain('lay-out.worker');
    workers.push(this);
    this.#channel.port2.onmessage = (event) => this.onmessage?.(event);
  }

  postMessage(question: PagesQuestion) {
    const data = structuredClone(question);
    setTimeout(() => {
      if (this.ended) return;
      const scope: Scope = { postMessage: (one) => this.#channel.port1.postMessage(one) };
      Object.assign(globalThis, { self: scope });
      answer?.({ data });
    });
  }

  /** What was sent before still arrives. */
  terminate() {
    this.ended = true;
  }

  close() {
    this.#channel.port1.close();
  }
}

class DyingWorker extends InProcessWorker {
  override postMessage() {
    setTimeout(() => this.onerror?.());
  }
}

const withWorkers = (Worker: unknown) => Object.assign(globalThis, { Worker });

beforeEach(() => withWorkers(InProcessWorker));

afterEach(() => {
  for (const worker of workers.splice(0)) worker.close();
});

const isLast = (one: PagesAnswer) => 'failed' in one || one.final;

/** Until all that is on its way has arrived. */
async function quiet() {
  for (let i = 0; i < 20; i++) await turn();
}

/** All that is heard, up to the last. */
function heard(question: PagesQuestion): Promise<PagesAnswer[]> {
  const all: PagesAnswer[] = [];
  return new Promise((done) => {
    layOutPages(question, (one) => {
      all.push(one);
      if (isLast(one)) void quiet().then(() => done(all));
    });
  });
}

test('the last that is heard is the run itself, and the worker is ended', async () => {
  const all = await heard(asked);
  expect(all.filter(isLast)).toHaveLength(1);
  expect(all.at(-1)).toEqual(finalOf(asked));
  expect(workers.map(({ ended }) => ended)).toEqual([true]);
});

test('a worker that was prepared gets the next question, once; one that has died meanwhile none', async () => {
  prepareLayingOut();
  prepareLayingOut();
  expect(workers).toHaveLength(1);
  expect((await heard(asked)).at(-1)).toEqual(finalOf(asked));
  expect(workers.map(({ ended }) => ended)).toEqual([true]);
  prepareLayingOut();
  workers.at(-1)?.onerror?.();
  expect((await heard(asked)).at(-1)).toEqual(finalOf(asked));
  expect(workers.map(({ ended }) => ended)).toEqual([true, true, true]);
});

test('new options while older ones are under way: of the older nothing is heard any more', async () => {
  const older: PagesAnswer[] = [];
  const stop = layOutPages(asked, (one) => older.push(one));
  const newer = await new Promise<PagesAnswer[]>((done) => {
    const all: PagesAnswer[] = [];
    layOutPages(other, (one) => {
      all.push(one);
      if (isLast(one)) void quiet().then(() => done(all));
    });
    stop();
  });
  expect(older).toEqual([]);
  expect(newer.at(-1)).toEqual(finalOf(other));
});

test('what a worker had sent before it was stopped is not heard', async () => {
  const all: PagesAnswer[] = [];
  await new Promise<void>((done) => {
    const stop = layOutPages(asked, (one) => {
      all.push(one);
      stop();
      done();
    });
  });
  await quiet();
  expect(all).toHaveLength(1);
  expect(all.filter(isLast)).toEqual([]);
});

test('a failure is told, once, as a sentence of what went wrong', async () => {
  for (const Worker of [InProcessWorker, undefined]) {
    withWorkers(Worker);
    const all = await heard(unanswerable);
    expect(all).toHaveLength(1);
    expect(all[0]).toEqual({ failed: expect.stringMatching(/\w+ \w+/) });
  }
});

test('when the worker dies, or none may be started, the page lays out the same pages', async () => {
  for (const Worker of [DyingWorker, undefined]) {
    withWorkers(Worker);
    const all = await heard(asked);
    expect(all.at(-1)).toEqual(finalOf(asked));
  }
});

test('stopping ends what the page does in place of a worker, before and after it began', async () => {
  for (const Worker of [DyingWorker, undefined]) {
    withWorkers(Worker);
    const all: PagesAnswer[] = [];
    layOutPages(asked, (one) => all.push(one))();
    await new Promise((done) => setTimeout(done));
    await quiet();
    expect(all).toEqual([]);
    await new Promise<void>((done) => {
      const stop = layOutPages(asked, (one) => {
        all.push(one);
        stop();
        done();
      });
    });
    await new Promise((done) => setTimeout(done));
    await quiet();
    expect(all).toHaveLength(1);
  }
});
