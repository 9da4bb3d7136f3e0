/** My kit as a teacher sees it, with the real stores. */
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import KitDialog from '../../../app/kit/KitDialog.tsx';
import { startKit } from '../../../app/kit/keeping.ts';
import { useKit } from '../../../app/kit/kit-state.ts';
import { useKitShown } from '../../../app/kit/open.ts';
import { NOTHING_OWNED } from '../../../app/kit/owned.ts';
import { useGame } from '../../../app/store/game.ts';
import { gameOf, LINKS, NODES, openGame, theGame } from '../open-game.ts';

const kit = () => useKit.getState().owned.kit;
const counts = () => kit().items.map(({ count }) => count);
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const go = (name: string) => fireEvent.click(screen.getByRole('tab', { name }));
const type = (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  fireEvent.change(field, { target: { value: text } });
  fireEvent.blur(field);
};
const undo = () => fireEvent.keyDown(document.body, { key: 'z', ctrlKey: true });
const shown = (region: string) => within(screen.getByRole('region', { name: region }));

beforeEach(async () => {
  await startKit();
  useKit.setState({ owned: NOTHING_OWNED, past: [], future: [], news: undefined });
  useKitShown.setState({ open: true, page: undefined });
  openGame();
});
afterEach(cleanup);

const open = () => render(<KitDialog />);

test('an empty kit opens where it is filled, and a tap is one more', () => {
  open();
  expect(screen.getByRole('tab', { selected: true }).textContent).toBe('What I have');
  press('number lock, 3 wheels');
  press(/^number lock, 3 wheels/);
  press('UV lamp');
  expect(screen.getByRole('tab', { selected: true }).textContent).toBe('What I have');
  expect(counts()).toEqual([2, 1]);
  type('How many: number lock, 3 wheels', '12');
  press('One fewer: number lock, 3 wheels');
  expect(counts()).toEqual([11, 1]);
  type('How many: number lock, 3 wheels', 'a dozen');
  expect(counts()).toEqual([11, 1]);
  undo();
  undo();
  expect(counts()).toEqual([2, 1]);
  press('Remove UV lamp');
  expect(counts()).toEqual([2]);
  undo();
  expect(counts()).toEqual([2, 1]);
});

test('details: what is plain is taken, what is not says why', () => {
  open();
  press('word lock, 4 wheels');
  press('Details: word lock, 4 wheels');
  type('What each wheel shows', 'ABCD\n\n EFGH \nIJKL\nMNOP');
  type('Shackle, mm thick', '6,5 mm');
  expect(kit().items[0]).toMatchObject({ wheels: ['ABCD', 'EFGH', 'IJKL', 'MNOP'], shackleMm: 6.5 });
  type('Shackle, mm thick', 'thick');
  expect(screen.getByText('Millimetres, such as 6 or 6.5, or nothing.')).toBeTruthy();
  type('Shackle, mm thick', '');
  expect(kit().items[0]).not.toHaveProperty('shackleMm');
  type('Wheels', '5');
  expect(kit().items[0]).toMatchObject({ wheels: ['ABCD', 'EFGH', 'IJKL', 'MNOP', 'MNOP'] });
  type('Label to find it by', 'blue');
  expect(shown('In my kit').getByText('blue')).toBeTruthy();
  // It is no longer the plain one that the plate adds to.
  press('word lock, 4 wheels');
  expect(counts()).toEqual([1, 1]);
});

test('places in the order of the walk, moved one up and one down', () => {
  open();
  go('My room');
  for (const name of ['Shelf', 'Globe', 'Coats']) {
    type('Add a hiding place', name);
    fireEvent.submit(screen.getByLabelText('Add a hiding place'));
  }
  press('Earlier on the walk: Coats');
  press('Later on the walk: Shelf');
  const walk = () => screen.getAllByLabelText(/^Name of place/).map((field) => field.getAttribute('value'));
  expect(walk()).toEqual(['Coats', 'Shelf', 'Globe']);
  expect(screen.getByText('Shelf is number 2 on the walk.')).toBeTruthy();
  fireEvent.click(screen.getByLabelText('Off limits: Coats'));
  type('Zone of Globe', 'Corridor');
  expect(kit().places.map(({ name, order, zone, offLimits }) => [name, order, zone, offLimits])).toEqual([
    ['Shelf', 2, undefined, undefined],
    ['Globe', 3, 'Corridor', undefined],
    ['Coats', 1, undefined, true],
  ]);
  undo();
  undo();
  undo();
  expect(walk()).toEqual(['Shelf', 'Coats', 'Globe']);
});

test('for this game: what is short, a remedy at a press, and one undo takes it back', async () => {
  open();
  press('number lock, 4 wheels');
  go('For this game');
  expect(screen.getByText('4 locks short for 4 teams.')).toBeTruthy();
  go('What I have');
  press('number lock, 3 wheels');
  go('For this game');
  expect(screen.getByText('3 locks short for 4 teams.')).toBeTruthy();
  expect(screen.getByText('1 × number lock, 3 wheels, 3 short')).toBeTruthy();
  const before = theGame();
  fireEvent.click(await screen.findByRole('button', { name: 'Let the teams share one box (Green tin)' }));
  expect(screen.getByText('Nothing is short for 4 teams.')).toBeTruthy();
  expect(screen.getByText('It can be won.')).toBeTruthy();
  expect(document.activeElement?.textContent).toBe('Nothing is short for 4 teams.');
  undo();
  expect(theGame()).toEqual(before);
  expect(screen.getByText('3 locks short for 4 teams.')).toBeTruthy();
});

test('what is to be bought is put on a list and is short until it is there', async () => {
  open();
  press('number lock, 3 wheels');
  go('For this game');
  fireEvent.click(await screen.findByRole('button', { name: /list to buy/ }));
  expect(screen.getByText('3 locks short for 4 teams.')).toBeTruthy();
  expect(await screen.findByText(/What is missing is on the list to buy/)).toBeTruthy();
  go('What I have');
  press('Bought: number lock, 3 wheels');
  expect(counts()).toEqual([4]);
  go('For this game');
  expect(screen.getByText('Nothing is short for 4 teams.')).toBeTruthy();
});

test('another real lock is chosen for one team, stays, and is given up', async () => {
  openGame(
    gameOf(
      NODES.map((node) => (node.id === 'tin' ? { ...node, shared: 2 } : node)),
      LINKS,
    ),
  );
  open();
  press('number lock, 3 wheels');
  press(/^number lock, 3 wheels/);
  press('Details: number lock, 3 wheels');
  type('Label to find it by', 'red');
  press(/^number lock, 3 wheels/);
  press(/^number lock, 3 wheels/);
  go('For this game');
  expect(screen.getByText('2 × red')).toBeTruthy();
  press('Choose for Number lock on Green tin');
  fireEvent.change(screen.getByLabelText('Number 2 of 2'), { target: { value: kit().items[1]?.id } });
  expect(screen.getByText('1 × red, 1 × number lock, 3 wheels')).toBeTruthy();
  undo();
  expect(screen.getByText('2 × red')).toBeTruthy();
  fireEvent.change(screen.getByLabelText('Number 2 of 2'), { target: { value: kit().items[1]?.id } });
  go('What I have');
  press('Remove number lock, 3 wheels');
  go('For this game');
  expect(screen.getByText(/is not kept at/)).toBeTruthy();
  await waitFor(() => expect(screen.getByText('2 × red')).toBeTruthy());
});

test('the number of teams is that of the lesson, and a game of another window is left alone', () => {
  open();
  press('number lock, 3 wheels');
  go('For this game');
  press('One team fewer');
  expect(screen.getByText('2 locks short for 3 teams.')).toBeTruthy();
  expect(theGame().head.lesson).toEqual({ teams: 3 });
  undo();
  expect(screen.getByText('3 locks short for 4 teams.')).toBeTruthy();
  fireEvent.click(screen.getByRole('tab', { name: 'For this game' }));
  useGame.getState().setReadOnly(true);
  return waitFor(() =>
    expect(screen.getByRole<HTMLButtonElement>('button', { name: 'One team fewer' }).disabled).toBe(true),
  );
});
