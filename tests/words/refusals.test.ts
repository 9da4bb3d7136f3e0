import { describe, expect, it } from 'vitest';
import type { Edit, EditRefusal } from '../../src/game/edits/edit.ts';
import { applyEdits } from '../../src/game/edits/index.ts';
import { editRefusalSentence, linkRefusalSentence } from '../../src/words/refusals.ts';
import { plain } from '../../src/words/sentence.ts';
import { winnable } from '../findings/small-games.ts';

const game = winnable();

function refusalOf(edit: Edit): EditRefusal {
  const result = applyEdits(game, [edit]);
  if (result.ok) throw new Error('was not refused');
  return result.refusal;
}

describe('why an arrow may not be drawn', () => {
  it.each([
    [
      'tag',
      'chest',
      'A box opens by its locks: lead the arrow to one of them. What lies in the box is dragged into it.',
    ],
    [
      'tag',
      'shelf',
      'A key opens a lock, or is used in a puzzle. What is hidden in a place is dragged into it.',
    ],
    ['tag', 'note', 'A key opens a lock, or is used in a puzzle.'],
    ['map', 'sums', 'The prize is the end. Nothing comes after it.'],
    ['padlock', 'tag', 'From a lock an arrow leads only to a puzzle. What it shuts lies in its box.'],
  ])('from %s to %s', (from, to, text) => {
    expect(plain(linkRefusalSentence(game, from, to, 'kinds'))).toBe(text);
  });

  it('when it is there already, or leads to itself', () => {
    expect(plain(linkRefusalSentence(game, 'note', 'sums', 'twice'))).toBe(
      'There is an arrow from note to sums already.',
    );
    expect(plain(linkRefusalSentence(game, 'sums', 'sums', 'self'))).toBe('Nothing is needed for itself.');
  });
});

describe('why an edit is refused', () => {
  it.each<[string, Edit]>([
    [
      'A hiding place is part of the room. It lies in nothing.',
      { type: 'place', ids: ['shelf'], holder: 'tin' },
    ],
    [
      'A puzzle is thinking, not a thing. What it needs and what it gives can lie in a box.',
      { type: 'place', ids: ['sums'], holder: 'tin' },
    ],
    ['A lock sits on a box. Let it go on one.', { type: 'place', ids: ['padlock'], holder: 'tin' }],
    ['Only a hiding place or a box holds things.', { type: 'place', ids: ['tag'], holder: 'sums' }],
    ['tin cannot lie inside itself.', { type: 'place', ids: ['tin'], holder: 'tin' }],
    ['This is no longer there.', { type: 'rename', id: 'nobody', name: 'x' }],
    [
      'How many are needed is a whole number from 1 up, or all of them.',
      { type: 'setFields', id: 'sums', fields: { need: 0 } },
    ],
    [
      'The three times go from the shortest to the longest, none below nothing or above 1,000,000 minutes.',
      { type: 'setFields', id: 'sums', fields: { minutes: { low: 3, likely: 2, high: 4 } } },
    ],
  ])('%s', (text, edit) => {
    expect(plain(editRefusalSentence(game, refusalOf(edit)))).toBe(text);
  });
});
