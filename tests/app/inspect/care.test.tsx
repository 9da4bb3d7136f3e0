import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openGame } from '../open-game.ts';
import { node, openForm, openWithLock } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

const care = () => {
  const fold = screen.getByText('Care').closest('details');
  if (!fold) throw new Error('no part of the form is about care');
  return within(fold);
};

test('what the teacher states of a thing is kept, and what is to be heeded is told with its source', () => {
  openForm('note');
  expect(care().queryByRole('listitem')).toBeNull();
  fireEvent.click(care().getByLabelText('Button cells'));
  expect(node('note')?.hazards).toEqual(['buttonCells']);
  expect(care().getByRole('listitem').textContent).toContain('Sources: 16 CFR part 1263; UL 4200A');
  fireEvent.click(care().getByLabelText('Button cells'));
  expect(node('note') && 'hazards' in (node('note') ?? {})).toBe(false);
});

test('what the words of a thing suggest is told, and said to be only suggested', () => {
  openWithLock({}, [{ id: 'lamp', kind: 'tool', name: 'UV torch' }]);
  openForm('lamp');
  expect(care().getByText(/^UV lamp and button cells$/i)).toBeTruthy();
  expect(care().getAllByText(/^Suggested by its name or its texts\. Source/)).toHaveLength(2);
});

test('no lock keeps anybody in: told with every lock and box, and nothing to state of a lock', () => {
  openForm('lock');
  expect(care().getByText(/No person is ever locked in/)).toBeTruthy();
  expect(care().queryByLabelText('Button cells')).toBeNull();
});
