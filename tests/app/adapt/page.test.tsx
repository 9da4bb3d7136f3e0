/** A colleague's game gone down line by line, with the real stores. */
import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import AdaptPage from '../../../app/adapt/AdaptPage.tsx';
import { useAdapting } from '../../../app/adapt/adapting.ts';
import { adaptationOf } from '../../../app/adapt/record.ts';
import { startKit } from '../../../app/kit/keeping.ts';
import { useKit } from '../../../app/kit/kit-state.ts';
import { NOTHING_OWNED } from '../../../app/kit/owned.ts';
import { useGame } from '../../../app/store/game.ts';
import type { GameLink, GameNode } from '../../../src/game/model.ts';
import { emptyKit, type KitItem, type RoomPlace } from '../../../src/kit/model.ts';
import { gameOf, openGame, theGame } from '../open-game.ts';

const NODES: readonly GameNode[] = [
  { id: 'shelf', kind: 'place', name: 'Book shelf' },
  { id: 'sill', kind: 'place', name: 'Window sill', note: 'Under the cushion.' },
  { id: 'slip', kind: 'clue', name: 'Slip', in: 'shelf', text: 'Look on the window sill. Sills are cold.' },
  { id: 'sum', kind: 'puzzle', name: 'Add the rows', answer: '472' },
  { id: 'tin', kind: 'container', name: 'Tin', in: 'sill' },
  { id: 'lock', kind: 'fastener', name: 'Number lock', on: 'tin', type: 'number', code: '472' },
  { id: 'medal', kind: 'prize', name: 'Medal', in: 'tin' },
];
const LINKS: readonly GameLink[] = [
  { id: 'l1', from: 'slip', to: 'sum' },
  { id: 'l2', from: 'sum', to: 'lock' },
];
const PLACES: readonly RoomPlace[] = [
  { id: 'a', name: 'Book shelf', order: 1 },
  { id: 'b', name: "Teacher's desk", order: 2, offLimits: true },
  { id: 'c', name: 'Reading bench', order: 3 },
];
const WORD: KitItem = { id: 'w', what: 'lock', type: 'word', label: '', count: 1 };

function own(items: readonly KitItem[], places: readonly RoomPlace[]): void {
  const owned = { ...NOTHING_OWNED, kit: { ...emptyKit, items, places } };
  useKit.setState({ owned, past: [], future: [], news: undefined });
}

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const button = (name: string | RegExp) => screen.getByRole<HTMLButtonElement>('button', { name });
const progress = () => screen.getByRole('status').textContent;
const type = (label: string | RegExp, text: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value: text } });
const name = (id: string) => theGame().nodes.get(id)?.name;
const SILL = 'Its name here: Window sill';

async function open(): Promise<void> {
  render(<AdaptPage />);
  await screen.findByRole('heading', { name: 'What is short' });
}

beforeEach(async () => {
  await startKit();
  useAdapting.setState({ id: undefined });
  openGame(gameOf(NODES, LINKS));
});
afterEach(cleanup);

test('with nothing to compare, nothing is said to fit', async () => {
  own([], []);
  await open();
  expect(progress()).toBe('Nothing compared yet: my kit and my room are empty. It can be won.');
  expect(button('Fill my kit')).toBeTruthy();
  expect(button('Describe my room')).toBeTruthy();
});

test('the first change makes a copy; renaming changes what quotes the name, and one undo takes all of it back', async () => {
  own([], PLACES);
  await open();
  const { id } = useGame.getState().provenance;
  expect(progress()).toContain('0 of 2 lines done. Left: 1 name and 1 text.');
  expect(screen.getByText('The first change makes a copy. The game as it came stays in Games.')).toBeTruthy();
  expect(screen.getByLabelText<HTMLInputElement>(SILL).value).toBe('Reading bench');
  press('Rename Window sill');
  await waitFor(() => expect(name('sill')).toBe('Reading bench'));
  const copy = useGame.getState().provenance;
  expect(copy.basedOn).toBe(id);
  expect(theGame().head.title).toMatch(/ \(adapted\)$/);
  expect(name('sill')).toBe('Reading bench');
  expect(theGame().nodes.get('slip')?.text).toBe('Look on the reading bench. Sills are cold.');
  expect(adaptationOf(copy.id)).toEqual({ of: id, kept: new Set() });
  expect(screen.getByText(/My room has 2 of 2 hiding places by name/)).toBeTruthy();
  press('Undo: Window sill is called Reading bench now.');
  expect(name('sill')).toBe('Window sill');
  expect(theGame().nodes.get('slip')?.text).toBe('Look on the window sill. Sills are cold.');
  expect(screen.getByText(/My room has 1 of 2 hiding places by name/)).toBeTruthy();
  expect(useGame.getState().provenance.id).toBe(copy.id);
});

test('a name that is off limits is told while it is typed, and does not settle the line', async () => {
  own([], PLACES);
  await open();
  type(SILL, "Teacher's table");
  expect(screen.queryByText(/is off limits/)).toBeNull();
  type(SILL, "Teacher's Desk");
  expect(screen.getByText("“Teacher's desk” is off limits in my room.")).toBeTruthy();
  press('Rename Window sill');
  await waitFor(() => expect(name('sill')).toBe("Teacher's Desk"));
  expect(screen.getByText("“Teacher's desk” is off limits in my room.")).toBeTruthy();
  expect(progress()).toContain('0 of 2 lines done.');
  type(SILL, 'Piano');
  press('Rename Window sill');
  await waitFor(() => expect(name('sill')).toBe('Piano'));
  expect(progress()).toContain('1 of 2 lines done.');
});

test('a name that is kept is remembered, makes no copy, and can be given up', async () => {
  own([], PLACES);
  await open();
  const { id } = useGame.getState().provenance;
  press('Keep the name Window sill');
  expect(screen.getByText('keeps its name.', { exact: false })).toBeTruthy();
  expect(useGame.getState().provenance.id).toBe(id);
  expect([...(adaptationOf(id)?.kept ?? [])]).toEqual(['["place","sill"]']);
  cleanup();
  useAdapting.setState({ id: undefined });
  await open();
  press('Undo: Window sill keeps its name.');
  expect(screen.getByLabelText(SILL)).toBeTruthy();
  expect(adaptationOf(id)?.kept.size).toBe(0);
});

test('a text that is taken is settled as long as the change stands', async () => {
  own([], PLACES);
  await open();
  type('Text: The clue Slip', 'Look on the window sill.');
  press('Use this text for The clue Slip');
  await waitFor(() => expect(theGame().nodes.get('slip')?.text).toBe('Look on the window sill.'));
  expect(progress()).toContain('1 of 2 lines done.');
  act(() => useGame.getState().undo());
  expect(progress()).toContain('0 of 2 lines done.');
  expect(adaptationOf(useGame.getState().provenance.id)?.kept.size).toBe(0);
  act(() => useGame.getState().redo());
  expect(progress()).toContain('1 of 2 lines done.');
});

test('what is to be bought is on the list, is not there yet, and one undo takes it off again', async () => {
  own([WORD], []);
  await open();
  expect(progress()).toBe('0 of 1 line done. Left: 1 shortage. With everything there it can be won.');
  fireEvent.click(await screen.findByRole('button', { name: /list to buy/, hidden: true }));
  expect(progress()).toBe('The one line is done. With everything there it can be won.');
  const bought = () => useKit.getState().owned.kit.items.filter(({ toBuy = 0 }) => toBuy > 0);
  expect(bought()).toHaveLength(1);
  press(/^Undo: .*is on the list to buy/);
  expect(bought()).toEqual([]);
  expect(useKit.getState().owned.kit.items).toEqual([WORD]);
  expect(progress()).toContain('0 of 1 line done.');
});

test('nothing can be changed in a copy that another window has', async () => {
  own([], PLACES);
  await open();
  press('Rename Window sill');
  await waitFor(() => expect(name('sill')).toBe('Reading bench'));
  press('Undo: Window sill is called Reading bench now.');
  act(() => useGame.getState().setReadOnly(true));
  expect(button('Rename Window sill').disabled).toBe(true);
});
