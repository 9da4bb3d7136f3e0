/** Parts that cannot be had at first, and regions that fail. */
import { act, cleanup, fireEvent, render, renderHook, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { PartView } from '../../../app/parts/PartView.tsx';
import { type Part, part } from '../../../app/parts/part.ts';
import { useTroubleNews } from '../../../app/parts/trouble.ts';
import { useGame } from '../../../app/store/game.ts';
import { PARTS } from '../../../src/words/parts.ts';
import { openGame } from '../open-game.ts';

beforeEach(() => openGame());
afterEach(cleanup);

const CONTENT = { text: 'It is here.' };

/** Comes from the given try on. */
function from(turn: number) {
  const fetching = vi.fn(async () => {
    if (fetching.mock.calls.length < turn) throw new TypeError('Failed to fetch');
    return CONTENT;
  });
  return { fetching, one: part(fetching) };
}

const news = () => renderHook(useTroubleNews).result;

test('a part is fetched once, however often it is asked for', async () => {
  const { fetching, one } = from(1);
  expect(one.now()).toBeUndefined();
  expect(await Promise.all([one.load(), one.ask()])).toEqual([CONTENT, CONTENT]);
  expect(await one.load()).toBe(CONTENT);
  expect(one.now()).toBe(CONTENT);
  expect(fetching).toHaveBeenCalledTimes(1);
});

test('what a person asked for and cannot be had is said, until it is there', async () => {
  const { fetching, one } = from(3);
  const said = news();
  await act(() => one.load());
  expect(said.current).toBeUndefined();
  await act(() => one.ask());
  expect(said.current).toBe(PARTS.lost);
  await act(() => one.ask());
  expect(said.current).toBeUndefined();
  expect(fetching).toHaveBeenCalledTimes(3);
});

test('another part that comes meanwhile does not take it back', async () => {
  const said = news();
  const { one } = from(2);
  await act(() => one.ask());
  await act(() => from(1).one.load());
  expect(said.current).toBe(PARTS.lost);
  await act(() => one.load());
  expect(said.current).toBeUndefined();
});

test('or until the game changes', async () => {
  const said = news();
  await act(() => from(2).one.ask());
  expect(said.current).toBe(PARTS.lost);
  act(() => {
    useGame.getState().apply([{ type: 'move', positions: [['note', { x: 7, y: 7 }]] }]);
  });
  expect(said.current).toBeUndefined();
});

const show = (of: Part<typeof CONTENT>, onLost?: () => void) =>
  render(
    <PartView of={of} {...(onLost && { onLost })}>
      {({ text }) => <p>{text}</p>}
    </PartView>,
  );

test('a region that was opened by a press is closed again', async () => {
  const onLost = vi.fn();
  const said = news();
  const { container } = show(from(2).one, onLost);
  await vi.waitFor(() => expect(onLost).toHaveBeenCalled());
  expect(said.current).toBe(PARTS.lost);
  expect(container.textContent).toBe('');
});

test('another says it in its place, and tries again', async () => {
  show(from(2).one);
  await screen.findByText(PARTS.lost);
  fireEvent.click(screen.getByRole('button', { name: PARTS.again }));
  await screen.findByText(CONTENT.text);
  expect(screen.queryByText(PARTS.lost)).toBeNull();
});

test('it is shown as well when something else has fetched it', async () => {
  const { one } = from(2);
  show(one);
  await screen.findByText(PARTS.lost);
  await act(() => one.load());
  expect(screen.getByText(CONTENT.text)).toBeDefined();
});

let broken = false;

function Content() {
  if (broken) throw new Error('broken');
  return <p>{CONTENT.text}</p>;
}

test('a region that fails takes nothing else with it', async () => {
  const errors = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  broken = true;
  const { one } = from(1);
  await one.load();
  render(
    <>
      <p>all else</p>
      <PartView of={one}>{() => <Content />}</PartView>
    </>,
  );
  expect(screen.getByText('all else')).toBeDefined();
  expect(screen.getByText(PARTS.broken)).toBeDefined();
  broken = false;
  fireEvent.click(screen.getByRole('button', { name: PARTS.again }));
  expect(screen.getByText(CONTENT.text)).toBeDefined();
  errors.mockRestore();
});
