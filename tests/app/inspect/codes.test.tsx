import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import type { GameLink, GameNode } from '../../../src/game/model.ts';
import { openGame, past } from '../open-game.ts';
import { node, openForm, openWithLock, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

const code = () => screen.getByRole<HTMLInputElement>('textbox', { name: 'Code' });
const change = () => fireEvent.click(screen.getByRole('button', { name: /^Code/ }));

describe('a code as a teacher types it', () => {
  test.each([
    ['number', ' 4 - 7.２ ', '472'],
    ['word', 'réef', 'REEF'],
    ['direction', 'up, Left →', 'ULR'],
    ['dial', 'R32-L14-R25', '32 14 25'],
    ['picture', 'fox, sun; bell', 'FOX SUN BELL'],
    ['typed', ' kd413', 'KD413'],
  ])('%s: %s', (lockType, typed, stored) => {
    openWithLock({ type: lockType, code: '' }, [], []);
    openForm('lock');
    type(code(), typed);
    expect(node('lock')).toMatchObject({ code: stored });
    expect(code().value).toBe(typed);
    fireEvent.blur(code());
    expect(past()).toBe(1);
  });

  test('trouble is told at the field, what was typed is kept, and the last good code stays', () => {
    openForm('lock');
    change();
    type(code(), '4O2');
    expect(screen.getByText(/takes only digits/)).toBeTruthy();
    expect(code().getAttribute('aria-invalid')).toBe('true');
    expect(node('lock')).toMatchObject({ code: '472' });
    fireEvent.blur(code());
    expect(code().value).toBe('4O2');
  });

  test('an answer is read as the lock that it is for reads it', () => {
    openWithLock({ type: 'dial', code: '32 14 25' });
    act(
      () => void useGame.getState().apply([{ type: 'setFields', id: 'sum', fields: { answer: undefined } }]),
    );
    openForm('sum');
    type(screen.getByRole('textbox', { name: 'Answer' }), '32/14/25');
    expect(node('sum')).toMatchObject({ answer: '32 14 25' });
  });

  test('pictures of a lock whose wheels are known are pressed', () => {
    const wheels = ['FOX SUN', 'BELL CUP'];
    openWithLock({ type: 'picture', code: '', hardware: { wheels } }, [], []);
    openForm('lock');
    fireEvent.click(screen.getByRole('button', { name: 'Add SUN' }));
    fireEvent.click(screen.getByRole('button', { name: 'Add CUP' }));
    expect(node('lock')).toMatchObject({ code: 'SUN CUP' });
  });

  test('a dial says which way it is turned to each number', () => {
    openWithLock({ type: 'dial', code: '32 14 25' });
    openForm('lock');
    const plates = screen.getByRole('button', { name: /^Code/ });
    expect(plates.textContent).toContain('right to 32 left to 14 right to 25');
  });

  test('what the wheels cannot show is told by wheel and sign, in the place of the code', () => {
    openWithLock({ type: 'word', code: 'QUIZ', hardware: { wheels: ['ABC', 'U', 'I', 'Z'] } }, [], []);
    openForm('lock');
    expect(screen.getByRole('region', { name: 'Code' }).textContent).toMatch(/wheel 1 has no Q/);
  });
});

describe('a good code is drawn', () => {
  const draw = () => screen.queryByRole('button', { name: 'Draw a good code' });
  const scrap = (id: string, answer: string): GameNode => ({ id, kind: 'clue', name: id, answer });
  const part = (from: string, at: readonly number[]): GameLink => ({
    id: `to ${from}`,
    from,
    to: 'lock',
    at,
  });

  test('for the lock and what gives it together, as one undo', () => {
    openForm('lock');
    fireEvent.click(draw() ?? document.body);
    const lock = node('lock');
    const drawn = lock?.kind === 'fastener' ? lock.code : undefined;
    expect(drawn).toMatch(/^\d{3}$/);
    expect(node('sum')).toMatchObject({ answer: drawn });
    expect(past()).toBe(1);
  });

  test('each part gives its part', () => {
    openWithLock({}, [scrap('a', '2'), scrap('b', '74')], [part('a', [3]), part('b', [2, 1])]);
    openForm('lock');
    fireEvent.click(draw() ?? document.body);
    const lock = node('lock');
    const drawn = lock?.kind === 'fastener' ? (lock.code ?? '') : '';
    expect(drawn).toMatch(/^\d{3}$/);
    expect(node('a')).toMatchObject({ answer: drawn.charAt(2) });
    expect(node('b')).toMatchObject({ answer: `${drawn.charAt(1)}${drawn.charAt(0)}` });
  });

  test('not where a paper says what the code is worked out from, nor where sources disagree, nor for a key', () => {
    act(
      () => void useGame.getState().apply([{ type: 'setFields', id: 'note', fields: { text: '4, 7, 2' } }]),
    );
    openForm('lock');
    expect(draw()).toBeNull();
    cleanup();
    openWithLock({ code: '473' });
    openForm('lock');
    expect(draw()).toBeNull();
    cleanup();
    openWithLock({ type: 'key' });
    openForm('lock');
    expect(draw()).toBeNull();
  });
});
