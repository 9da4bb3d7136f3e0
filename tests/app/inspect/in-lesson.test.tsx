import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import { NODES, openGame } from '../open-game.ts';
import { node, openForm, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

describe('in the lesson', () => {
  const fold = () => screen.getByText('In the lesson').closest('details');

  test('is folded as long as nothing of it is said', () => {
    openForm('sum');
    expect(fold()?.open).toBe(false);
    cleanup();
    act(() => void useGame.getState().apply([{ type: 'setFields', id: 'sum', fields: { checked: true } }]));
    openForm('sum');
    expect(fold()?.open).toBe(true);
  });

  test('a step is checked by the teacher, and hinted after its minutes', () => {
    openForm('sum');
    fireEvent.click(screen.getByLabelText('Checked or handed over by the teacher'));
    expect(node('sum')?.checked).toBe(true);
    const hint = screen.getByLabelText<HTMLInputElement>('Hint after so many minutes of work');
    expect(hint.placeholder).toBe('7:30');
    type(hint, '6');
    expect(node('sum')?.hintAfter).toBe(6);
    type(hint, 'soon');
    expect(hint.getAttribute('aria-invalid')).toBe('true');
    type(hint, '');
    fireEvent.click(screen.getByLabelText('Checked or handed over by the teacher'));
    expect(node('sum')).toEqual(NODES.find(({ id }) => id === 'sum'));
  });

  test('what is no step is neither checked nor hinted', () => {
    openForm('note');
    expect(screen.queryByLabelText(/^Checked/)).toBeNull();
    expect(screen.queryByLabelText(/^Hint/)).toBeNull();
  });

  test('a box is one for each team, or so many for all', () => {
    openForm('tin');
    expect(screen.getByLabelText<HTMLInputElement>('one for each team').checked).toBe(true);
    fireEvent.click(screen.getByLabelText('fewer, for all teams together'));
    expect(node('tin')).toMatchObject({ shared: 1 });
    const many = screen.getByLabelText<HTMLInputElement>('How many for all teams together');
    type(many, '0');
    expect(screen.getByText('Write a whole number from 1.')).toBeTruthy();
    expect(node('tin')).toMatchObject({ shared: 1 });
    type(many, '3');
    expect(node('tin')).toMatchObject({ shared: 3 });
    fireEvent.click(screen.getByLabelText('one for each team'));
    expect(node('tin')).toEqual(NODES.find(({ id }) => id === 'tin'));
  });

  test('the count that is emptied goes back to one for each team, and nothing is left over', () => {
    openForm('tin');
    fireEvent.click(screen.getByLabelText('fewer, for all teams together'));
    type(screen.getByLabelText('How many for all teams together'), '2x');
    fireEvent.click(screen.getByLabelText('one for each team'));
    expect(node('tin')).toEqual(NODES.find(({ id }) => id === 'tin'));
    expect(screen.queryByText('Write a whole number from 1.')).toBeNull();
  });

  test('only tools, boxes and places are shared', () => {
    for (const id of ['sum', 'lock', 'note', 'medal']) {
      openForm(id);
      expect(screen.queryByText('How many of it there are')).toBeNull();
      cleanup();
    }
  });

  test('without a minute of play, a thing is there as it is come by', () => {
    const said = (id: string) => {
      openForm(id);
      const words = screen.getByText(/^Empty: (it is there|as soon as)/).textContent;
      cleanup();
      return words;
    };
    expect(said('medal')).toBe('Empty: as soon as it is found where it lies.');
    act(() => void useGame.getState().apply([{ type: 'place', ids: ['note'], holder: null, before: null }]));
    expect(said('note')).toBe('Empty: it is there from the start.');
    act(() => void useGame.getState().apply([{ type: 'link', id: 'l9', from: 'sum', to: 'note' }]));
    expect(said('note')).toBe('Empty: as soon as it is handed over.');
  });

  test('a red herring, and what is given out later', () => {
    openForm('note');
    type(screen.getByLabelText('Given out at minute'), '12');
    fireEvent.click(screen.getByLabelText(/^Red herring/));
    expect(node('note')).toMatchObject({ atMinute: 12, decoy: true });
  });
});
