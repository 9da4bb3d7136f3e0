import { describe, expect, test } from 'vitest';
import { noteText, problemLines } from '../../src/words/problems.ts';
import { type Member, read, sampleFile } from '../game/sample.ts';

function linesOf(file: unknown): string[] {
  const result = read(file);
  return result.ok ? [] : problemLines(result.problems, result.more);
}

function withNode(member: Member) {
  const file = sampleFile();
  return { ...file, nodes: [...file.nodes.filter(({ id }) => id !== member.id), member] };
}

function withLink(member: Member) {
  const file = sampleFile();
  return { ...file, links: [...file.links, { id: 'l4', ...member }] };
}

describe('what is wrong with a file, in one sentence', () => {
  test.each([
    ['', 'This file is empty.'],
    ['{"format":', 'This is no game file, or only a part of one: it cannot be read as JSON.'],
    ['{}', 'This is JSON, but no Latchmap game.'],
    [
      '{"format":"latchmap","version":3}',
      'This game was saved by a newer Latchmap (version 3 of the file; this one reads up to 1). Open it there.',
    ],
    [
      'x'.repeat(50_000_000),
      'This file is too large to be a game: it has 50 million signs, and a game has at most 20 million.',
    ],
  ])('the file itself %#', (file, line) => {
    expect(linesOf(file)).toEqual([line]);
  });

  test.each([
    [
      withNode({ id: 'tin', kind: 'container', name: 'Green tin', in: 'p9' }),
      'Box “Green tin”: it lies in p9, and there is no p9 in this file.',
    ],
    [
      withNode({ id: 'padlock', kind: 'fastener', name: 'Brass', on: 'b7' }),
      'Lock “Brass”: it hangs on b7, and there is no b7 in this file.',
    ],
    [
      withNode({ id: 'brass', kind: 'key', name: 'Brass', in: 'note' }),
      'Key “Brass”: it lies in the clue “Note”, and only a hiding place or a box holds things.',
    ],
    [
      withNode({ id: 'padlock', kind: 'fastener', name: 'Brass', on: 'shelf' }),
      'Lock “Brass”: it hangs on the hiding place “Shelf”, and a lock hangs only on a box.',
    ],
    [
      withNode({ id: 'chest', kind: 'container', name: 'Chest', in: 'tin' }),
      'These lie in each other in a ring, so none of them lies anywhere: “Tin” in “Chest” in “Tin”.',
    ],
    [withNode({ id: 'tin', kind: 'container', name: 'Tin', in: 'tin' }), 'Box “Tin”: it lies in itself.'],
    [
      withNode({ id: 'sum', kind: 'puzzle', name: 'Sum', minutes: { low: 5, likely: 2, high: 9 } }),
      'Puzzle “Sum”: its minutes are 5, 2 and 9. Low may not be above likely, nor likely above high.',
    ],
    [
      withNode({ id: 'sum', kind: 'puzzle', name: 'Sum', minutes: { low: 'x', likely: 2, high: 9 } }),
      'Puzzle “Sum”: ‘minutes.low’ should be a number, and is the text “x”.',
    ],
    [withNode({ id: 'sum', kind: 'puzzle' }), 'Puzzle sum: ‘name’ is missing. It should be text.'],
    [
      withNode({ id: 'sum', kind: 'puzzle', name: 'Sum', in: 'tin' }),
      'Puzzle “Sum”: ‘in’ must not be there: a puzzle has none.',
    ],
    [
      withNode({ id: 'sum', kind: 'puzzle', name: 'Sum', need: 0.5 }),
      'Puzzle “Sum”: ‘need’ should be “all” or a whole number, and is 0.5.',
    ],
    [
      withNode({ id: 'note', kind: 'riddle', name: 'Note' }),
      'Thing “Note”: ‘kind’ should be “place”, “container”, “fastener”, “key”, “clue”, “tool”, “puzzle” or “prize”, and is “riddle”.',
    ],
    [withLink({ from: 'x', to: 'sum' }), 'Arrow l4: it comes from x, and there is no x in this file.'],
    [withLink({ from: 'sum', to: 'sum' }), 'Arrow l4: it leads from the puzzle “Sum” to itself.'],
    [
      withLink({ from: 'brass', to: 'note' }),
      'Arrow l4: it leads from the key “Brass” to the clue “Note”, and from a key an arrow may lead only to a lock or a puzzle.',
    ],
    [
      withLink({ from: 'gold', to: 'sum' }),
      'Arrow l4: it leads from the prize “Gold” to the puzzle “Sum”, and no arrow leads from a prize.',
    ],
    [
      withLink({ from: 'note', to: 'sum' }),
      'Arrow l4: it leads from the clue “Note” to the puzzle “Sum”, and so does arrow l1.',
    ],
    [
      withLink({ id: 'l1', from: 'sum', to: 'note' }),
      'Arrow l1: it has the id l1, and so has number 1 in the list.',
    ],
  ])('a part of it %#', (file, line) => {
    expect(linesOf(file)).toEqual([line]);
  });

  test('tells a number from a text that looks like it', () => {
    expect(linesOf({ ...withNode({ id: 'sum', kind: 'puzzle', name: 'Sum' }), version: '1' })).toEqual([
      'The file: ‘version’ should be the number 1, and is the text “1”.',
    ]);
  });

  test('says a number that has overflowed', () => {
    const text = JSON.stringify(withNode({ id: 'sum', kind: 'puzzle', name: 'Sum', atMinute: 77 }));
    expect(linesOf(text.replace('77', '1e999'))).toEqual([
      'Puzzle “Sum”: ‘atMinute’ is larger than any number can be.',
    ]);
  });

  test('keeps to a line whatever the names are', () => {
    const name = `<img src=x onerror=alert(1)>\n${'x'.repeat(100_000)}`;
    const [line = ''] = linesOf(withNode({ id: 'tin', kind: 'container', name, in: 'y'.repeat(100_000) }));
    expect(line).toMatch(
      /^Box “<img src=x onerror=alert\(1\)> x+…”: it lies in y+…, and there is no y+… in this file\.$/u,
    );
    expect(line.length).toBeLessThan(300);
  });

  test('counts those that are not listed', () => {
    const file = sampleFile();
    const keys = Array.from({ length: 60 }, (_, i) => ({ id: `k${i}`, kind: 'key', name: 'K', in: 'p9' }));
    expect(linesOf({ ...file, nodes: [...file.nodes, ...keys] }).at(-1)).toBe('And 10 more like these.');
    const many = Array.from({ length: 2000 }, () => ({}));
    expect(linesOf({ ...file, nodes: many }).at(-1)).toBe('And more than a thousand others.');
  });
});

test('what was noticed in a file that was read', () => {
  const text = JSON.stringify(
    withNode({
      id: 'wheels',
      kind: 'fastener',
      name: 'Wheels',
      on: 'chest',
      type: 'no type of lock',
      later: 1,
    }),
  );
  const result = read(text.replace('"later"', '"__proto__"'));
  expect(result.ok && result.notes.map(noteText)).toEqual([
    'A field named ‘__proto__’ was left away, because it could mislead programs. It stood in: lock “Wheels”.',
    'This version does not know the lock type “no type of lock” (“Wheels”). It is kept, and counts as opened by whatever leads to it.',
  ]);
});
