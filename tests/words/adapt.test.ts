import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/kit/adapt/plan.ts';
import { difference, progressSentence, reasonSentence } from '../../src/words/adapt.ts';
import { plain } from '../../src/words/sentence.ts';
import { gameOf } from '../game-of.ts';

describe('the words of an adaptation', () => {
  test('a difference is shown with a little of what stands around it', () => {
    const before = 'Walk along the wall until you come to the art trolley, and look on the lower tray of it.';
    const shown = difference(before, before.replace('art trolley', 'sink'));
    expect(shown.before).toMatch(/^….*art trolley.*…$/u);
    expect(shown.after).toMatch(/^….*the sink.*…$/u);
    expect(shown.before.length).toBeLessThan(before.length);
  });

  test('short texts are shown whole', () => {
    expect(difference('Red tag', 'Blue tag')).toEqual({ before: 'Red tag', after: 'Blue tag' });
    expect(difference('', 'Sink')).toEqual({ before: '', after: 'Sink' });
  });

  const spare = (state: Line['state']): Line => ({
    sort: 'spare',
    key: state,
    state,
    nodes: ['a'],
    why: 'fun',
    minutes: 0,
    steps: 0,
  });
  const text = (key: string, state: Line['state']): Line => ({
    sort: 'reread',
    key,
    state,
    of: 'a',
    reasons: [],
    passages: [],
  });

  const short = (state: Line['state']): Line => ({
    sort: 'short',
    key: `short ${state}`,
    state,
    shortage: { part: 'lock', node: 'a', copies: 4, missing: 4 },
  });
  const ALL = { kit: true, room: true };

  test('progress counts what has to be settled, and not what may be left out', () => {
    expect(
      progressSentence({ lines: [text('a', 'open'), text('b', 'kept'), spare('open')] }, true, ALL),
    ).toBe('1 of 2 lines done. Left: 1 text. It can be won.');
    expect(progressSentence({ lines: [text('a', 'done'), text('b', 'kept')] }, false, ALL)).toBe(
      'All 2 lines done. It cannot be won yet.',
    );
    expect(progressSentence({ lines: [text('a', 'done')] }, true, ALL)).toBe(
      'The one line is done. It can be won.',
    );
  });

  test('only what was compared is said to fit', () => {
    const said = (kit: boolean, room: boolean) =>
      progressSentence({ lines: [spare('open')] }, true, { kit, room });
    expect(said(true, true)).toBe('It fits my kit and my room as it is. It can be won.');
    expect(said(true, false)).toBe(
      'It fits my kit as it is. My room is empty: no places compared. It can be won.',
    );
    expect(said(false, true)).toBe(
      'It fits my room as it is. My kit is empty: no locks compared. It can be won.',
    );
    expect(said(false, false)).toBe('Nothing compared yet: my kit and my room are empty. It can be won.');
  });

  test('while something is short, it can be won only with everything there', () => {
    expect(progressSentence({ lines: [short('open'), text('a', 'open')] }, true, ALL)).toBe(
      '0 of 2 lines done. Left: 1 shortage and 1 text. With everything there it can be won.',
    );
    // What is on the list to buy is not there yet.
    expect(progressSentence({ lines: [short('kept')] }, true, ALL)).toBe(
      'The one line is done. With everything there it can be won.',
    );
    expect(progressSentence({ lines: [short('done')] }, true, ALL)).toBe(
      'The one line is done. It can be won.',
    );
  });

  test('an answer that stands for a place is told with the name that it has now', () => {
    const game = (name: string) =>
      gameOf([
        { id: 'globe', kind: 'place', name },
        { id: 'walk', kind: 'puzzle', name: 'The walk', answer: 'GLOBE' },
      ]);
    const reason = { reason: 'answer', thing: 'globe', answer: 'GLOBE' } as const;
    const said = (now: string) => plain(reasonSentence(game('Globe'), game(now), 'walk', reason));
    const ends = ' Under another name, whoever solves it would look for what is not there.';
    expect(said('Globe')).toBe(`The puzzle The walk gives GLOBE, which stands for Globe.${ends}`);
    expect(said('Piano')).toBe(
      `The puzzle The walk gives GLOBE, which stands for Globe, called Piano now.${ends}`,
    );
  });
});
