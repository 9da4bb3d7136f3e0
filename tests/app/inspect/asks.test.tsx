import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { NODES, openGame, past } from '../open-game.ts';
import { node, openForm, openWithLock, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

test('what a puzzle asks is ticked in any order and kept in the usual one', () => {
  openForm('sum');
  fireEvent.click(screen.getByLabelText('telling colours'));
  fireEvent.click(screen.getByLabelText('reading'));
  expect(node('sum')?.asks).toEqual(['reading', 'colour']);
  expect(past()).toBe(2);
  fireEvent.click(screen.getByLabelText('reading'));
  fireEvent.click(screen.getByLabelText('telling colours'));
  expect(node('sum')).toEqual(NODES.find(({ id }) => id === 'sum'));
});

test('the other way is asked for once something is asked, and stays when it no longer is', () => {
  openForm('note');
  expect(screen.queryByLabelText(/^The other way/)).toBeNull();
  fireEvent.click(screen.getByLabelText('reading'));
  type(screen.getByLabelText(/^The other way/), 'A partner reads it aloud.');
  fireEvent.click(screen.getByLabelText('reading'));
  expect(node('note')).toMatchObject({ otherWay: 'A partner reads it aloud.' });
  expect(screen.getByLabelText<HTMLInputElement>(/^The other way/).value).toBe('A partner reads it aloud.');
});

test('words that this version does not know stay, and are said', () => {
  openWithLock({}, [{ id: 'bell', kind: 'tool', name: 'Bell', asks: ['smelling', 'hearing'] }]);
  openForm('bell');
  // Without another way it stands open: that is where one is written.
  const fold = screen.getByText('What it asks of a pupil').closest('details');
  expect(fold?.open).toBe(true);
  type(screen.getByLabelText(/^The other way/), 'A lamp blinks too.');
  cleanup();
  openForm('bell');
  expect(screen.getByText('hearing and smelling')).toBeTruthy();
  fireEvent.click(screen.getByLabelText('moving about'));
  expect(node('bell')?.asks).toEqual(['hearing', 'moving', 'smelling']);
});

test('a place may be come upon by chance', () => {
  openForm('sill');
  fireEvent.click(screen.getByLabelText('Pupils may come upon it by chance'));
  expect(node('sill')).toMatchObject({ byChance: true });
  fireEvent.click(screen.getByLabelText('Pupils may come upon it by chance'));
  expect(node('sill') && 'byChance' in (node('sill') ?? {})).toBe(false);
});
