import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { JUDGING } from '../../../app/judged/judged.ts';
import { Panel } from '../../../app/panel/Panel.tsx';
import { usePanel } from '../../../app/panel/topics.ts';
import { Verdict } from '../../../app/shell/Verdict.tsx';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { gameOf, LINKS, NODES, openGame, theGame } from '../open-game.ts';

beforeAll(async () => void (await JUDGING.load()));
beforeEach(() => {
  openGame();
  useView.getState().setHeat(false);
  usePanel.setState({ open: false, topic: undefined, asked: 0, marked: undefined });
});
afterEach(cleanup);

const verdict = () => screen.getByRole('region', { name: 'Can it be won?' }).textContent ?? '';

/** The key of the tin's lock lies in the tin. */
function lockedIn(): void {
  openGame(
    gameOf(
      [
        ...NODES.map((node) => (node.kind === 'fastener' ? { ...node, type: 'key', code: '' } : node)),
        { id: 'key', kind: 'key', name: 'Red tag', in: 'tin' },
      ],
      [...LINKS.filter((link) => link.id !== 'l2'), { id: 'l9', from: 'key', to: 'lock' }],
    ),
  );
}

describe('the verdict', () => {
  test('follows every edit, there and back', () => {
    render(<Verdict />);
    expect(verdict()).toContain('It can be won.');
    act(() => void useGame.getState().apply([{ type: 'unlink', ids: ['l2'] }]));
    expect(verdict()).toContain('It cannot be won.');
    act(() => useGame.getState().undo());
    expect(verdict()).toContain('It can be won.');
  });

  test('its words lead to what they count', () => {
    render(
      <>
        <Verdict />
        <Panel />
      </>,
    );
    useView.getState().select(['note']);
    fireEvent.click(screen.getByRole('button', { name: /^\d+ steps$/ }));
    expect(useView.getState().nodes.size).toBe(0);
    expect(document.activeElement?.textContent).toBe('Order of play');
    expect(usePanel.getState().open).toBe(true);
    fireEvent.click(screen.getByRole('button', { name: /of 40 minutes$/ }));
    expect(useView.getState().heat).toBe(true);
  });

  test('a name in it leads to the thing', () => {
    lockedIn();
    render(<Verdict />);
    fireEvent.click(screen.getByRole('button', { name: 'Red tag' }));
    expect([...useView.getState().nodes]).toEqual(['key']);
    expect(useView.getState().shown).toBeGreaterThan(0);
  });

  test('answers for what is lifted, and changes nothing', async () => {
    render(<Verdict />);
    const before = theGame();
    act(() => useView.getState().lift('note'));
    await waitFor(() => expect(verdict()).toContain('Without Torn note'));
    expect(theGame()).toBe(before);
    act(() => useView.getState().lift(undefined));
    expect(verdict()).toContain('It can be won.');
  });

  test('says why a change was refused until the next one', () => {
    render(<Verdict />);
    act(() => void useGame.getState().apply([{ type: 'place', ids: ['tin'], holder: 'tin' }]));
    expect(screen.getByRole('alert').textContent).toContain('cannot lie inside itself');
    act(() => void useGame.getState().apply([{ type: 'rename', id: 'tin', name: 'Tin' }]));
    expect(screen.getByRole('alert').textContent).toBe('');
  });

  test('is spoken politely', () => {
    render(<Verdict />);
    expect(screen.getByText('It can be won.').closest('[aria-live]')?.getAttribute('aria-live')).toBe(
      'polite',
    );
  });
});

describe('the panel', () => {
  test('tells what stops the game, mends it at a press, and the mend can be undone', () => {
    lockedIn();
    render(<Panel />);
    expect(screen.getByRole('heading', { name: 'Stops the game' })).toBeTruthy();
    const [mend] = screen.getAllByRole('button', { name: /^Put it in/ });
    if (!mend) throw new Error('a mend');
    fireEvent.click(mend);
    expect(screen.queryByRole('heading', { name: 'Stops the game' })).toBeNull();
    act(() => useGame.getState().undo());
    expect(screen.getByRole('heading', { name: 'Stops the game' })).toBeTruthy();
  });

  test('has no form for what an undo took away', () => {
    render(<Panel />);
    act(() => useView.getState().select(['gone']));
    expect(screen.getByRole('heading', { name: 'Order of play' })).toBeTruthy();
  });

  test('shows what a finding speaks of', () => {
    lockedIn();
    render(<Panel />);
    const [show] = screen.getAllByRole('button', { name: 'Show' });
    if (!show) throw new Error('a finding');
    fireEvent.click(show);
    expect(useView.getState().nodes.has('key')).toBe(true);
  });

  test('lists the order of play, points at a step and goes there', () => {
    render(<Panel />);
    const steps = screen.getAllByRole('listitem').map((line) => line.textContent);
    expect(steps.map((line) => line?.[0])).toEqual(['1', '2', '3']);
    const first = screen.getByRole('button', { name: /Window sill/ });
    fireEvent.focus(first);
    expect([...useView.getState().pointed]).toEqual(['sill']);
    fireEvent.blur(first);
    expect(useView.getState().pointed.size).toBe(0);
    fireEvent.click(first);
    expect([...useView.getState().nodes]).toEqual(['sill']);
  });

  test('marks the longest chain in the list', () => {
    render(<Panel />);
    const chain = screen.getByRole('button', { name: 'Longest chain: 3 steps one after another' });
    fireEvent.click(chain);
    expect(chain.getAttribute('aria-pressed')).toBe('true');
    expect(screen.getAllByText(', in the chain')).toHaveLength(3);
  });

  test('without what is lifted: what falls, what to do in class, what is left', async () => {
    useView.getState().lift('note');
    render(<Panel />);
    expect(await screen.findByRole('heading', { name: 'Without Torn note' })).toBeTruthy();
    expect(screen.getByText(/Give the team a copy/)).toBeTruthy();
    expect(screen.getByText('stops after 1')).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Put it back' }));
    expect(useView.getState().lifted).toBeUndefined();
  });
});
