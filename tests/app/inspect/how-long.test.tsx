import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { gameOf, LINKS, NODES, openGame, past } from '../open-game.ts';
import { node, openForm, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

describe('how long it takes', () => {
  const fields = () =>
    ['at best', 'as a rule', 'at worst'].map((label) => screen.getByLabelText<HTMLInputElement>(label));

  test('three times, written as a teacher writes them: what is typed stays, what is not follows', () => {
    openForm('lock');
    const [best, rule, worst] = fields();
    expect(best?.placeholder).toBe('18 s');
    if (!best || !rule || !worst) throw new Error('three fields');
    type(best, '15 s');
    expect(node('lock')?.minutes).toEqual({ low: 0.25, likely: 0.5, high: 2 });
    type(rule, '1.5');
    expect(node('lock')?.minutes).toEqual({ low: 0.25, likely: 1.5, high: 6 });
    type(worst, '2:30');
    expect(node('lock')?.minutes).toEqual({ low: 0.25, likely: 1.5, high: 2.5 });
    fireEvent.blur(worst);
    expect(past()).toBe(1);
  });

  test('one number sets all three by what is usual for the kind', () => {
    openForm('sum');
    const [best, rule, worst] = fields();
    if (!best || !rule || !worst) throw new Error('three fields');
    type(rule, '1');
    expect(node('sum')?.minutes).toEqual({ low: 0.6, likely: 1, high: 2 });
    // The ratios are those that held before, however short what is typed is on its way.
    type(rule, '0');
    expect(node('sum')?.minutes).toEqual({ low: 0, likely: 0, high: 0 });
    type(rule, '10');
    expect(node('sum')?.minutes).toEqual({ low: 6, likely: 10, high: 20 });
    expect([best, rule, worst].map(({ value }) => value)).toEqual(['6 min', '10', '20 min']);
    fireEvent.blur(rule);
    expect(past()).toBe(1);
    act(() => useGame.getState().undo());
    expect(node('sum')?.minutes).toBeUndefined();
  });

  test('times of its own keep their ratios when only the one number changes', () => {
    openGame(
      gameOf(
        NODES.map((each) =>
          each.id === 'sum' ? { ...each, minutes: { low: 1, likely: 4, high: 5 } } : each,
        ),
        LINKS,
      ),
    );
    openForm('sum');
    type(screen.getByLabelText('as a rule'), '8');
    expect(node('sum')?.minutes).toEqual({ low: 2, likely: 8, high: 10 });
    fireEvent.blur(screen.getByLabelText('as a rule'));
    type(screen.getByLabelText('at worst'), '30');
    expect(node('sum')?.minutes).toEqual({ low: 2, likely: 8, high: 30 });
    fireEvent.blur(screen.getByLabelText('at worst'));
    type(screen.getByLabelText('at best'), '');
    expect(node('sum')?.minutes).toEqual({ low: 4.8, likely: 8, high: 30 });
  });

  test('the middle one emptied: told when it is left', () => {
    openForm('lock');
    const [best, rule] = fields();
    if (!best || !rule) throw new Error('three fields');
    type(best, '15 s');
    type(rule, '1');
    type(rule, '');
    expect(screen.queryByText(/is missing/)).toBeNull();
    fireEvent.blur(rule);
    expect(screen.getByText(/^‘As a rule’ is missing/)).toBeTruthy();
    expect(node('lock')?.minutes).toEqual({ low: 0.25, likely: 1, high: 4 });
  });

  test('as usual takes the times away, and what was typed with them', () => {
    openForm('lock');
    type(screen.getByLabelText('as a rule'), '2');
    fireEvent.blur(screen.getByLabelText('as a rule'));
    type(screen.getByLabelText('at best'), 'x');
    fireEvent.click(screen.getByRole('button', { name: 'As usual' }));
    expect(node('lock') && 'minutes' in (node('lock') ?? {})).toBe(false);
    expect(fields().map(({ value }) => value)).toEqual(['', '', '']);
    expect(screen.queryByRole('button', { name: 'As usual' })).toBeNull();
    act(() => useGame.getState().undo());
    expect(node('lock')?.minutes).toEqual({ low: 1.2, likely: 2, high: 8 });
  });

  test('a time beyond all measure is refused at the field', () => {
    openForm('sum');
    type(screen.getByLabelText('as a rule'), '900000');
    fireEvent.blur(screen.getByLabelText('as a rule'));
    expect(screen.getByText('That is more than a million minutes.')).toBeTruthy();
    expect(node('sum')?.minutes).toBeUndefined();
  });

  test('out of order: told, and not written', () => {
    openForm('lock');
    const [best, rule, worst] = fields();
    if (!best || !rule || !worst) throw new Error('three fields');
    type(best, '5');
    type(rule, '2');
    type(worst, '6');
    fireEvent.blur(worst);
    expect(screen.getByText(/^At best is the shortest, at worst the longest/)).toBeTruthy();
    expect([best, rule, worst].map((field) => field.getAttribute('aria-invalid'))).toEqual([
      'true',
      'true',
      'false',
    ]);
    expect(node('lock')?.minutes).toBeUndefined();
  });
});

describe('how much it varies', () => {
  const slider = () => screen.getByLabelText<HTMLInputElement>(/^How much it varies/);
  const pull = (at: number) => fireEvent.change(slider(), { target: { value: String(at) } });

  test('the game follows while the slider moves, and one pull is one undo', () => {
    openForm('sum');
    expect(slider().getAttribute('aria-valuetext')).toBe('3 min to 10 min');
    fireEvent.pointerDown(slider());
    pull(20);
    expect(node('sum')?.minutes).toEqual({ low: 2.5, likely: 5, high: 11 });
    pull(40);
    expect(node('sum')?.minutes).toEqual({ low: 0, likely: 5, high: 18 });
    pull(0);
    expect(node('sum')?.minutes).toEqual({ low: 5, likely: 5, high: 5 });
    expect(slider().getAttribute('aria-valuetext')).toBe('always 5 min');
    // Wide again by the same pull: nothing of its shape is lost.
    pull(16);
    expect(node('sum')?.minutes).toEqual({ low: 3, likely: 5, high: 10 });
    fireEvent.pointerUp(window);
    fireEvent.pointerDown(slider());
    pull(4);
    fireEvent.pointerUp(window);
    expect(past()).toBe(2);
    act(() => useGame.getState().undo());
    expect(node('sum')?.minutes).toEqual({ low: 3, likely: 5, high: 10 });
    expect(slider().value).toBe('16');
    act(() => useGame.getState().undo());
    expect(node('sum')?.minutes).toBeUndefined();
  });

  test('stands nowhere on what takes no time', () => {
    openForm('note');
    expect(screen.queryByRole('slider')).toBeNull();
    type(screen.getByLabelText('as a rule'), '5');
    expect(node('note')?.minutes).toEqual({ low: 3, likely: 5, high: 10 });
    expect(screen.getByRole('slider')).toBeTruthy();
  });
});

describe('times that are not right yet', () => {
  const texts = () =>
    ['at best', 'as a rule', 'at worst'].map((label) => screen.getByLabelText<HTMLInputElement>(label).value);
  const selectAnotherAndBack = () => {
    act(() => useView.getState().select(['sum']));
    act(() => useView.getState().select(['lock']));
  };

  test('stay as typed when something else is selected meanwhile, and say what is wrong', () => {
    openForm('lock');
    type(screen.getByLabelText('at best'), '20');
    // The map takes the pointer without the field being left.
    selectAnotherAndBack();
    expect(texts()).toEqual(['20', '', '']);
    expect(screen.getByText(/^At best is the shortest/)).toBeTruthy();
    type(screen.getByLabelText('as a rule'), '40');
    expect(node('lock')?.minutes).toEqual({ low: 20, likely: 40, high: 160 });
  });

  test('emptying all three takes the times away', () => {
    openForm('lock');
    type(screen.getByLabelText('as a rule'), '40');
    fireEvent.blur(screen.getByLabelText('as a rule'));
    for (const label of ['at best', 'as a rule', 'at worst']) type(screen.getByLabelText(label), '');
    expect(node('lock') && 'minutes' in (node('lock') ?? {})).toBe(false);
    selectAnotherAndBack();
    expect(texts()).toEqual(['', '', '']);
  });

  test('are gone with the game that they belong to', () => {
    openForm('lock');
    type(screen.getByLabelText('at best'), '40');
    act(() => openGame());
    act(() => useView.getState().select(['lock']));
    expect(texts()).toEqual(['', '', '']);
  });
});
