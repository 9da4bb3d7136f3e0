/** Tidying whose work throws: it ends, says so, and can be asked for again. */

import { renderHook } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { tidyUp } from '../../../../app/flow/tidy/tidy-up.ts';
import type { TidyAnswer, TidyQuestion } from '../../../../app/flow/tidy/work.ts';
import { useTroubleNews } from '../../../../app/parts/trouble.ts';
import { useTidying } from '../../../../app/store/tidying.ts';
import { PARTS } from '../../../../src/words/parts.ts';
import { openGame, theGame } from '../../open-game.ts';

const work = vi.hoisted(() => ({ throws: true }));
vi.mock('../../../../app/flow/tidy/work.ts', async (original) => {
  const real = await original<typeof import('../../../../app/flow/tidy/work.ts')>();
  return {
    ...real,
    *tidyAnswers(question: TidyQuestion): Generator<TidyAnswer | undefined> {
      if (work.throws) throw new Error('no such node');
      yield* real.tidyAnswers(question);
    },
  };
});

beforeEach(() => {
  vi.stubGlobal('Worker', undefined);
  openGame();
});
afterEach(() => vi.unstubAllGlobals());

const ended = () => vi.waitFor(() => expect(useTidying.getState().work).toBeUndefined());

test('on the page', async () => {
  const before = theGame();
  tidyUp();
  expect(useTidying.getState().work).toBe('asked');
  await ended();
  expect(useTidying.getState()).toMatchObject({ slow: false, shown: undefined, stop: undefined });
  expect(theGame()).toBe(before);
  expect(renderHook(useTroubleNews).result.current).toBe(PARTS.broken);
  work.throws = false;
  tidyUp();
  await ended();
  expect(theGame().positions.size).toBeGreaterThan(0);
});
