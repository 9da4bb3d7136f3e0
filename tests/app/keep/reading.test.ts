import { describe, expect, test } from 'vitest';
import { readFile, readText } from '../../../app/keep/reading.ts';
import { MAX_LENGTH } from '../../../src/game/read.ts';
import { sameContent } from '../../../src/game/write.ts';

const GAME = '{"format":"latchmap","version":1,"nodes":[],"links":[]}';

describe('files', () => {
  test('one that is too large is refused unread', async () => {
    let read = false;
    const file = new Blob(['']);
    Object.defineProperty(file, 'size', { value: MAX_LENGTH + 1 });
    Object.defineProperty(file, 'text', {
      value: async () => {
        read = true;
        return GAME;
      },
    });
    expect(await readFile(file)).toEqual({ ok: false, lines: [expect.any(String)] });
    expect(read).toBe(false);
  });

  test('one that the browser cannot read is refused with a sentence', async () => {
    const file = new Blob([GAME]);
    Object.defineProperty(file, 'text', {
      value: () => Promise.reject(new DOMException('', 'NotFoundError')),
    });
    expect(await readFile(file)).toEqual({ ok: false, lines: [expect.any(String)] });
  });

  test('an id is given only to a game that has none', async () => {
    const own = await readText(GAME.replace('{', '{"id":"mine",'));
    expect(own).toMatchObject({ ok: true, idGiven: false, document: { provenance: { id: 'mine' } } });
    expect(await readText(GAME)).toMatchObject({ ok: true, idGiven: true });
  });

  test('what is wrong comes as lines, what was left away as notes', async () => {
    expect(await readText('{')).toEqual({ ok: false, lines: [expect.any(String)] });
    expect(await readText(GAME.replace('{', '{"__proto__":{},'))).toMatchObject({
      ok: true,
      notes: [expect.stringContaining('__proto__')],
    });
  });

  test('a game without positions is arranged, and read twice it is the same game', async () => {
    const bare = JSON.stringify({
      format: 'latchmap',
      version: 1,
      nodes: [
        { id: 'p', kind: 'place', name: 'Window sill' },
        { id: 'c', kind: 'clue', name: 'Old photograph', in: 'p' },
        { id: 'z', kind: 'puzzle', name: 'Take the bearing' },
      ],
      links: [{ id: 'l', from: 'c', to: 'z' }],
    });
    const [first, second] = [await readText(bare), await readText(bare)];
    if (!first.ok || !second.ok) throw new Error('a legal game was refused');
    expect(new Set(first.document.game.positions.keys())).toEqual(new Set(['p', 'c', 'z']));
    expect(sameContent(first.document.game, second.document.game)).toBe(true);
  });
});
