import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import { openGame, past } from '../open-game.ts';
import { node, openForm, openWithLock, type } from './form.tsx';

beforeEach(() => openGame());
afterEach(cleanup);

const hardware = () => {
  const lock = node('lock');
  return lock?.kind === 'fastener' ? lock.hardware : undefined;
};

test('wheels are filled by their number, and gone with it', () => {
  openForm('lock');
  const wheels = screen.getByLabelText('Wheels');
  type(wheels, '4');
  expect(hardware()).toEqual({ wheels: Array.from({ length: 4 }, () => '0123456789') });
  fireEvent.blur(wheels);
  expect(past()).toBe(1);
  type(wheels, '40');
  expect(screen.getByText('Write how many wheels it has, from 1 to 12.')).toBeTruthy();
  expect(hardware()?.wheels).toHaveLength(4);
  type(wheels, '');
  expect(hardware()).toBeUndefined();
});

test('digits, letters or symbols of its own on each wheel', () => {
  openForm('lock');
  type(screen.getByLabelText('Wheels'), '2');
  fireEvent.click(screen.getByLabelText('A to Z'));
  expect(hardware()?.wheels?.[1]).toBe('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
  fireEvent.click(screen.getByLabelText('own'));
  expect(hardware()?.wheels?.[1]).toBe('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
  type(screen.getByLabelText('Wheel 1'), 'ABCDEFGH');
  expect(hardware()?.wheels).toEqual(['ABCDEFGH', 'ABCDEFGHIJKLMNOPQRSTUVWXYZ']);
  type(screen.getByLabelText('Wheel 1'), ' ');
  expect(screen.getByText('A wheel shows at least one thing.')).toBeTruthy();
  expect(hardware()?.wheels?.[0]).toBe('ABCDEFGH');
  fireEvent.click(screen.getByRole('button', { name: 'All as wheel 1' }));
  expect(hardware()?.wheels).toEqual(['ABCDEFGH', 'ABCDEFGH']);
  // A wheel that is added is as the last one.
  type(screen.getByLabelText('Wheels'), '3');
  expect(hardware()?.wheels).toEqual(['ABCDEFGH', 'ABCDEFGH', 'ABCDEFGH']);
});

test('picture wheels begin with what the code shows', () => {
  openWithLock({ type: 'picture', code: 'FOX SUN FOX' });
  openForm('lock');
  type(screen.getByLabelText('Wheels'), '3');
  expect(hardware()?.wheels).toEqual(['FOX SUN', 'FOX SUN', 'FOX SUN']);
  expect(screen.queryByLabelText('0 to 9')).toBeNull();
  type(screen.getByLabelText('Wheel 2'), 'FOX SUN BELL');
  expect(hardware()?.wheels?.[1]).toBe('FOX SUN BELL');
});

test('a dial has numbers, and every lock takes its seconds a try', () => {
  openWithLock({ type: 'dial', code: '32 14 25' });
  openForm('lock');
  expect(screen.queryByLabelText('Wheels')).toBeNull();
  type(screen.getByLabelText('Numbers on the dial, from 0'), '60');
  type(screen.getByLabelText('Seconds that one try takes'), '7,5 s');
  expect(hardware()).toEqual({ marks: 60, trySeconds: 7.5 });
  type(screen.getByLabelText('Seconds that one try takes'), 'long');
  expect(screen.getByText('Write the seconds of one try: 2 or 1.5.')).toBeTruthy();
  expect(hardware()).toEqual({ marks: 60, trySeconds: 7.5 });
  expect(screen.getByText('60 numbers, 7.5 s a try')).toBeTruthy();
});

test('a latch has nothing to say of but the joy of opening', () => {
  openWithLock({ type: 'latch', code: '' });
  openForm('lock');
  expect(screen.queryByLabelText('Seconds that one try takes')).toBeNull();
  fireEvent.click(screen.getByLabelText('There for the joy of opening'));
  expect(node('lock')).toMatchObject({ forFun: true });
  act(() => useGame.getState().undo());
  expect(node('lock') && 'forFun' in (node('lock') ?? {})).toBe(false);
});

test('how the code stands on paper and how the lock is set is told of a lock that takes one', () => {
  openWithLock({ type: 'direction', code: 'UDDR' });
  openForm('lock');
  expect(screen.getByText(/^Arrows in the order of the moves/)).toBeTruthy();
  expect(screen.getByText(/leaflet decides/)).toBeTruthy();
  cleanup();
  openWithLock({ type: 'latch' });
  openForm('lock');
  expect(screen.queryByText(/leaflet decides/)).toBeNull();
});
