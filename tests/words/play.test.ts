/** What is said of a minute of a lesson. */
import { describe, expect, test } from 'vitest';
import type { GameNode } from '../../src/game/model.ts';
import {
  endText,
  minuteAloud,
  momentText,
  openingText,
  type PlayedMinute,
  waitsForName,
} from '../../src/words/play.ts';
import { gameOf } from '../game-of.ts';

const NODES: readonly GameNode[] = [
  { id: 'sill', kind: 'place', name: 'Window sill' },
  { id: 'shelf', kind: 'place', name: 'Low shelf' },
  { id: 'bearing', kind: 'puzzle', name: 'Take the bearing' },
  { id: 'flags', kind: 'puzzle', name: 'Signal flags' },
  { id: 'chest', kind: 'container', name: 'Chest' },
  { id: 'lock', kind: 'fastener', name: 'Lock', on: 'chest', type: 'key' },
  { id: 'lamp', kind: 'prize', name: 'Lamp', in: 'chest' },
  { id: 'lens', kind: 'tool', name: 'Hand lens', shared: 1 },
];
const game = gameOf(NODES);

const quiet: PlayedMinute = {
  minute: 11,
  bell: 40,
  team: 4,
  waiting: 0,
  working: [],
  checking: [],
  open: [],
  queueing: [],
  prizes: undefined,
};
const says = (at: Partial<PlayedMinute>) => minuteAloud(game, { ...quiet, ...at });

describe('the sentence of a minute', () => {
  test('says who works at what, who waits, and what can be tried', () => {
    expect(says({ working: [{ node: 'bearing', pupils: 3 }], waiting: 1, open: ['lock'] })).toBe(
      'Minute 11: three pupils work on Take the bearing, one waits; the key lock on Chest can be tried',
    );
    expect(
      says({
        working: [
          { node: 'sill', pupils: 3 },
          { node: 'lock', pupils: 1 },
        ],
        open: ['shelf'],
      }),
    ).toBe(
      'Minute 11: three pupils search Window sill, one opens the key lock on Chest; Low shelf can be searched',
    );
  });

  test('counts where much happens', () => {
    const working = ['sill', 'shelf', 'bearing', 'flags'].map((node) => ({ node, pupils: 1 }));
    expect(says({ working, open: ['lock', 'sill', 'flags'] })).toBe(
      'Minute 11: one pupil searches Window sill, one searches Low shelf, two are at 2 other steps; the key lock on Chest and 2 more can be tried',
    );
  });

  test('says when all wait, and for whom', () => {
    expect(says({ waiting: 4 })).toBe('Minute 11: all four wait');
    expect(says({ team: 1, waiting: 1 })).toBe('Minute 11: the pupil waits');
    expect(says({ team: 24, waiting: 13 })).toBe('Minute 11: 13 wait');
    expect(says({ waiting: 4, checking: ['bearing'] })).toBe(
      'Minute 11: Take the bearing waits for the teacher, all four wait',
    );
  });

  test('says what other teams have', () => {
    const lens = { node: 'flags', thing: 'lens' };
    expect(says({ team: 6, waiting: 6, queueing: [lens] })).toBe('Minute 11: all six wait for Hand lens');
    const working = [{ node: 'bearing', pupils: 3 }];
    expect(says({ working, waiting: 1, queueing: [lens, { ...lens, node: 'lock' }], open: ['shelf'] })).toBe(
      'Minute 11: three pupils work on Take the bearing, one waits for Hand lens; Low shelf can be searched',
    );
    expect(says({ working, queueing: [lens], open: ['shelf'] })).toBe(
      'Minute 11: three pupils work on Take the bearing; Low shelf can be searched, Signal flags waits for Hand lens',
    );
    expect(says({ working, queueing: [{ node: 'sill', thing: 'sill' }] })).toBe(
      'Minute 11: three pupils work on Take the bearing; Window sill is with other teams',
    );
  });

  test('says the end, and that the bell has gone', () => {
    expect(says({ minute: 21.2, prizes: ['lamp'] })).toBe('Minute 21.2: Lamp is reached');
    expect(says({ minute: 43, waiting: 2 })).toBe('Minute 43, after the bell: two wait');
    expect(says({ minute: 40, waiting: 2 })).toBe('Minute 40: two wait');
  });
});

test('each thing has a word for how it stands', () => {
  expect(momentText('clue', 'unseen', 0)).toBe('not yet seen');
  expect(momentText('container', 'shut', 0)).toBe('shut');
  expect(momentText('puzzle', 'shut', 0)).toBe('not yet');
  expect(momentText('fastener', 'open', 0)).toBe('can be tried');
  expect(momentText('puzzle', 'working', 3)).toBe('3 pupils');
  expect(momentText('place', 'working', 1)).toBe('1 pupil');
  expect(momentText('container', 'done', 0)).toBe('open');
  expect(momentText('place', 'done', 3)).toBe('done');
  expect(momentText('puzzle', 'queueing', 0, 'Hand lens')).toBe('waits for Hand lens');
  expect(waitsForName(game, { node: 'flags', thing: 'lens' })).toBe('Hand lens');
  // The lock of a shared box, and a place that is shared itself.
  expect(waitsForName(game, { node: 'lock', thing: 'chest' })).toBe('');
  expect(momentText('fastener', 'queueing', 0, '')).toBe('with others');
});

test('a bar says when its box opens here and elsewhere, also where it is not always opened', () => {
  const tin = { name: 'Green tin', minute: 8.52, low: 7, high: 11.04 };
  expect(openingText(tin)).toBe('Green tin opens at minute 8.5; in 8 lessons in 10 from 7 to 11');
  expect(openingText({ ...tin, minute: undefined, high: undefined })).toBe(
    'Green tin stays shut; in 8 lessons in 10 from 7 on, or never',
  );
  expect(endText(tin)).toBe('It ends at minute 8.5; in 8 lessons in 10 from 7 to 11');
});
