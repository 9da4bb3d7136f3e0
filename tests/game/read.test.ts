import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MAX_PROBLEMS } from '../../src/game/problem-list.ts';
import { MAX_LENGTH } from '../../src/game/read.ts';
import { writeGame } from '../../src/game/write.ts';
import { read, sampleFile } from './sample.ts';

type Sample = ReturnType<typeof sampleFile>;

/** The sample with one node changed. */
function withNode(id: string, fields: Record<string, unknown>): Sample {
  const file = sampleFile();
  file.nodes = file.nodes.map((node) => (node.id === id ? { ...node, ...fields } : node));
  return file;
}

function withLink(fields: Record<string, unknown>): Sample {
  const file = sampleFile();
  file.links.push({ id: 'l4', ...fields });
  return file;
}

function problemsOf(file: unknown) {
  const result = read(file);
  return result.ok ? [] : result.problems;
}

describe('a legal file', () => {
  test('is read with its absent fields absent', () => {
    const result = read({ format: 'latchmap', version: 1, nodes: [], links: [] });
    expect(result).toStrictEqual({
      ok: true,
      document: {
        provenance: { id: 'given', revision: 0 },
        game: { head: {}, nodes: new Map(), links: new Map(), positions: new Map() },
      },
      notes: [],
    });
  });

  test('keeps its own id, revision and origin', () => {
    const result = read({ ...sampleFile(), basedOn: 'other' });
    expect(result.ok && result.document.provenance).toEqual({ id: 'sample', revision: 4, basedOn: 'other' });
  });

  test('may begin with a byte order mark', () => {
    expect(read(`\uFEFF${JSON.stringify(sampleFile())}`)).toEqual(read(sampleFile()));
  });

  test('may use one id for a node and a link', () => {
    expect(read(withLink({ id: 'sum', from: 'wheels', to: 'sum' })).ok).toBe(true);
  });

  test('may use names of every object as ids and fields', () => {
    const file = sampleFile();
    file.nodes.push({ id: '__proto__', kind: 'place', name: 'P', constructor: { toString: 1 } });
    file.nodes.push({ id: 'constructor', kind: 'container', name: 'C', in: '__proto__' });
    const result = read(file);
    const game = result.ok ? result.document.game : undefined;
    expect(game?.nodes.get('__proto__')).toEqual({
      id: '__proto__',
      kind: 'place',
      name: 'P',
      constructor: { toString: 1 },
    });
    expect(game?.nodes.get('constructor')?.in).toBe('__proto__');
    expect(result.ok && read(writeGame(result.document))).toEqual(result);
  });

  test('is told of lock types that this version does not know, once each', () => {
    const result = read(withNode('wheels', { type: 'no type of lock' }));
    expect(result.ok && result.notes).toEqual([
      {
        code: 'unknownType',
        type: 'no type of lock',
        nodes: [{ id: 'wheels', name: 'Wheels', kind: 'fastener' }],
      },
    ]);
  });

  test('loses __proto__ keys at every level, and it is said', () => {
    const text = JSON.stringify(
      withNode('shelf', {
        at: { x: 1, y: 2, later: 1 },
        minutes: { low: 1, likely: 1, high: 1, later: [{}] },
      }),
    )
      .replaceAll('"later"', '"__proto__"')
      .replace('"title"', '"__proto__":{"polluted":true},"title"')
      .replace('"id":"l1"', '"__proto__":null,"id":"l1"');
    const result = read(text);
    const game = result.ok ? result.document.game : undefined;
    expect(game?.positions.get('shelf')).toStrictEqual({ x: 1, y: 2 });
    expect(game?.nodes.get('shelf')?.minutes).toStrictEqual({ low: 1, likely: 1, high: 1 });
    expect(game && Object.getPrototypeOf(game.head)).toBe(Object.prototype);
    expect('polluted' in {}).toBe(false);
    expect(result.ok && result.notes).toMatchObject([
      { code: 'keysDropped', count: 4, first: { part: 'file' } },
    ]);
  });
});

describe('no game at all', () => {
  test.each([
    [{ code: 'notJson', empty: true }, ''],
    [{ code: 'notJson', empty: true }, '  \n'],
    [{ code: 'notJson', empty: true }, '\uFEFF'],
    [{ code: 'notJson', empty: false }, '<html>'],
    [{ code: 'notJson', empty: false }, '{"format":"latchmap"'],
    [{ code: 'notJson', empty: false }, '{"format":"latchmap","version":NaN}'],
    [{ code: 'otherJson' }, 'null'],
    [{ code: 'otherJson' }, '[1,2]'],
    [{ code: 'otherJson' }, '"latchmap"'],
    [{ code: 'otherJson' }, '{"nodes":[],"links":[]}'],
    [{ code: 'newerVersion', version: 2, known: 1 }, '{"format":"latchmap","version":2,"nodes":7}'],
    [{ code: 'tooDeep', limit: 100 }, `${'['.repeat(200_000)}${']'.repeat(200_000)}`],
  ])('is one problem: %j', (problem, text) => {
    expect(read(text)).toEqual({ ok: false, problems: [problem], more: 0 });
  });

  test('is not looked at when it is too large', () => {
    const junk = 'x'.repeat(50_000_000);
    expect(problemsOf(junk)).toEqual([{ code: 'tooLarge', length: 50_000_000, limit: MAX_LENGTH }]);
  });

  test('is no game when any list is longer than all that a game has', () => {
    const file = sampleFile();
    const links = file.links.slice(0, 1);
    const long = { ...file, links: [{ ...links[0], at: Array.from({ length: 100_001 }, () => -1) }] };
    expect(problemsOf(long)).toEqual([
      {
        code: 'tooLong',
        where: { part: 'link', number: 1, id: 'l1', field: 'at' },
        length: 100_001,
        limit: 100_000,
      },
    ]);
  });

  test('is not looked at to the end when thousands of its nodes are wrong', () => {
    const junk = { ...sampleFile(), nodes: Array.from({ length: 90_000 }, () => ({ kind: 1 })) };
    expect(read(junk)).toMatchObject({ ok: false, more: 10_001 - MAX_PROBLEMS });
  });

  test('is told of a version larger than any number as of one', () => {
    const text = JSON.stringify({ ...sampleFile(), version: 77 }).replace('77', '1e999');
    expect(problemsOf(text)).toEqual([{ code: 'notFinite', where: { part: 'file', field: 'version' } }]);
  });
});

describe('a wrong shape is told with node, field and what was expected', () => {
  const value = (found: unknown) => ({ is: 'value', value: found });
  test.each([
    ['wheels', { on: undefined }, 'on', { is: 'text' }, { is: 'missing' }],
    ['shelf', { in: 'chest' }, 'in', { is: 'nothing' }, value('chest')],
    ['sum', { on: 'chest' }, 'on', { is: 'nothing' }, value('chest')],
    ['shelf', { name: 7 }, 'name', { is: 'text' }, value(7)],
    ['shelf', { hands: 0 }, 'hands', { is: 'above', limit: 0 }, value(0)],
    ['shelf', { hands: 1.5 }, 'hands', { is: 'wholeNumber' }, value(1.5)],
    ['shelf', { leftOut: 'yes' }, 'leftOut', { is: 'trueOrFalse' }, value('yes')],
    ['shelf', { at: [1, 2] }, 'at', { is: 'object' }, { is: 'list' }],
    ['shelf', { at: { x: 1 } }, 'at.y', { is: 'number' }, { is: 'missing' }],
    [
      'shelf',
      { minutes: { low: -1, likely: 2, high: 3 } },
      'minutes.low',
      { is: 'atLeast', limit: 0 },
      value(-1),
    ],
    [
      'shelf',
      { minutes: { low: 1, likely: 2, high: 1e308 } },
      'minutes.high',
      { is: 'atMost', limit: 1_000_000 },
      value(1e308),
    ],
    ['shelf', { atMinute: 1_000_001 }, 'atMinute', { is: 'atMost', limit: 1_000_000 }, value(1_000_001)],
    [
      'sum',
      { need: 'some' },
      'need',
      { is: 'either', options: [{ is: 'oneOf', values: ['all'] }, { is: 'number' }] },
      value('some'),
    ],
  ])('%s %j', (id, fields, field, expected, found) => {
    expect(problemsOf(withNode(id, fields))).toMatchObject([
      { code: 'shape', where: { part: 'node', id, field }, expected, found },
    ]);
  });

  test('an unknown kind', () => {
    expect(problemsOf(withNode('note', { kind: 'riddle' }))).toMatchObject([
      {
        code: 'shape',
        where: { part: 'node', number: 7, id: 'note', name: 'Note', field: 'kind' },
        expected: {
          is: 'oneOf',
          values: ['place', 'container', 'fastener', 'key', 'clue', 'tool', 'puzzle', 'prize'],
        },
      },
    ]);
  });

  test('no list of nodes, without blame for the arrows', () => {
    expect(problemsOf({ ...sampleFile(), nodes: {} })).toMatchObject([
      { where: { part: 'file', field: 'nodes' }, expected: { is: 'list' }, found: { is: 'object' } },
    ]);
  });

  test('no list of nodes, and a head that is wrong', () => {
    expect(problemsOf({ ...sampleFile(), nodes: {}, links: [], lesson: { pupils: 'many' } })).toMatchObject([
      { where: { part: 'file', field: 'lesson.pupils' }, expected: { is: 'number' } },
      { where: { part: 'file', field: 'nodes' }, expected: { is: 'list' }, found: { is: 'object' } },
    ]);
  });

  test('nodes and links that are no objects', () => {
    const file = { ...sampleFile(), nodes: [5, null], links: ['a'] };
    expect(problemsOf(file)).toMatchObject([
      { where: { part: 'node', number: 1 }, expected: { is: 'object' }, found: value(5) },
      { where: { part: 'node', number: 2 }, expected: { is: 'object' }, found: value(null) },
      { where: { part: 'link', number: 1 }, expected: { is: 'object' }, found: value('a') },
    ]);
  });

  test('positions of a link that are none', () => {
    expect(problemsOf(withLink({ from: 'wheels', to: 'sum', at: [] }))).toMatchObject([
      { where: { part: 'link', id: 'l4', field: 'at' }, expected: { is: 'members', least: 1 } },
    ]);
  });

  test('a version that is no number', () => {
    expect(problemsOf({ ...sampleFile(), version: '1' })).toMatchObject([
      { where: { part: 'file', field: 'version' }, expected: { is: 'oneOf', values: [1] } },
    ]);
  });

  test('numbers that have overflowed, also in fields that are not known, once each', () => {
    const text = JSON.stringify(withNode('shelf', { at: { x: 1234, y: 0 }, later: [4321] }));
    expect(problemsOf(text.replace('1234', '1e999').replace('4321', '-1e999'))).toMatchObject([
      { code: 'notFinite', where: { id: 'shelf', field: expect.stringMatching(/^(at\.x|later\.0)$/) } },
      { code: 'notFinite', where: { id: 'shelf', field: expect.stringMatching(/^(at\.x|later\.0)$/) } },
    ]);
  });

  test('what points to a node of the wrong shape is no problem of its own', () => {
    expect(problemsOf(withNode('chest', { name: 1 }))).toHaveLength(1);
  });
});

describe('a structure that cannot be', () => {
  const named = (id: string, name: string, kind: string) => ({ id, name, kind });

  test('two nodes of one id', () => {
    const file = sampleFile();
    file.nodes.push({ id: 'shelf', kind: 'place', name: 'Sill' });
    expect(problemsOf(file)).toMatchObject([
      { code: 'idTwice', where: { part: 'node', number: 10, id: 'shelf', name: 'Sill' }, first: 1 },
    ]);
  });

  test('two links of one id', () => {
    expect(problemsOf(withLink({ id: 'l1', from: 'wheels', to: 'sum' }))).toMatchObject([
      { code: 'idTwice', where: { part: 'link', number: 4, id: 'l1' }, first: 1 },
    ]);
  });

  test('a holder or carrier that is not there', () => {
    expect(problemsOf(withNode('chest', { in: 'p9' }))).toMatchObject([
      { code: 'holderMissing', where: { id: 'chest', field: 'in' }, id: 'p9' },
    ]);
    expect(problemsOf(withNode('wheels', { on: 'toString' }))).toMatchObject([
      { code: 'carrierMissing', where: { id: 'wheels', field: 'on' }, id: 'toString' },
    ]);
  });

  test('a holder that holds nothing, a carrier that is no container', () => {
    expect(problemsOf(withNode('brass', { in: 'note' }))).toMatchObject([
      { code: 'holderHoldsNothing', holder: named('note', 'Note', 'clue') },
    ]);
    expect(problemsOf(withNode('wheels', { on: 'shelf' }))).toMatchObject([
      { code: 'carrierNoContainer', holder: named('shelf', 'Shelf', 'place') },
    ]);
  });

  test('a ring of holders, named once; and a box in itself', () => {
    expect(problemsOf(withNode('chest', { in: 'tin' }))).toEqual([
      { code: 'holderRing', ring: [named('chest', 'Chest', 'container'), named('tin', 'Tin', 'container')] },
    ]);
    expect(problemsOf(withNode('chest', { in: 'chest' }))).toEqual([
      { code: 'holderRing', ring: [named('chest', 'Chest', 'container')] },
    ]);
  });

  test('a link whose ends are not there, to itself, of kinds that do not go together, twice', () => {
    expect(problemsOf(withLink({ from: 'x', to: 'y' }))).toMatchObject([
      { code: 'endMissing', where: { part: 'link', id: 'l4' }, end: 'from', id: 'x' },
      { code: 'endMissing', end: 'to', id: 'y' },
    ]);
    expect(problemsOf(withLink({ from: 'sum', to: 'sum' }))).toMatchObject([{ code: 'linkToItself' }]);
    expect(problemsOf(withLink({ from: 'gold', to: 'sum' }))).toMatchObject([
      { code: 'linkKinds', from: named('gold', 'Gold', 'prize'), to: named('sum', 'Sum', 'puzzle') },
    ]);
    expect(problemsOf(withLink({ from: 'note', to: 'sum' }))).toMatchObject([
      { code: 'linkTwice', where: { id: 'l4' }, first: { id: 'l1' } },
    ]);
  });

  test('links there and back are legal', () => {
    const file = withLink({ from: 'sum', to: 'note' });
    expect(read(file).ok).toBe(true);
  });

  test('estimates out of order', () => {
    expect(problemsOf(withNode('sum', { minutes: { low: 5, likely: 2, high: 9 } }))).toMatchObject([
      { code: 'estimates', where: { id: 'sum', field: 'minutes' }, low: 5, likely: 2, high: 9 },
    ]);
  });

  test('problems of every sort are told together', () => {
    const file = withLink({ from: 'x', to: 'sum' });
    file.nodes.push({ id: 'bad', kind: 'place' }, { id: 'far', kind: 'key', name: 'Far', in: 'p9' });
    expect(problemsOf(file).map(({ code }) => code)).toEqual(['shape', 'holderMissing', 'endMissing']);
  });

  test('of thousands the first are told and the rest counted', () => {
    const file = sampleFile();
    file.nodes.push(
      ...Array.from({ length: 3000 }, (_, i) => ({ id: `k${i}`, kind: 'key', name: 'K', in: 'nowhere' })),
    );
    const result = read(file);
    expect(result).toMatchObject({ ok: false, more: 3000 - MAX_PROBLEMS });
    expect(!result.ok && result.problems).toHaveLength(MAX_PROBLEMS);
  });
});

describe('any change of bytes', () => {
  const folder = new URL('../../public/games/', import.meta.url);
  const files = readdirSync(folder).filter((name) => name.endsWith('.latchmap.json'));
  const bytes = files.map((name) => readFileSync(new URL(name, folder)));
  const decoder = new TextDecoder();

  test('in a real file gives a game or problems', () => {
    const outcomes = { ok: 0, problems: 0 };
    const mutation = fc.record({
      place: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
      byte: fc.oneof(fc.integer({ min: 0, max: 255 }), fc.constantFrom(...Buffer.from('{}[]",:0-e'))),
      how: fc.constantFrom('set', 'insert', 'delete', 'double'),
    });
    const mutations = fc.array(mutation, { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(fc.nat(files.length - 1), mutations, (index, changes) => {
        let mutated = Array.from(bytes[index] ?? []);
        for (const { place, byte, how } of changes) {
          const at = Math.floor(place * mutated.length);
          if (how === 'set') mutated[at] = byte;
          else if (how === 'insert') mutated.splice(at, 0, byte);
          else if (how === 'delete') mutated.splice(at, 1 + (byte % 40));
          else mutated = [...mutated.slice(0, at), ...mutated.slice(Math.max(0, at - byte))];
        }
        const result = read(decoder.decode(Uint8Array.from(mutated)));
        outcomes[result.ok ? 'ok' : 'problems']++;
        if (result.ok) expect(read(writeGame(result.document))).toMatchObject({ document: result.document });
        else expect(result.problems.length).toBeGreaterThan(0);
      }),
      { seed: 43, numRuns: 400 },
    );
    expect(outcomes.ok).toBeGreaterThan(20);
    expect(outcomes.problems).toBeGreaterThan(200);
  });

  test('any JSON under the right name gives a game or problems', () => {
    const nodes = fc.array(fc.jsonValue());
    fc.assert(
      fc.property(fc.jsonValue(), nodes, nodes, (head, list, links) => {
        const file = { ...(typeof head === 'object' ? head : {}), format: 'latchmap', version: 1 };
        const result = read({ ...file, nodes: list, links });
        expect(result.ok).toBe(list.length + links.length === 0);
      }),
      { seed: 44, numRuns: 300 },
    );
  });
});
