import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freePlaces, matchPlaces } from '../../../src/kit/adapt/match-places.ts';
import { normalisedName } from '../../../src/kit/adapt/wording.ts';
import { roomOf } from './room.ts';

const wanted = (...names: readonly string[]) => names.map((name) => ({ id: name, name }));
const found = (names: readonly string[], places: Parameters<typeof matchPlaces>[1]) =>
  Object.fromEntries([...matchPlaces(wanted(...names), places)].map(([id, place]) => [id, place.name]));

describe('places of a game in a room', () => {
  test('the same name comes first, then words alike, then the walk', () => {
    const room = roomOf('Piano', 'Low shelf', 'window-sill', 'Coat pegs');
    expect(found(['Window sill', 'Book shelf', 'Trolley', 'Bench'], room)).toEqual({
      'Window sill': 'window-sill',
      'Book shelf': 'Low shelf',
      Trolley: 'Piano',
      Bench: 'Coat pegs',
    });
  });

  test('a zone is a word of the place too', () => {
    const room = [
      { id: 'a', name: 'Drawer', zone: 'Back' },
      { id: 'b', name: 'Crate', zone: 'Window' },
    ];
    expect(found(['Window shelf'], room)).toEqual({ 'Window shelf': 'Crate' });
  });

  test('what is off limits is nobody’s place, not even by its own name', () => {
    const room = [
      { id: 'a', name: 'Desk', offLimits: true },
      { id: 'b', name: 'Sink' },
    ];
    expect(found(['Desk', 'Bench'], room)).toEqual({ Desk: 'Sink' });
  });

  test('a room that is too small leaves the rest without a place', () => {
    expect(Object.keys(found(['A one', 'B one', 'Sink'], roomOf('Sink')))).toEqual(['Sink']);
    expect(found(['Sink'], [])).toEqual({});
  });

  test('free places are those whose name no hiding place has', () => {
    expect(freePlaces(roomOf('Sink', 'Piano'), ['the SINK']).map(({ name }) => name)).toEqual(['Piano']);
  });

  const name = fc
    .array(fc.constantFrom('low', 'book', 'shelf', 'sink', 'window', 'piano'), { minLength: 1, maxLength: 2 })
    .map((words) => words.join(' '));
  const names = fc.uniqueArray(name, { maxLength: 6 });

  test('law: each place once; same names together; nobody without while one is free; a pair taken away leaves the rest', () => {
    fc.assert(
      fc.property(names, names, (games, rooms) => {
        const room = roomOf(...rooms);
        const matched = matchPlaces(wanted(...games), room);
        expect(new Set(matched.values()).size).toBe(matched.size);
        expect(matched.size).toBe(Math.min(games.length, rooms.length));
        for (const one of games) {
          if (rooms.includes(one)) expect(normalisedName(matched.get(one)?.name ?? '')).toBe(one);
        }
        // Once a name has been taken over, it stays where it is.
        const [first, place] = [...matched][0] ?? [];
        if (first === undefined || place === undefined || games.includes(place.name)) return;
        const after = matchPlaces(
          games.map((id) => ({ id, name: id === first ? place.name : id })),
          room,
        );
        expect(after.get(first)).toBe(place);
      }),
    );
  });
});
