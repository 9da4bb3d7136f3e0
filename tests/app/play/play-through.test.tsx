/** What stands in the strip where there is no lesson to be shown, and that the map lets go of a minute when it is closed. */
import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { NOTHING_SIMULATED, useSimulated } from '../../../app/engine/simulation.ts';
import PlayThrough from '../../../app/play/PlayThrough.tsx';
import { currentAssessment } from '../../../app/store/assessment.ts';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { simulate } from '../../../src/engine/simulation/batch.ts';
import { clockOf } from '../../../src/engine/simulation/clock.ts';
import { emptyGame } from '../../../src/game/model.ts';
import { PLAY } from '../../../src/words/play.ts';
import { openGame } from '../open-game.ts';

const words = () => screen.getByRole('region').textContent ?? '';

function haveFigures(isOld = false): void {
  const { game, network } = currentAssessment();
  const clock = clockOf(game, network);
  const simulated = simulate(clock, undefined, 20);
  if (!simulated) throw new Error('the game cannot be won');
  const nothingMore = { whole: undefined, costs: undefined, byHints: undefined, byChoosing: undefined };
  const figures = { clock, simulated, coarse: false, chain: new Int32Array(0), ...nothingMore };
  useSimulated.setState({ figures, isOld });
}

beforeEach(() => {
  openGame();
  useSimulated.setState(NOTHING_SIMULATED);
});
afterEach(cleanup);

test('without figures it says that they are being worked out, and then what happens at minute 0', () => {
  render(<PlayThrough />);
  expect(words()).toContain('Being worked out.');
  act(() => haveFigures());
  expect(words()).toContain('minute 0: three pupils search Window sill, three wait');
  expect(words()).toContain('finish before the bell.');
  expect(useView.getState().moments?.get('sill')?.text).toBe('3 pupils');
});

test('figures of before an edit are marked as such', () => {
  act(() => haveFigures(true));
  render(<PlayThrough />);
  expect(words()).toContain('being worked out anew');
  expect(words()).not.toContain('before the bell');
});

test('an empty game, and one that cannot be won, have a sentence', () => {
  act(() => haveFigures());
  render(<PlayThrough />);
  act(() => void useGame.getState().apply([{ type: 'unlink', ids: ['l2'] }]));
  expect(words()).toContain('A lesson can be played through as soon as the game can be won.');
  expect(useView.getState().moments).toBeUndefined();
  act(() => openGame(emptyGame));
  expect(words()).toContain('A lesson can be played through as soon as there is a game.');
});

test('closed, the map shows no minute any more', () => {
  act(() => haveFigures());
  const { unmount } = render(<PlayThrough />);
  expect(useView.getState().moments?.size).toBeGreaterThan(0);
  unmount();
  expect(useView.getState().moments).toBeUndefined();
});

test('of this and where the time goes, one at a time; closed, the other is back', () => {
  const view = useView.getState;
  view().setHeat(true);
  view().lift('note');
  view().setPlay(true);
  expect([view().heat, view().play, view().lifted]).toEqual([false, true, undefined]);
  view().setPlay(false);
  expect([view().heat, view().play]).toEqual([true, false]);
  view().setPlay(true);
  view().setHeat(true);
  expect([view().heat, view().play]).toEqual([true, false]);
  view().setHeat(false);
});

test('Escape closes it with the focus in it, and no other key does', () => {
  act(() => haveFigures());
  useView.getState().setPlay(true);
  render(<PlayThrough />);
  fireEvent.keyDown(screen.getByRole('button', { name: PLAY.close }), { key: 'ArrowRight' });
  expect(useView.getState().play).toBe(true);
  expect(fireEvent.keyDown(screen.getByRole('button', { name: PLAY.close }), { key: 'Escape' })).toBe(false);
  expect(useView.getState().play).toBe(false);
});
