import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test } from 'vitest';
import LessonForm, { readLessonMinutes } from '../../../app/shell/LessonForm.tsx';
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
  type('Teams, each with its own set', '0');
  expect(screen.getByText('Write a whole number from 1.')).toBeTruthy();
  expect(theGame().head.lesson).toEqual({ pupils: 18 });
  type('Hints a team may ask for', '0');
  expect(theGame().head.lesson).toEqual({ pupils: 18, hints: 0 });
  type('Pupils', '');
  expect(theGame().head.lesson).toEqual({ hints: 0 });
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
  expect(screen.getByLabelText('Pupils').closest('fieldset')?.disabled).toBe(true);
});
