import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import LessonForm, { readLessonMinutes } from '../../../app/shell/LessonForm.tsx';
import { LessonLine } from '../../../app/shell/LessonLine.tsx';
import { Title } from '../../../app/shell/Title.tsx';
import { useGame } from '../../../app/store/game.ts';
import { openGame, past, theGame } from '../open-game.ts';

beforeEach(() => openGame());
afterEach(cleanup);

const type = (label: string, text: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value: text } });

test('the title is changed in place, as one undo', () => {
  render(<Title />);
  fireEvent.click(screen.getByRole('button', { name: 'Game without a title: change the title' }));
  const field = screen.getByRole('textbox', { name: 'Title of the game' });
  fireEvent.change(field, { target: { value: 'The l' } });
  fireEvent.change(field, { target: { value: 'The lamp' } });
  fireEvent.blur(field);
  expect(screen.getByRole('heading').textContent).toBe('The lamp');
  expect(past()).toBe(1);
});

test('the lesson: only what is written is stored, the usual stands behind', () => {
  render(<LessonForm onClose={() => undefined} />);
  expect(screen.getByLabelText<HTMLInputElement>('Pupils').placeholder).toBe('24');
  type('Pupils', '18');
  expect(theGame().head.lesson).toEqual({ pupils: 18 });
  type('Hints a team may ask for', '0');
  expect(theGame().head.lesson).toEqual({ pupils: 18, hints: 0 });
  type('Pupils', '');
  type('Adults in the room', '2');
  type('With a hint a step is done in', '90 s');
  type('A check by the teacher takes', '0');
  expect(theGame().head.lesson).toEqual({ hints: 0, adults: 2, hintMinutes: 1.5, checkMinutes: 0 });
});

test('nobody and no time are told in a sentence at the field, typed or out of a file', () => {
  render(<LessonForm onClose={() => undefined} />);
  type('Adults in the room', '0');
  expect(screen.getByText(/^Without an adult no hint is given/)).toBeTruthy();
  type('Adults in the room', '');
  expect(screen.queryByText(/^Without an adult/)).toBeNull();
  type('Teams', '0');
  expect(screen.getByText(/^Nobody plays in 0 teams/)).toBeTruthy();
  type('Play', '0');
  expect(screen.getByText(/^In 0 minutes nobody can play/)).toBeTruthy();
  expect(theGame().head.lesson).toEqual({});
  cleanup();
  openGame({ ...theGame(), head: { lesson: { pupils: 0, teams: 0, minutes: 0 } } });
  render(<LessonForm onClose={() => undefined} />);
  expect(screen.getByText('The figures count one team.')).toBeTruthy();
  expect(screen.getByText(/^Nobody plays with 0 pupils/)).toBeTruthy();
  expect(screen.getByText(/^Nobody plays in 0 teams/)).toBeTruthy();
  expect(screen.getByText(/^In 0 minutes nobody can play/)).toBeTruthy();
});

test('a value that is wrong is told as long as it stands, with what counts meanwhile, and Done leads to it', () => {
  const close = vi.fn();
  openGame({ ...theGame(), head: { lesson: { pupils: 18, hintMinutes: 1 } } });
  render(<LessonForm onClose={close} />);
  type('Pupils', '0');
  type('Teams', '3');
  const pupils = screen.getByLabelText<HTMLInputElement>('Pupils');
  fireEvent.blur(pupils);
  const told = 'Nobody plays with 0 pupils. Write at least 1. Until then it is 18.';
  expect(screen.getByText(told)).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Done' }));
  expect(close).not.toHaveBeenCalled();
  expect(document.activeElement).toBe(pupils);
  expect(screen.getByText(told)).toBeTruthy();
  expect(theGame().head.lesson).toEqual({ pupils: 18, teams: 3, hintMinutes: 1 });
  type('Pupils', '20');
  fireEvent.click(screen.getByRole('button', { name: 'Done' }));
  expect(close).toHaveBeenCalledOnce();
});

test('a value that is wrong in a file is not said to count', () => {
  openGame({ ...theGame(), head: { lesson: { pupils: 0 } } });
  render(<LessonForm onClose={() => undefined} />);
  expect(screen.getByText('Nobody plays with 0 pupils. Write at least 1.')).toBeTruthy();
});

test('how the teams come out, and more teams than pupils', () => {
  render(<LessonForm onClose={() => undefined} />);
  expect(screen.getByText('Teams of 6.')).toBeTruthy();
  type('Pupils', '26');
  expect(screen.getByText('Teams of 6 and 7.')).toBeTruthy();
  type('Pupils', '3');
  expect(screen.getByText(/^There are 4 teams and only 3 pupils: some teams have nobody/)).toBeTruthy();
  expect(theGame().head.lesson).toEqual({ pupils: 3 });
});

test('what stands beside the play adds up and takes nothing from it', () => {
  render(<LessonForm onClose={() => undefined} />);
  expect(screen.getByText('5 + 40 + 5 + 5: 55 minutes in all; the game has 40 of them.')).toBeTruthy();
  type('Talk before', '10');
  type('Clearing up', '0');
  type('Talk after', '2:30');
  expect(screen.getByText('10 + 40 + 2.5 + 0: 52.5 minutes in all; the game has 40 of them.')).toBeTruthy();
  expect(theGame().head.lesson).toEqual({ talkBefore: 10, clearUp: 0, talkAfter: 2.5 });
});

test('the head says that each team has its own set only as long as that is so', () => {
  const line = () => screen.getByTitle('Change the lesson').textContent;
  render(<LessonLine />);
  expect(line()).toBe('24 pupils in 4 teams, each with its own set · 40 minutes');
  act(() => void useGame.getState().apply([{ type: 'setFields', id: 'tin', fields: { shared: 2 } }]));
  expect(line()).toBe('24 pupils in 4 teams · 40 minutes');
  act(() => void useGame.getState().apply([{ type: 'leaveOut', ids: ['tin'], leftOut: true }]));
  expect(line()).toBe('24 pupils in 4 teams, each with its own set · 40 minutes');
});

test('the minutes of a lesson', () => {
  expect(readLessonMinutes('45')).toEqual({ value: 45 });
  expect(readLessonMinutes('')).toEqual({ value: undefined });
  expect(readLessonMinutes('0')).toHaveProperty('wrong');
  expect(readLessonMinutes('long')).toHaveProperty('wrong');
});

test('objectives are added, written and removed', () => {
  render(<LessonForm onClose={() => undefined} />);
  fireEvent.click(screen.getByRole('button', { name: 'Add an objective' }));
  type('Objective 1', 'Read a scale');
  type('Its code in the curriculum, objective 1', 'M4');
  expect(theGame().head.objectives).toMatchObject([{ text: 'Read a scale', code: 'M4' }]);
  type('Its code in the curriculum, objective 1', '');
  expect(theGame().head.objectives?.[0]).not.toHaveProperty('code');
  fireEvent.click(screen.getByRole('button', { name: 'Remove objective 1' }));
  expect(theGame().head.objectives).toBeUndefined();
});

test('the lesson can be read and not changed while another window edits', () => {
  useGame.getState().setReadOnly(true);
  render(<LessonForm onClose={() => undefined} />);
  expect(screen.getByLabelText('Pupils').closest<HTMLFieldSetElement>('.lesson-form')?.disabled).toBe(true);
});
