import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { removeSelection } from '../../../app/commands/selection.ts';
import { JUDGING } from '../../../app/judged/judged.ts';
import { Verdict } from '../../../app/shell/Verdict.tsx';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { gameOf, LINKS, NODES, openGame, theGame } from '../open-game.ts';

beforeAll(async () => void (await JUDGING.load()));
beforeEach(() => openGame());
afterEach(cleanup);

function remove(...ids: string[]): void {
  act(() => {
    useView.getState().select(ids);
    removeSelection();
  });
}

const news = () => screen.getByRole('status').textContent;

test('a box that is removed says what went with it and where its contents lie, with the way back', () => {
  render(<Verdict />);
  const before = theGame();
  remove('tin');
  expect(news()).toBe('Green tin and its lock are gone. Medal now lies in Window sill. Undo');
  fireEvent.click(screen.getByRole('button', { name: 'Undo' }));
  expect(theGame()).toEqual(before);
  expect(news()).toBe('');
});

test('the news is gone with the next change', () => {
  render(<Verdict />);
  remove('tin');
  act(() => void useGame.getState().apply([{ type: 'rename', id: 'sum', name: 'Add' }]));
  expect(news()).toBe('');
});

test('what nothing holds is said to be where it is; an empty thing goes without a word', () => {
  openGame(gameOf(NODES, LINKS));
  render(<Verdict />);
  remove('medal');
  expect(news()).toBe('');
  remove('sill');
  expect(news()).toBe(
    'Window sill is gone. Torn note is now in hand from the start; Green tin is now on the tables. Undo',
  );
});
