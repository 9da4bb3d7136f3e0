/** When a worker is held to be lost, and what its sign of life is. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

class Silent {
  static all: Silent[] = [];
  onmessage: ((event: { readonly data: unknown }) => void) | undefined;
  onerror: (() => void) | undefined;
  ended = false;

  constructor() {
    Silent.all.push(this);
  }

  postMessage() {}

  terminate() {
    this.ended = true;
  }
}

let startHelper: typeof import('../../../app/parts/helper.ts').startHelper;
let wait: number;

beforeEach(async () => {
  vi.resetModules();
  vi.useFakeTimers();
  vi.stubGlobal('Worker', Silent);
  Silent.all = [];
  const module = await import('../../../app/parts/helper.ts');
  startHelper = module.startHelper;
  wait = 2 * module.SIGN_OF_LIFE;
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function start() {
  const helper = startHelper<string, string>('a.js');
  if (!helper) throw new Error('refused');
  const [hear, lost] = [vi.fn(), vi.fn()];
  helper.hear = hear;
  helper.lost = lost;
  return { helper, hear, lost };
}

test('one whose script runs may take as long as it needs', () => {
  const { hear, lost } = start();
  Silent.all[0]?.onmessage?.({ data: 'here' });
  expect(hear).not.toHaveBeenCalled();
  vi.advanceTimersByTime(10 * wait);
  expect(lost).not.toHaveBeenCalled();
  Silent.all[0]?.onmessage?.({ data: 'answer' });
  expect(hear).toHaveBeenCalledWith('answer');
});

test('one that gives no sign of life is lost once, ended, and not waited for again', () => {
  const { lost } = start();
  vi.advanceTimersByTime(wait);
  expect(lost).toHaveBeenCalledTimes(1);
  expect(Silent.all[0]?.ended).toBe(true);
  expect(startHelper('a.js')).toBeUndefined();
  expect(startHelper('b.js')).toBeDefined();
});

test('one that fails is lost at once, and may be started again', () => {
  const { lost } = start();
  Silent.all[0]?.onerror?.();
  expect(lost).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(wait);
  expect(lost).toHaveBeenCalledTimes(1);
  expect(startHelper('a.js')).toBeDefined();
});

test('one that is ended is not lost', () => {
  const { helper, lost } = start();
  helper.end();
  vi.advanceTimersByTime(wait);
  expect(lost).not.toHaveBeenCalled();
});

test('where workers are refused there is none', () => {
  vi.stubGlobal('Worker', function refuse() {
    throw new DOMException('refused', 'SecurityError');
  });
  expect(startHelper('a.js')).toBeUndefined();
});
