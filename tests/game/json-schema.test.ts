import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonSchemaText } from '../../src/game/json-schema.ts';
import { writeGame } from '../../src/game/write.ts';
import { gameArbitrary } from '../random-game.ts';
import { read, sampleFile } from './sample.ts';

const published = readFileSync(new URL('../../public/latchmap.schema.json', import.meta.url), 'utf8');
const accepts = new Ajv2020({ strict: true, strictRequired: false }).compile(JSON.parse(published));

test('the published schema is the one in the code (npm run schema writes it)', () => {
  expect(published).toBe(jsonSchemaText());
});

describe('the published schema and the reader agree', () => {
  test('on the example games', () => {
    const folder = new URL('../../public/games/', import.meta.url);
    for (const name of readdirSync(folder).filter((each) => each.endsWith('.latchmap.json'))) {
      const text = readFileSync(new URL(name, folder), 'utf8');
      expect([name, accepts(JSON.parse(text)), read(text).ok]).toEqual([name, true, true]);
    }
  });

  test('on random games', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        expect(accepts(JSON.parse(writeGame({ provenance: { id: 'g', revision: 0 }, game })))).toBe(true);
      }),
      { seed: 45, numRuns: 100 },
    );
  });

  /** One field of one node, link or head set to some JSON: the reader may refuse for its shape only what the schema refuses. */
  test('on files with one field changed', () => {
    const fields = [
      'id',
      'kind',
      'name',
      'in',
      'on',
      'at',
      'minutes',
      'hands',
      'need',
      'leftOut',
      'from',
      'to',
    ];
    const heads = ['format', 'id', 'revision', 'title', 'lesson', 'objectives', 'nodes', 'links', 'later'];
    const value = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom(undefined, -1, 0, 1, 1.5, '', 'all', 'chest', 'key', [], [1], {}, null),
      fc.constantFrom(
        { x: 1, y: 2 },
        { low: 1, likely: 2, high: 3 },
        { low: -1, likely: 2, high: 3 },
        { pupils: 1.5 },
      ),
    );
    const verdicts = new Set<boolean>();
    fc.assert(
      fc.property(
        fc.constantFrom('nodes', 'links', 'head'),
        fc.nat(8),
        fc.constantFrom(...fields),
        fc.constantFrom(...heads),
        value,
        (part, index, field, headField, set) => {
          const file: Record<string, unknown> = sampleFile();
          if (part === 'head') file[headField] = set;
          else {
            const list = [...sampleFile()[part]];
            const at = index % list.length;
            list[at] = { ...list[at], [field]: set };
            file[part] = list;
          }
          const text = JSON.stringify(file);
          const result = read(text);
          const shapeIsRight =
            result.ok || !result.problems.some(({ code }) => code === 'shape' || code === 'otherJson');
          verdicts.add(shapeIsRight);
          expect(accepts(JSON.parse(text))).toBe(shapeIsRight);
        },
      ),
      { seed: 46, numRuns: 800 },
    );
    expect(verdicts.size).toBe(2);
  });
});
