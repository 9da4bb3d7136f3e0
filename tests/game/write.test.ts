import { describe, expect, test } from 'vitest';
import { byCodePoint } from '../../src/game/compare.ts';
import { fileName } from '../../src/game/file-name.ts';
import { newId } from '../../src/game/ids.ts';
import { emptyGame, type Game } from '../../src/game/model.ts';
import { sameContent, writeGame } from '../../src/game/write.ts';
import { read, sampleFile, sampleGame } from './sample.ts';

describe('the text of a game', () => {
  test('begins with what it is, and is the same whatever the order in memory', () => {
    const file = sampleFile();
    const turned = { ...file, nodes: file.nodes.toReversed(), links: file.links.toReversed() };
    const [a, b] = [read(file), read(turned)];
    expect(a.ok && b.ok && writeGame(a.document)).toBe(b.ok && writeGame(b.document));
    expect(a.ok && writeGame(a.document)).toMatch(
      /^\{\n {2}"format": "latchmap",\n {2}"version": 1,\n {2}"id": "sample",\n[\s\S]*\n\}\n$/,
    );
  });

  test('sorts ids by code point', () => {
    const ids = ['\u{1F511}', '\uFF5E', 'b', 'a', 'B', 'é', '', 'ab'];
    const nodes = new Map(ids.map((id) => [id, { id, kind: 'place', name: id } as const]));
    const text = writeGame({ provenance: { id: 'x', revision: 0 }, game: { ...emptyGame, nodes } });
    expect(Array.from(text.matchAll(/^ {6}"id": "(.*)"/gmu), ([, id]) => id)).toEqual([
      '',
      'B',
      'a',
      'ab',
      'b',
      'é',
      '\uFF5E',
      '\u{1F511}',
    ]);
    const broken = [
      '\uD83D',
      '\uDD11',
      '\uDD11a',
      '\uD83Da',
      'a\uD83D',
      'a\uD83D\uDD12',
      '\uDFFF',
      '\uE000',
      '',
    ];
    const byPoints = (a: string, b: string) =>
      Array.from(a, (sign) => sign.codePointAt(0) ?? 0)
        .map((point, i) => point - (Array.from(b)[i]?.codePointAt(0) ?? -1))
        .find((difference) => difference !== 0) ?? a.length - b.length;
    const texts = [...ids, ...broken];
    for (const a of texts) {
      for (const b of texts) expect(Math.sign(byCodePoint(a, b))).toBe(Math.sign(byPoints(a, b)));
    }
  });
});

test('the same content: positions count, the order of keys and where the game comes from do not', () => {
  const game = sampleGame();
  const turned: Game = {
    ...game,
    nodes: new Map([...game.nodes].reverse().map(([id, node]) => [id, JSON.parse(JSON.stringify(node))])),
  };
  expect(sameContent(game, turned)).toBe(true);
  expect(sameContent(game, { ...game, positions: new Map() })).toBe(false);
  expect(sameContent(game, { ...game, head: { ...game.head, later: 1 } })).toBe(false);
  expect(sameContent(game, { ...game, links: new Map([...game.links].slice(1)) })).toBe(false);
});

describe('the name of a file', () => {
  const nameOf = (title: string) => fileName({ ...emptyGame, head: { title } });

  test.each([
    ['Mineral hall', 'Mineral hall.latchmap.json'],
    ['Fractions: ½ / ¼?', 'Fractions ½ ¼.latchmap.json'],
    ['<script>alert("x")</script>', 'script alert( x ) script.latchmap.json'],
    ['../../etc/passwd', 'etc passwd.latchmap.json'],
    ['CON', 'game CON.latchmap.json'],
    ['nul.txt', 'game nul.txt.latchmap.json'],
    ['Console', 'Console.latchmap.json'],
    ['  .hidden. ', 'hidden.latchmap.json'],
    ['a\u202Egnp.\u0000\n b', 'a gnp. b.latchmap.json'],
    ['half \uD800 pair', 'half pair.latchmap.json'],
    ['e\u0301cole', '\u00E9cole.latchmap.json'],
    ['', 'game.latchmap.json'],
    ['???', 'game.latchmap.json'],
  ])('of %j', (title, name) => {
    expect(nameOf(title)).toBe(name);
  });

  test('of no title', () => {
    expect(fileName(emptyGame)).toBe('game.latchmap.json');
  });

  test('is short, and no sign of it is cut in two', () => {
    expect(nameOf('x'.repeat(500))).toBe(`${'x'.repeat(120)}.latchmap.json`);
    const family = '\u{1F469}\u200D\u{1F469}\u200D\u{1F467}';
    expect(nameOf(family.repeat(50))).toBe(`${family.repeat(6)}.latchmap.json`);
  });
});

test('ids are ten signs that are not taken for each other, from the bytes given', () => {
  const every = Array.from({ length: 256 }, (_, byte) => newId((count) => new Uint8Array(count).fill(byte)));
  expect(new Set(every).size).toBe(32);
  expect(every.join('')).toMatch(/^[a-km-np-z2-9]+$/);
  expect(newId((count) => Uint8Array.from({ length: count }, (_, i) => i))).toBe('abcdefghij');
});
