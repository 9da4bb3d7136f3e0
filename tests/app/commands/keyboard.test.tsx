import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import KeyList from '../../../app/commands/KeyList.tsx';
import { isPressed, listenToKeys } from '../../../app/commands/keyboard.ts';
import { COMMAND_LIST } from '../../../app/commands/registry.ts';
import { usePrint } from '../../../app/print/open.ts';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { openGame, past, theGame } from '../open-game.ts';

let stop: () => void;

beforeEach(() => {
  openGame();
  stop = listenToKeys();
});
afterEach(() => {
  stop();
  cleanup();
});

const press = (key: string, more: Partial<KeyboardEventInit> = {}, on: Element = document.body) =>
  fireEvent.keyDown(on, { key, ...more });

const down = (key: string, more: Partial<KeyboardEventInit> = {}) =>
  new KeyboardEvent('keydown', { key, ...more });

describe('keys to commands', () => {
  test('remove, undo, redo', () => {
    useView.getState().select(['note']);
    press('Delete');
    expect(theGame().nodes.has('note')).toBe(false);
    expect(theGame().links.has('l1')).toBe(false);
    press('z', { ctrlKey: true });
    expect(theGame().nodes.has('note')).toBe(true);
    expect(theGame().links.has('l1')).toBe(true);
    press('Z', { ctrlKey: true, shiftKey: true });
    expect(theGame().nodes.has('note')).toBe(false);
    press('z', { ctrlKey: true });
    press('y', { ctrlKey: true });
    expect(theGame().nodes.has('note')).toBe(false);
  });

  test('duplicate selects the copy', () => {
    useView.getState().select(['tin']);
    press('d', { ctrlKey: true });
    expect(theGame().nodes.size).toBe(9);
    const [copy] = useView.getState().nodes;
    expect(theGame().nodes.get(copy ?? '')).toMatchObject({
      kind: 'container',
      name: 'Green tin 2',
      in: 'sill',
    });
    expect(past()).toBe(1);
  });

  test('select everything, then let go step by step', () => {
    press('a', { ctrlKey: true });
    expect(useView.getState().nodes.size).toBe(6);
    useView.getState().select(['note']);
    press('¬', { altKey: true, code: 'KeyL' });
    expect(useView.getState().lifted).toBe('note');
    press('Escape');
    expect(useView.getState().lifted).toBeUndefined();
    expect(useView.getState().nodes.size).toBe(1);
    press('Escape');
    expect(useView.getState().nodes.size).toBe(0);
  });

  test('leave out and use again', () => {
    useView.getState().select(['note', 'sum']);
    press('n', { altKey: true, code: 'KeyN' });
    expect(theGame().nodes.get('sum')?.leftOut).toBe(true);
    press('n', { altKey: true, code: 'KeyN' });
    expect(theGame().nodes.get('sum')?.leftOut).toBeUndefined();
  });

  test('the browser keeps no dialog of its own for a key that is ours, and its own keys otherwise', () => {
    expect(press('z', { ctrlKey: true })).toBe(false);
    expect(press('p', { ctrlKey: true })).toBe(false);
    expect(press('f', { ctrlKey: true })).toBe(true);
    expect(press('Delete')).toBe(true);
  });

  test('the print preview opens for the keys of the browser, while typing too', () => {
    usePrint.setState({ open: false });
    render(<input aria-label="field" />);
    expect(press('p', { ctrlKey: true }, screen.getByLabelText('field'))).toBe(false);
    expect(usePrint.getState().open).toBe(true);
    usePrint.setState({ open: false });
  });

  test('nothing else while typing, or with another window editing', () => {
    render(<input aria-label="field" />);
    useView.getState().select(['note']);
    press('Delete', {}, screen.getByLabelText('field'));
    expect(theGame().nodes.has('note')).toBe(true);
    useGame.getState().setReadOnly(true);
    press('Delete');
    expect(theGame().nodes.has('note')).toBe(true);
  });
});

describe('shortcuts', () => {
  test('are told apart by their modifiers', () => {
    expect(isPressed('Mod+Z', down('z', { ctrlKey: true }), false)).toBe(true);
    expect(isPressed('Mod+Z', down('z', { metaKey: true }), true)).toBe(true);
    expect(isPressed('Mod+Z', down('z', { ctrlKey: true }), true)).toBe(false);
    expect(isPressed('Mod+Z', down('Z', { ctrlKey: true, shiftKey: true }), false)).toBe(false);
    expect(isPressed('Mod+Shift+Z', down('Z', { ctrlKey: true, shiftKey: true }), false)).toBe(true);
    expect(isPressed('?', down('?', { shiftKey: true }), false)).toBe(true);
    expect(isPressed('Delete', down('Delete', { altKey: true }), false)).toBe(false);
  });

  test('no two commands share one, and none is a plain letter', () => {
    const keys = COMMAND_LIST.flatMap((command) => command.keys);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.filter((key) => /^\p{L}$/u.test(key))).toEqual([]);
  });

  test('are all in the list of keys', () => {
    render(<KeyList />);
    expect(screen.getByRole('dialog', { name: 'Commands and keys' })).toBeTruthy();
    const rows = screen.getAllByRole('rowheader').map((row) => row.textContent);
    for (const name of ['Undo', 'Redo', 'Copy', 'Duplicate', 'Not today', 'Save to a file']) {
      expect(rows).toContain(name);
    }
    expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Undo' }).disabled).toBe(true);
    fireEvent.click(screen.getByRole('button', { name: 'Select everything' }));
    expect(useView.getState().nodes.size).toBe(6);
  });
});
