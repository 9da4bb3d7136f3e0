import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { GameLink, GameNode } from '../../../src/game/model.ts';
import { LINKS, openGame } from '../open-game.ts';
import { node, openForm, openWithLock } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

const scrap = (id: string, answer: string): GameNode => ({ id, kind: 'clue', name: `Scrap ${id}`, answer });
const part = (from: string, at: readonly number[]): GameLink => ({ id: `to ${from}`, from, to: 'lock', at });

const rows = () =>
  within(screen.getByRole('list', { name: 'Where the code comes from' }))
    .getAllByRole('listitem')
    .map((row) => row.textContent);

test('one whole answer is told in a line, with what it is made of', () => {
  openForm('lock');
  expect(screen.getByText(/comes from/).textContent).toBe('comes from Torn note for Add the rows');
});

test('parts stand in the order of the code, each with its positions', () => {
  openWithLock({}, [scrap('a', '2'), scrap('b', '47')], [part('a', [3]), part('b', [1, 2])]);
  openForm('lock');
  expect(rows()).toEqual(['4 7 at positions 1 and 247Scrap b', '2 at position 32Scrap a']);
});

test('a gap is shown where it is, and what is to be said of it below', () => {
  openWithLock({}, [scrap('a', '4')], [part('a', [1])]);
  openForm('lock');
  expect(rows()).toEqual(['4 at position 14Scrap a', 'positions 2, 3??nothing gives it']);
  const code = screen.getByRole('region', { name: 'Code' });
  expect(within(code).getByText(/^Nothing gives positions 2 and 3/)).toBeTruthy();
});

test('what gives something else is marked, and the lock takes the answer by a press in its place', () => {
  openWithLock({ code: '473' });
  openForm('lock');
  expect(document.querySelectorAll('.source-slot-wrong')).toHaveLength(1);
  const code = screen.getByRole('region', { name: 'Code' });
  fireEvent.click(within(code).getByRole('button', { name: /^Set .*472/ }));
  expect(node('lock')).toMatchObject({ code: '472' });
  expect(screen.getByText(/comes from/)).toBeTruthy();
});

test('a puzzle that has no answer yet is where the code will come from', () => {
  openWithLock(
    {},
    [{ id: 'blank', kind: 'puzzle', name: 'Weigh' }],
    [{ id: 'l9', from: 'blank', to: 'lock' }],
  );
  openForm('lock');
  expect(rows()).toEqual(['Weigh has no answer yet']);
});

test('words are told with their positions in figures', () => {
  const pictures = { type: 'picture', code: 'FOX SUN BELL' };
  openWithLock(
    pictures,
    [{ id: 'weigh', kind: 'puzzle', name: 'Weigh', answer: 'FOX SUN BELL' }],
    [...LINKS.filter(({ to }) => to !== 'lock'), { id: 'l9', from: 'weigh', to: 'lock' }],
  );
  openForm('lock');
  expect(screen.getByText(/comes from/).textContent).toBe('comes from Weigh');
});

test('a ring of puzzles has an end', () => {
  openWithLock(
    {},
    [{ id: 'turn', kind: 'puzzle', name: 'Turn it' }],
    [...LINKS, { id: 'l8', from: 'turn', to: 'sum' }, { id: 'l9', from: 'sum', to: 'turn' }],
  );
  openForm('lock');
  expect(screen.getByText(/comes from/).textContent).toBe('comes from Torn note, Turn it for Add the rows');
});
