import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openGame } from '../open-game.ts';
import { node, openForm, openWithLock } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

const fold = () => screen.getByText('Can it be guessed?').closest('details');

test('a harmless lock says how many codes it has, folded', () => {
  // 10 wheels: no class tries that.
  openWithLock({ code: '4725108364', hardware: { wheels: Array.from({ length: 10 }, () => '0-9') } });
  openForm('lock');
  expect(fold()?.open).toBe(false);
  expect(fold()?.textContent).toContain('10 billion codes');
  expect(fold()?.textContent).toContain('It has 10 billion codes. One try takes 5 s.');
});

test('of a lock that leaves open how long its code is, nothing is counted before there is one', () => {
  openWithLock({ code: '' });
  openForm('lock');
  expect(fold()?.textContent).toContain('No code yet');
  expect(fold()?.textContent).not.toContain('counted');
});

test('the third part of three: what is left at each moment, and that it is quicker', () => {
  const scrap = (id: string, answer: string) => ({ id, kind: 'clue', name: id, in: 'sill', answer }) as const;
  openWithLock(
    {},
    [scrap('one', '4'), scrap('two', '7'), { id: 'moon', kind: 'puzzle', name: 'Moon', answer: '2' }],
    [
      { id: 'a', from: 'one', to: 'lock', at: [1] },
      { id: 'b', from: 'two', to: 'lock', at: [2] },
      { id: 'c', from: 'moon', to: 'lock', at: [3] },
      { id: 'd', from: 'note', to: 'moon' },
    ],
  );
  openForm('lock');
  const said = document.querySelector('.inspector')?.textContent ?? '';
  expect(said).toMatch(
    /with positions 1 and 2 known: 10 codes, about 30 s of trying\. Quicker than solving it/,
  );
});

test('a lock asks of pupils by its type, with the usual other way; more can be said', () => {
  openForm('lock');
  expect(screen.getByText(/A partner turns and pulls/)).toBeTruthy();
  expect(screen.queryByLabelText('fine hands')).toBeNull();
  fireEvent.click(screen.getByLabelText('hearing'));
  expect(node('lock')?.asks).toEqual(['hearing']);
});

test('a place that is found by chance and skips nothing says so', () => {
  openForm('sill');
  fireEvent.click(screen.getByLabelText('Pupils may come upon it by chance'));
  expect(screen.getByText('Found by chance, it skips nothing.')).toBeTruthy();
});
