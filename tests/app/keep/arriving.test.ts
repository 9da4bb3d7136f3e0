import { expect, test } from 'vitest';
import { namesakes } from '../../../app/keep/arriving.ts';
import type { KeptGame } from '../../../app/keep/shelf.ts';
import { emptyGame } from '../../../src/game/model.ts';

const kept = (id: string, more: Partial<KeptGame> = {}): KeptGame => ({
  id,
  title: 'The pump',
  basedOn: undefined,
  edited: 0,
  filed: undefined,
  changes: 0,
  deleted: undefined,
  ...more,
});

const arriving = (id: string, idGiven: boolean) => ({
  document: { provenance: { id, revision: 0 }, game: { ...emptyGame, head: { title: 'The pump' } } },
  idGiven,
});

const ids = (games: readonly KeptGame[]) => games.map(({ id }) => id);

test('a game with an id meets itself and its copies, whatever they are called', () => {
  const games = [kept('a', { title: 'Another' }), kept('b', { basedOn: 'a' }), kept('c')];
  expect(ids(namesakes(games, arriving('a', false)))).toEqual(['a', 'b']);
});

test('a game without an id of its own meets those of its title', () => {
  const games = [kept('a'), kept('b', { title: 'Another' })];
  expect(ids(namesakes(games, arriving('new', true)))).toEqual(['a']);
});

test('what was deleted does not count as here', () => {
  expect(namesakes([kept('a', { deleted: 1 })], arriving('a', false))).toEqual([]);
});
