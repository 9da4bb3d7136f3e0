/** Work in slices: everything is heard in order, nothing after it was stopped, and a failure is told. */
import { expect, test } from 'vitest';
import { inSlices } from '../../../app/parts/in-slices.ts';

function heardOf<T>(work: Iterator<T | undefined, unknown>, length: number): Promise<(T | string)[]> {
  return new Promise((resolve) => {
    const heard: (T | string)[] = [];
    const told = {
      *[Symbol.iterator]() {
        for (let next = work.next(); !next.done; next = work.next()) yield next.value;
        resolve(heard);
      },
    };
    inSlices(told[Symbol.iterator](), {
      hear: (answer) => heard.push(answer),
      fail: (error) => resolve([...heard, String(error)]),
      length,
    });
  });
}

function* counting(): Generator<number | undefined> {
  for (let i = 1; i <= 5; i++) {
    yield undefined;
    yield i;
  }
}

test('all answers come in order, however short a slice is', async () => {
  expect(await heardOf(counting(), 0)).toEqual([1, 2, 3, 4, 5]);
  expect(await heardOf(counting(), 1_000)).toEqual([1, 2, 3, 4, 5]);
});

test('the page goes on between two slices', async () => {
  const seen: (number | string)[] = [];
  await new Promise<void>((resolve) => {
    inSlices(counting(), {
      hear: (answer) => {
        seen.push(answer);
        if (answer === 1) setTimeout(() => seen.push('a turn'));
        if (answer === 5) setTimeout(resolve, 20);
      },
      fail: () => undefined,
      length: 0,
    });
  });
  expect(seen.filter((one) => one !== 'a turn')).toEqual([1, 2, 3, 4, 5]);
  expect(seen).toContain('a turn');
});

test('nothing is heard once it is stopped, not even when the stop comes from what was heard', async () => {
  const heard: number[] = [];
  const stop = inSlices(counting(), {
    hear: (answer) => {
      heard.push(answer);
      if (answer === 2) stop();
    },
    fail: () => undefined,
    length: 1_000,
  });
  await new Promise((resolve) => setTimeout(resolve, 30));
  expect(heard).toEqual([1, 2]);
});

test('a failure is told, after what was heard before', async () => {
  function* failing(): Generator<number> {
    yield 1;
    throw new Error('no more');
  }
  expect(await heardOf(failing(), 0)).toEqual([1, 'Error: no more']);
});
