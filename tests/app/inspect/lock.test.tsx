import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import { gameOf, LINKS, NODES, openGame } from '../open-game.ts';
import { node, openForm, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

describe('a lock', () => {
  test('says where its code comes from, and changes it', () => {
    openForm('lock');
    expect(screen.getByText(/comes from/).textContent).toBe('comes from Torn note for Add the rows');
    fireEvent.click(screen.getByRole('button', { name: /^Code 4 7 2/ }));
    type(screen.getByRole('textbox', { name: 'Code' }), '  513 ');
    expect(node('lock')).toMatchObject({ code: '513' });
  });

  test('changes what opens it', () => {
    openForm('lock');
    fireEvent.click(screen.getByLabelText('word'));
    expect(node('lock')).toMatchObject({ type: 'word' });
    fireEvent.click(screen.getByLabelText(/^nothing/));
    expect(node('lock')).toMatchObject({ type: 'latch' });
  });

  test('words that name directions become directions with the type', () => {
    openGame(
      gameOf(
        NODES.map((each) => (each.kind === 'fastener' ? { ...each, type: 'word', code: 'up left' } : each)),
        LINKS,
      ),
    );
    openForm('lock');
    fireEvent.click(screen.getByLabelText('direction'));
    expect(node('lock')).toMatchObject({ type: 'direction', code: 'UL' });
  });

  test('beside another on one box hangs on a hasp', () => {
    openGame(gameOf([...NODES, { id: 'lock2', kind: 'fastener', name: 'Key lock', on: 'tin' }], LINKS));
    openForm('tin');
    expect(screen.getByRole('heading', { name: 'Two locks on a hasp' })).toBeTruthy();
  });

  test('of a type that is not known keeps it and says so', () => {
    openGame(
      gameOf(
        NODES.map((each) => (each.kind === 'fastener' ? { ...each, type: 'scent' } : each)),
        LINKS,
      ),
    );
    openForm('lock');
    expect(screen.getByLabelText<HTMLInputElement>('scent').checked).toBe(true);
    expect(screen.getByText(/does not know this type/)).toBeTruthy();
  });

  test('with directions adds them by buttons', () => {
    openGame(
      gameOf(
        NODES.map((each) => (each.kind === 'fastener' ? { ...each, type: 'direction', code: '' } : each)),
        LINKS,
      ),
    );
    openForm('lock');
    for (const way of ['up', 'down', 'left']) {
      fireEvent.click(screen.getByRole('button', { name: `Add ${way}` }));
    }
    expect(node('lock')).toMatchObject({ code: 'UDL' });
  });
});

describe('directions', () => {
  const withDirections = () =>
    openGame(
      gameOf(
        NODES.map((each) => (each.kind === 'fastener' ? { ...each, type: 'direction', code: 'U' } : each)),
        LINKS,
      ),
    );

  test('are read from words and stored as letters', () => {
    withDirections();
    openForm('lock');
    fireEvent.click(screen.getByRole('button', { name: /^Code/ }));
    const code = screen.getByRole('textbox', { name: 'Code' });
    type(code, 'up left up down');
    expect(node('lock')).toMatchObject({ code: 'ULUD' });
    fireEvent.blur(code);
    expect(screen.getByRole('button', { name: /^Code U L U D/ })).toBeTruthy();
  });

  test('anything else is refused at the field, and the last good code stays', () => {
    withDirections();
    openForm('lock');
    fireEvent.click(screen.getByRole('button', { name: /^Code/ }));
    const code = screen.getByRole('textbox', { name: 'Code' });
    type(code, 'UD7');
    expect(node('lock')).toMatchObject({ code: 'U' });
    expect(code.getAttribute('aria-invalid')).toBe('true');
    fireEvent.blur(code);
    expect(screen.getByText(/takes only up, down, left and right/)).toBeTruthy();
  });

  test('the puzzle that feeds such a lock has the arrow buttons too', () => {
    withDirections();
    act(
      () => void useGame.getState().apply([{ type: 'setFields', id: 'sum', fields: { answer: undefined } }]),
    );
    openForm('sum');
    fireEvent.click(screen.getByRole('button', { name: 'Add up' }));
    fireEvent.click(screen.getByRole('button', { name: 'Add left' }));
    expect(node('sum')).toMatchObject({ answer: 'UL' });
  });
});
