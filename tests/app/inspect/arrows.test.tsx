import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import Inspector from '../../../app/inspect/Inspector.tsx';
import { useView } from '../../../app/store/view.ts';
import { gameOf, LINKS, NODES, openGame, theGame } from '../open-game.ts';
import { node, openForm, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

describe('where a thing lies', () => {
  test('every legal holder with its depth, and the thing itself in none', () => {
    openForm('tin');
    fireEvent.click(screen.getByRole('button', { name: 'Put it in…' }));
    const options = within(screen.getByRole('listbox')).getAllByRole('option');
    expect(options.map((option) => option.textContent)).toEqual(['nothing: on the tables', 'Window sillnow']);
  });

  test('is changed by keys alone', () => {
    openForm('note');
    fireEvent.click(screen.getByRole('button', { name: 'Put it in…' }));
    const filter = screen.getByRole('combobox');
    type(filter, 'tin');
    fireEvent.keyDown(filter, { key: 'Enter' });
    expect(node('note')).toMatchObject({ in: 'tin' });
    fireEvent.click(screen.getByRole('button', { name: 'Put it in…' }));
    fireEvent.keyDown(screen.getByRole('combobox'), { key: 'Enter' });
    expect(node('note') && 'in' in (node('note') ?? {})).toBe(false);
  });

  test('a lock is put on another box', () => {
    openGame(gameOf([...NODES, { id: 'bag', kind: 'container', name: 'Bag' }], LINKS));
    openForm('lock');
    fireEvent.click(screen.getByRole('button', { name: 'Put it on…' }));
    fireEvent.click(screen.getByRole('option', { name: 'Bag' }));
    expect(node('lock')).toMatchObject({ on: 'bag' });
  });
});

describe('arrows', () => {
  test('only legal targets are offered, and one is added', () => {
    openForm('note');
    fireEvent.click(screen.getByRole('button', { name: 'Needed for…' }));
    const options = within(screen.getByRole('listbox')).getAllByRole('option');
    expect(options.map((option) => option.textContent)).toEqual(['Number lock on Green tin', 'Window sill']);
    fireEvent.click(screen.getByRole('option', { name: 'Number lock on Green tin' }));
    expect([...theGame().links.values()].some(({ from, to }) => from === 'note' && to === 'lock')).toBe(true);
  });

  test('any of several, and back to all', () => {
    openGame(
      gameOf(
        [...NODES, { id: 'map', kind: 'clue', name: 'Map' }],
        [...LINKS, { id: 'l3', from: 'map', to: 'sum' }],
      ),
    );
    openForm('sum');
    const need = screen.getByLabelText('How many of these');
    fireEvent.change(need, { target: { value: '1' } });
    expect(node('sum')?.need).toBe(1);
    fireEvent.change(need, { target: { value: 'all' } });
    expect(node('sum')?.need).toBeUndefined();
  });

  test('answers gathered from several papers fill places of the code', () => {
    openGame(
      gameOf(
        [...NODES, { id: 'map', kind: 'clue', name: 'Map', answer: '2' }],
        [...LINKS, { id: 'l3', from: 'map', to: 'lock' }],
      ),
    );
    openForm('lock');
    const [sum, map] = screen.getAllByLabelText('Positions in the code');
    if (!sum || !map) throw new Error('two sources');
    type(sum, '1, 2');
    expect(theGame().links.get('l2')?.at).toEqual([1, 2]);
    type(map, '3, 3');
    expect(screen.getByText('A position is filled once.')).toBeTruthy();
    expect(theGame().links.get('l3')?.at).toBeUndefined();
    type(sum, '');
    expect(theGame().links.get('l2')?.at).toBeUndefined();
  });

  test('are removed from either end', () => {
    openForm('sum');
    fireEvent.click(screen.getByRole('button', { name: 'Remove the arrow: Torn note' }));
    fireEvent.click(screen.getByRole('button', { name: 'Remove the arrow: Number lock on Green tin' }));
    expect(theGame().links.size).toBe(0);
  });

  test('the form of one arrow', () => {
    useView.getState().select([], ['l2']);
    render(<Inspector />);
    type(screen.getByLabelText('Positions in the code'), '1, 3');
    expect(theGame().links.get('l2')?.at).toEqual([1, 3]);
    fireEvent.click(screen.getByRole('button', { name: 'Remove the arrow' }));
    expect(theGame().links.has('l2')).toBe(false);
  });
});
