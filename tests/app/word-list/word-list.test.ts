import { act, renderHook, waitFor } from '@testing-library/react';
import { expect, test } from 'vitest';
import { currentAssessment } from '../../../app/store/assessment.ts';
import { useGame } from '../../../app/store/game.ts';
import { currentWordList, startWordList, useWordList } from '../../../app/word-list/word-list.ts';
import { openGame } from '../open-game.ts';

test('the list is fetched when a word lock is on the map, and no sooner; the analysis then has it', async () => {
  openGame();
  const seen = renderHook(useWordList).result;
  startWordList();
  act(() => void useGame.getState().apply([{ type: 'rename', id: 'sum', name: 'Add' }]));
  // Long enough for a part to arrive that had been asked for.
  await import('../../../app/word-list/unpacked.ts');
  await Promise.resolve();
  expect(seen.current).toBeUndefined();
  const before = currentAssessment();
  expect(before.context.words).toBeUndefined();

  act(() => void useGame.getState().apply([{ type: 'setFields', id: 'lock', fields: { type: 'word' } }]));
  await waitFor(() => expect(seen.current).toBeDefined());
  expect(seen.current?.graded(4).some(([word]) => word === 'CORE')).toBe(true);
  expect(seen.current).toBe(currentWordList());
  expect(currentAssessment().context.words).toBe(seen.current);
});
