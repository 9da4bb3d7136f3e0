/** What holds of every example game as a file. */
import { describe, expect, test } from 'vitest';
import { isKnownType } from '../../src/fasteners/index.ts';
import { readGame } from '../../src/game/read.ts';
import { openExample, SLUGS, sourceOf } from './example.ts';

describe.each(SLUGS)('%s', (slug) => {
  const { file } = openExample(slug);

  test('is read without problems or notes', () => {
    const result = readGame(sourceOf(slug), { newId: () => 'given' });
    expect(result).toMatchObject({ ok: true, notes: [] });
  });

  test('says what it is, for whom and what it teaches', () => {
    expect(file.title).toMatch(/\w/);
    expect(file.summary).toMatch(/^[^.]+\.$/);
    expect(file.lesson).toMatchObject({ pupils: 24, hints: 3 });
    expect(file.objectives?.length).toBeGreaterThanOrEqual(3);
  });

  test('carries on each thing what pupils and teacher need', () => {
    for (const node of file.nodes) {
      const about = `${node.kind} ${node.name}`;
      if (node.kind === 'clue' || node.kind === 'puzzle' || node.kind === 'prize')
        expect(node.text, `text of ${about}`).toMatch(/\w/);
      if (node.kind === 'place' || node.kind === 'puzzle' || node.kind === 'prize')
        expect(node.note, `note of ${about}`).toMatch(/\w/);
      if (node.kind === 'puzzle') expect(node.answer, `answer of ${about}`).toMatch(/\S/);
      if (node.kind === 'prize') expect(node.note).toContain('No food');
      if (node.kind === 'fastener') {
        expect(isKnownType(node.type ?? ''), about).toBe(true);
        const coded = node.type !== 'key' && node.type !== 'latch';
        expect(node.code !== undefined, `code of ${about}`).toBe(coded);
      }
    }
  });

  test('gives a key the name of its lock, and nothing else one name twice', () => {
    const nodes = new Map(file.nodes.map((node) => [node.id, node]));
    for (const link of file.links) {
      const [from, to] = [nodes.get(link.from), nodes.get(link.to)];
      if (from?.kind === 'key') expect(to).toMatchObject({ kind: 'fastener', type: 'key', name: from.name });
    }
    const names = file.nodes.filter((node) => node.kind !== 'key').map((node) => node.name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name.length, name).toBeLessThanOrEqual(22);
  });

  test('keeps the signs of its fonts: arrows stand in codes alone', () => {
    for (const node of file.nodes) expect(`${node.name}${node.text}${node.note}`).not.toMatch(/[←-⇿✓★≤≥]/u);
  });
});
