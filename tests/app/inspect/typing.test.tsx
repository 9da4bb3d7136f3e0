import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { gameOf, openGame, past } from '../open-game.ts';
import { node, openForm, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

describe('typing', () => {
  test('one field is one undo, two visits are two', () => {
    openForm('sum');
    const name = screen.getByLabelText('Name');
    type(name, 'A');
    type(name, 'Ad');
    fireEvent.blur(name);
    expect(past()).toBe(1);
    type(name, 'Add');
    fireEvent.blur(name);
    expect(past()).toBe(2);
    act(() => useGame.getState().undo());
    expect(node('sum')?.name).toBe('Ad');
    expect(screen.getByLabelText<HTMLInputElement>('Name').value).toBe('Ad');
  });

  test('a bad number is told at the field, and the game keeps the last good one', () => {
    openForm('sum');
    const hands = screen.getByLabelText('Pupils who can work at it together');
    type(hands, '4');
    expect(node('sum')?.hands).toBe(4);
    type(hands, '4x');
    expect(node('sum')?.hands).toBe(4);
    expect(hands.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText('Write a whole number from 1.')).toBeTruthy();
    fireEvent.blur(hands);
    expect(screen.getByLabelText<HTMLInputElement>('Pupils who can work at it together').value).toBe('4x');
    type(hands, '');
    expect(node('sum')?.hands).toBeUndefined();
    expect(hands.getAttribute('aria-invalid')).toBe('false');
  });

  test('text and note are taken away when they are emptied', () => {
    openForm('note');
    type(screen.getByLabelText('Pupils read'), 'Seven rows');
    expect(node('note')?.text).toBe('Seven rows');
    type(screen.getByLabelText('Pupils read'), '');
    expect(node('note') && 'text' in (node('note') ?? {})).toBe(false);
  });
});

describe('the name', () => {
  test('is typed at once when it is asked for, and only then', () => {
    openForm('sum');
    expect(document.activeElement).toBe(document.body);
    act(() => useView.getState().askName('note'));
    const name = screen.getByLabelText<HTMLInputElement>('Name');
    expect(document.activeElement).toBe(name);
    expect(name.value.slice(name.selectionStart ?? 0, name.selectionEnd ?? 0)).toBe('Torn note');
    expect(useView.getState().naming).toBeUndefined();
  });

  test('is asked for again of the thing that is in the form already', () => {
    openForm('sum');
    act(() => useView.getState().askName('sum'));
    expect(document.activeElement).toBe(screen.getByLabelText('Name'));
  });

  test('has an end', () => {
    openForm('sum');
    expect(screen.getByLabelText<HTMLInputElement>('Name').maxLength).toBe(200);
  });
});

describe('several together', () => {
  test('are put into a holder as one undo', () => {
    openForm('note', 'tin');
    fireEvent.click(screen.getByRole('button', { name: 'Put them all in' }));
    fireEvent.click(screen.getByRole('option', { name: 'nothing: in hand from the start' }));
    expect(past()).toBe(1);
    expect([node('note'), node('tin')].some((each) => each && 'in' in each)).toBe(false);
  });

  test('take the same number of pupils', () => {
    openForm('sum', 'lock');
    type(screen.getByLabelText('Pupils who can work at each together'), '2');
    expect([node('sum')?.hands, node('lock')?.hands]).toEqual([2, 2]);
  });
});

test('another window edits: the form can be read and not changed', () => {
  useGame.getState().setReadOnly(true);
  openForm('sum');
  expect(screen.getByLabelText('Name').closest('fieldset')?.disabled).toBe(true);
  expect(screen.getByRole('button', { name: 'Back to the whole game' }).closest('fieldset')).toBeNull();
});

test('markup in a name is text', () => {
  openGame(gameOf([{ id: 'x', kind: 'clue', name: '<img src=x onerror=alert(1)>' }]));
  openForm('x');
  expect(document.querySelector('img')).toBeNull();
  expect(screen.getByRole('heading', { level: 2 }).textContent).toBe('<img src=x onerror=alert(1)>');
});
