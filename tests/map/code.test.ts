/** Map, sheets, form and engine take a code apart into the same symbols. */
import { describe, expect, test } from 'vitest';
import { codesOf } from '../../src/engine/codes.ts';
import { compile } from '../../src/engine/network.ts';
import { fastenerType } from '../../src/fasteners/index.ts';
import { writtenFor } from '../../src/fasteners/written-for.ts';
import { assess } from '../../src/findings/assess.ts';
import { writtenCode } from '../../src/game/codes.ts';
import { spelledCode } from '../../src/map/code.ts';
import { lockEntries } from '../../src/sheets/locks.ts';
import { gameOf } from '../game-of.ts';
import { gameOf as exampleOf, SLUGS } from '../games/example.ts';

const lockWith = (type: string, code: string, answer = code) =>
  gameOf(
    [
      { id: 'z', kind: 'puzzle', answer },
      { id: 'b', kind: 'container' },
      { id: 'f', kind: 'fastener', on: 'b', type, code },
    ],
    ['z>f'],
  );

const CODES: readonly (readonly [type: string, code: string])[] = [
  ['number', '472'],
  ['number', '4 7 2'],
  ['word', 'core'],
  ['word', 'CAFÉ'],
  ['direction', '← ↓ ↑'],
  ['direction', 'up left'],
  ['direction', 'udlr'],
  ['dial', '32 14 25'],
  ['dial', '32-14-05'],
  ['picture', 'FOX SUN BELL'],
  ['picture', 'fox, sun'],
  ['picture', '🦊☀️🔔'],
  ['typed', 'red fox'],
  ['scent', 'A1'],
];

describe.each(CODES)('%s lock set to %s', (type, code) => {
  const game = lockWith(type, code);
  const [engine] = codesOf(game, compile(game));
  const symbols = engine?.symbols ?? [];

  test('is the same to the engine, on the map and on the sheet of codes', () => {
    expect(symbols).toEqual(fastenerType(type).symbols(code));
    for (const id of ['f', 'z']) {
      const { words = [], directions } = spelledCode(game, id) ?? {};
      const shown = fastenerType(type).apart ? words.map((word) => word.join('')) : words.flat();
      expect(shown.map((symbol) => symbol.toUpperCase())).toEqual(symbols);
      expect(directions).toBe(type === 'direction');
    }
    const [entry] = lockEntries(assess(game));
    expect(entry?.setting).toMatchObject({ set: 'code', words: spelledCode(game, 'f')?.words });
  });

  test('has an answer in the same symbols', () => {
    expect(engine?.sources.map((source) => source.symbols)).toEqual([symbols]);
    expect(writtenFor(game).get('z')).toBe(fastenerType(type));
  });
});

test('an answer for several locks is written for moves first, then for numbers and names', () => {
  const game = gameOf(
    [
      { id: 'z', kind: 'puzzle', answer: '1 2 3' },
      { id: 'b', kind: 'container' },
      ...['typed', 'dial', 'number'].map((type) => ({
        id: type,
        kind: 'fastener' as const,
        on: 'b',
        type,
        code: '1 2 3',
      })),
    ],
    ['z>typed', 'z>dial', 'z>number'],
  );
  expect(writtenFor(game).get('z')?.type).toBe('dial');
  const moves = new Map(game.nodes);
  moves.set('number', { id: 'number', kind: 'fastener', name: '', on: 'b', type: 'direction' });
  expect(writtenFor({ ...game, nodes: moves }).get('z')?.type).toBe('direction');
});

test.each(SLUGS)('every code of %s stands in its stored form, but for arrows', (slug) => {
  const game = exampleOf(slug);
  for (const [id, type] of writtenFor(game)) {
    const written = writtenCode(game, id);
    if (!written) continue;
    const reading = type.read(written.typed);
    if (type.directions) expect(reading).toEqual({ ok: true, code: written.normalised });
    else expect(reading).toEqual({ ok: true, code: written.typed });
  }
});
