import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/kit/adapt/plan.ts';
import { difference, progressSentence } from '../../src/words/adapt.ts';

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

  test('progress counts what has to be settled, and not what may be left out', () => {
    expect(progressSentence({ lines: [spare('open')] }, true)).toBe(
      'It fits my kit and my room as it is. It can be won.',
    );
    expect(progressSentence({ lines: [text('a', 'open'), text('b', 'kept'), spare('open')] }, true)).toBe(
      '1 of 2 done; 1 text to read. It can be won.',
    );
    expect(progressSentence({ lines: [text('a', 'done'), text('b', 'kept')] }, false)).toBe(
      'All 2 lines done: the game is mine. It cannot be won yet.',
    );
    expect(progressSentence({ lines: [text('a', 'done')] }, true)).toBe(
      'All done: the game is mine. It can be won.',
    );
  });
});
