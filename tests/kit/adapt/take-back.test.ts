import { expect, test } from 'vitest';
import type { Edit } from '../../../src/game/edits/edit.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import type { Game } from '../../../src/game/model.ts';
import { takeBack } from '../../../src/kit/adapt/take-back.ts';
import { gameOf } from '../../game-of.ts';

function edited(game: Game, edits: readonly Edit[] | undefined): Game {
  const result = applyEdits(game, edits ?? []);
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.game;
}

const GAME = edited(
  gameOf(
    [
      { id: 'sum', kind: 'puzzle', answer: '47' },
      { id: 'tin', kind: 'container' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '472' },
    ],
    ['sum>lock'],
  ),
  [{ type: 'setLink', id: 'sum>lock', at: [1, 2] }],
);

test('a link that was changed or removed comes back with the positions that it fills', () => {
  expect(GAME.links.get('sum>lock')?.at).toEqual([1, 2]);
  for (const edit of [
    { type: 'setLink', id: 'sum>lock', at: [2, 3] },
    { type: 'setLink', id: 'sum>lock', at: undefined },
    { type: 'unlink', ids: ['sum>lock'] },
  ] satisfies Edit[]) {
    const after = edited(GAME, [edit]);
    expect(after.links).not.toEqual(GAME.links);
    expect(edited(after, takeBack(GAME, after, after)).links).toEqual(GAME.links);
  }
});

test('what has been changed again since is not taken back', () => {
  const set = (game: Game, text: string) =>
    edited(game, [{ type: 'setFields', id: 'sum', fields: { text } }]);
  const after = set(GAME, 'Add.');
  expect(takeBack(GAME, after, set(after, 'Add them all.'))).toBeUndefined();
  expect(edited(after, takeBack(GAME, after, after))).toEqual(GAME);
});
