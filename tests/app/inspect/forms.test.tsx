import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import Inspector from '../../../app/inspect/Inspector.tsx';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { gameOf, LINKS, NODES, openGame, past, theGame } from '../open-game.ts';

beforeEach(() => openGame());
afterEach(cleanup);

function openForm(...ids: string[]): void {
  useView.getState().select(ids);
  render(<Inspector />);
}

function type(field: HTMLElement, text: string): void {
  fireEvent.change(field, { target: { value: text } });
}

const node = (id: string) => theGame().nodes.get(id);

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

describe('a lock', () => {
  test('says where its code comes from, and changes it', () => {
    openForm('lock');
    expect(screen.getByText(/comes from/).textContent).toBe('comes from Add the rows, all three');
    fireEvent.click(screen.getByRole('button', { name: /^Code 4 7 2/ }));
    type(screen.getByRole('textbox', { name: 'Code' }), '  513 ');
    expect(node('lock')).toMatchObject({ code: '  513 ' });
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
