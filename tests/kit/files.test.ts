/** Kits as JSON and as tables: written and read again, and what people really have. */
import fc from 'fast-check';
import papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { writeItems, writePlaces } from '../../src/kit/csv/write.ts';
import { emptyKit, type Kit, type KitItem } from '../../src/kit/model.ts';
import { readKit } from '../../src/kit/read.ts';
import { writeKit } from '../../src/kit/write.ts';
import { kitNoteText, kitProblemLines } from '../../src/words/kit-problems.ts';
import { kitOf, lockItem } from './cupboards.ts';

function read(text: string) {
  let made = 0;
  return readKit(text, { newId: () => `new${++made}` });
}

function items(text: string): readonly KitItem[] {
  const result = read(text);
  if (!result.ok) throw new Error(kitProblemLines(result.problems, result.more).join('\n'));
  return result.kit.items;
}

function problems(text: string): string[] {
  const result = read(text);
  return result.ok ? [] : kitProblemLines(result.problems, result.more);
}

/** Texts as a cell can hold them: with something in it, no space at the ends. */
const word = fc
  .oneof(
    fc.string({ minLength: 1, maxLength: 8 }),
    fc.constantFrom('=1+1', "'=x", '-5', '@a', '"', 'a;b', 'a,b', '+', 'é'),
  )
  .map((text) => text.replace(/\r\n?/gu, '\n').trim())
  .filter((text) => text !== '' && !/^="/u.test(text));
const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined });
const given = (fields: object) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
const millimetres = fc.integer({ min: 1, max: 400 }).map((tenths) => tenths / 10);
const wheel = fc.constantFrom('0123456789', 'ABC', 'FOX SUN BELL', '0-9');

const item = fc
  .record({
    label: word,
    count: fc.nat(1000),
    note: maybe(word),
    toBuy: maybe(fc.integer({ min: 1, max: 9 })),
    own: fc.oneof(
      fc.record({
        what: fc.constant('lock'),
        type: fc.constantFrom('key', 'number', 'picture', 'typed', 'magnet'),
        wheels: maybe(fc.array(wheel, { minLength: 1, maxLength: 5 })),
        marks: maybe(fc.integer({ min: 2, max: 100 })),
        shackleMm: maybe(millimetres),
        clearanceMm: maybe(millimetres),
        keyedAlike: maybe(word),
        keys: maybe(fc.integer({ min: 1, max: 3 })),
      }),
      fc.record({
        what: fc.constant('box'),
        takes: maybe(fc.constantFrom('nothing', 'lock', 'hasp')),
        holeMm: maybe(millimetres),
        roundMm: maybe(millimetres),
      }),
      fc.record({
        what: fc.constant('hasp'),
        holes: fc.integer({ min: 1, max: 9 }),
        holeMm: maybe(millimetres),
      }),
      fc.record({
        what: fc.constant('tool'),
        batteries: maybe(fc.boolean()),
        hazards: maybe(fc.array(fc.constantFrom('uv', 'magnet'), { minLength: 1, maxLength: 2 })),
      }),
    ),
  })
  .map(({ own, note, toBuy, ...common }) => ({ ...common, ...given({ note, toBuy }), ...given(own) }));

function kitFrom(drafts: readonly object[], places: readonly object[]): Kit {
  const file = {
    ...emptyKit,
    items: drafts.map((draft, i) => ({ ...draft, id: ['constructor', '__proto__'][i] ?? `i${i}` })),
    places: places.map((place, i) => ({ ...place, id: `p${i}` })),
  };
  const result = read(JSON.stringify(file));
  if (!result.ok) throw new Error(kitProblemLines(result.problems, 0).join('\n'));
  return result.kit;
}

const place = fc
  .record({
    name: word,
    zone: maybe(word),
    order: maybe(fc.integer({ min: -99, max: 99 })),
    offLimits: maybe(fc.boolean()),
  })
  .map(given);

describe('written and read again', () => {
  it('a kit is the same, as JSON and as tables', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 5 }), fc.array(place, { maxLength: 4 }), (drafts, places) => {
        const kit = kitFrom(drafts, places);
        expect(read(writeKit(kit))).toMatchObject({ ok: true, kit });
        expect(read(writeItems(kit))).toMatchObject({ ok: true, kit: { items: kit.items } });
        expect(read(writePlaces(kit))).toMatchObject({ ok: true, kit: { places: kit.places } });
        // A cell that begins with one of these would be run as a formula; a plain number is none.
        const cells = [writeItems(kit), writePlaces(kit)].flatMap((text) =>
          papa.parse<string[]>(text).data.flat(),
        );
        expect(cells.filter((cell) => /^[=+\-@\t\r]/u.test(cell) && !/^-\d+$/u.test(cell))).toEqual([]);
      }),
      { seed: 1955, numRuns: 300 },
    );
  });

  it('fields that this version does not know stay in JSON, and __proto__ keys do not', () => {
    const text = `{"format":"latchmap-kit","version":1,"shelf":{"a":1},"items":[{"id":"a","what":"lock","type":"magnet","label":"","count":1,"polish":true}],"places":[],"__proto__":{"x":1}}`;
    const result = read(text);
    if (!result.ok) throw new Error('refused');
    expect(result.kit).toMatchObject({ shelf: { a: 1 }, items: [{ polish: true }] });
    expect(Object.hasOwn(result.kit, '__proto__')).toBe(false);
    expect(result.notes.map(kitNoteText)).toEqual([
      'Fields named ‘__proto__’ were left away, because they could mislead programs.',
      'This version does not know the lock type “magnet”. It is kept.',
    ]);
  });
});

describe('a table as a teacher has it', () => {
  it('with a semicolon, a byte order mark and a decimal comma', () => {
    expect(items('\uFEFFThing;How many;Shackle mm\r\nNumber locks;2;6,5 mm\r\n;;\r\nbox;3;')).toEqual([
      { id: 'new1', ...lock('number', 2), shackleMm: 6.5 },
      { id: 'new2', label: '', count: 3, what: 'box' },
    ]);
  });

  it('with tabs, lone carriage returns, other headings, other order and full-width digits', () => {
    expect(items('QTY\tkind\tColour\r３\tword-lock\tred\r')).toEqual([
      { id: 'new1', ...lock('word', 3), label: 'red' },
    ]);
  });

  it('that says its separator, with line breaks within quotation marks', () => {
    expect(
      items(
        'sep=|\nThing|How many|Note\nhasp|1|"six\nholes"\n'
          .replace('Note', 'Holes')
          .replace('"six\nholes"', '6'),
      ),
    ).toMatchObject([{ what: 'hasp', holes: 6 }]);
    expect(problems('Thing,How many,Note\nbox,1,"a\nb"\nbox,few,\n')).toEqual([
      'Line 4, How many: “few” is no number.',
    ]);
  });

  it('with wheels in any of the usual ways', () => {
    const wheelsOf = (cell: string, thing = 'number lock') => {
      const [first] = items(`Thing,How many,Wheels\n${thing},1,"${cell}"\n`);
      return first?.what === 'lock' ? first.wheels : undefined;
    };
    expect(wheelsOf('3')).toEqual(['0123456789', '0123456789', '0123456789']);
    expect(wheelsOf('2 x 01234')).toEqual(['01234', '01234']);
    expect(wheelsOf('ABC DEF', 'word lock')).toEqual(['ABC', 'DEF']);
    expect(wheelsOf('ABC, DEF', 'word lock')).toEqual(['ABC', 'DEF']);
    expect(wheelsOf('FOX SUN / BELL CUP', 'picture lock')).toEqual(['FOX SUN', 'BELL CUP']);
  });

  it('with the words that stand on the plates and in the rows of the kit', () => {
    const table = [
      'number lock, 3 wheels',
      'dial lock, 60 marks',
      'hasp, 6 holes',
      'box, tin or bag',
      'UV lamp',
      'Torch',
    ]
      .map((thing) => `"${thing}"\t1\n`)
      .join('');
    expect(items(`Thing\tHow many\n${table}`).map(({ id: _, count: __, ...rest }) => rest)).toEqual([
      { what: 'lock', type: 'number', label: '', wheels: ['0123456789', '0123456789', '0123456789'] },
      { what: 'lock', type: 'dial', label: '', marks: 60 },
      { what: 'hasp', label: '', holes: 6 },
      { what: 'box', label: '' },
      { what: 'tool', label: 'UV lamp' },
      { what: 'tool', label: 'torch' },
    ]);
    // A cell of its own comes first, and so does a label.
    expect(items('Thing;How many;Wheels;Label\n"word lock, 4 wheels";1;2 × ABC;red\nmirror;1;;M\n')).toEqual([
      { id: 'new1', ...lock('word', 1), wheels: ['ABC', 'ABC'], label: 'red' },
      { id: 'new2', count: 1, what: 'tool', label: 'M' },
    ]);
    expect(problems('Thing;How many\n"unicorn, 3 wheels";1\n')[0]).toMatch(
      /“unicorn, 3 wheels” is not known/,
    );
  });

  it('with headings as they were written before', () => {
    expect(
      items(
        'Thing;How many;Numbers on dial;Keys alike with;Shackle goes round mm;Can hurt by\ndial lock;1;50;;;\nkey lock;1;;red;;\nbox;1;;;8;\ntool;1;;;;uvLight\n',
      ),
    ).toMatchObject([{ marks: 50 }, { keyedAlike: 'red' }, { roundMm: 8 }, { hazards: ['uvLight'] }]);
    const places = read('Place;Walk\nShelf;2\n');
    expect(places).toMatchObject({ ok: true, kit: { places: [{ order: 2 }] } });
  });

  it('without a column for how many: each line is one, and that is said', () => {
    const result = read('Thing\nkey lock\n');
    expect(result).toMatchObject({
      ok: true,
      kit: { items: [{ count: 1 }] },
      notes: [{ code: 'countAssumed' }],
    });
  });

  it('of places in one column, commas and all', () => {
    const result = read('Place\nShelf, top\n');
    expect(result).toMatchObject({ ok: true, kit: { places: [{ name: 'Shelf, top' }] } });
  });

  it('with columns that mean nothing here', () => {
    const result = read('Thing,How many,Price\nbox,1,3.50\n');
    expect(result.ok ? result.notes.map(kitNoteText) : []).toEqual([
      'The column “Price” means nothing here and was left away.',
    ]);
  });
});

function lock(type: string, count: number) {
  const { id: _, ...rest } = lockItem('', type, count);
  return rest;
}

describe('what is wrong is told with its place', () => {
  it.each([
    [
      'Label,How many\nred,3\n',
      ['A table needs a column headed “Thing” or “Place”. The first line says “Label” and “How many”.'],
    ],
    ['Thing,Type,How many\nbox,x,1\n', ['Two columns are headed “Thing”, or with words that mean the same.']],
    ['Thing,How many\nbox,1.5\n', ['Line 2, How many: “1.5” is no whole number.']],
    ['Thing,How many\nbox,-1\n', ['Line 2, How many: “-1” is too small: it should be 0 or more.']],
    ['Thing,How many\nbox,4000\n', ['Line 2, How many: “4000” is too large: it should be 1,000 or less.']],
    ['Thing,How many\nbox,\n', ['Line 2, How many: this is empty, and has to be there.']],
    [
      'Thing,How many,Shackle mm\nkey lock,1,0\n',
      ['Line 2, Shackle mm: “0” is too small: it should be above 0.'],
    ],
    ['Thing,How many\nhasp,1\n', ['Line 2, Holes: this is empty, and has to be there.']],
    [
      'Thing,How many,Wheels\nnumber lock,1,99\n',
      ['Line 2, Wheels: “99” is no row of wheels. Write, for instance, 4 × 0123456789.'],
    ],
    [
      'Thing,How many,Kept shut by\nbox,1,string\n',
      ['Line 2, Kept shut by: “string” is not known. Write lid, one lock or hasp.'],
    ],
    ['Place,Off limits\nSink,maybe\n', ['Line 2, Off limits: “maybe” is not known. Write yes or no.']],
    [
      'Thing,How many\nbox,2,5\n',
      [
        'Line 2 has 3 cells, and there are 2 columns. A text with a comma or another separator in it belongs in quotation marks.',
      ],
    ],
    ['Thing,How many\n"box,2\n', ['Line 2: a quotation mark is opened and never closed.']],
    ['Thing,How many,Id\nbox,2,a\nbox,2,a\n', ['Line 3: another line has its id, a.']],
    ['', ['This file is empty.']],
    ['{"format":"latchmap"}', ['This is a game and no kit. Open it as a game.']],
    ['{"format":', ['This is no kit, or only a part of one: it cannot be read as JSON.']],
    ['[]', ['This is JSON, but no kit.']],
    [
      '{"format":"latchmap-kit","version":2}',
      [
        'This kit was saved by a newer Latchmap (version 2 of the file; this one reads up to 1). Open it there.',
      ],
    ],
    [
      '{"format":"latchmap-kit","version":1,"items":[{"id":"a","what":"lock","type":"key","label":"red","count":-1}]}',
      ['Thing 1 (“red”): ‘count’ should be 0 or more, and is -1.'],
    ],
    [
      '{"format":"latchmap-kit","version":1,"places":[{"id":"a","name":"A"},{"id":"a","name":"B"}]}',
      ['Place 2 (“B”): another one in the file has its id, a.'],
    ],
  ])('%j', (text, told) => {
    expect(problems(text)).toEqual(told);
  });

  it('an unknown thing, with those that are known', () => {
    expect(problems('Thing,How many\nunicorn,1\n')).toEqual([
      'Line 2, Thing: “unicorn” is not known. Write key lock, number lock, word lock, direction lock, dial lock, picture lock, typed-code lock, box, hasp or tool.',
    ]);
  });

  it('bytes of real files, changed at random, throw nothing', () => {
    const kit = kitOf(lockItem('a', 'number', 2, { wheels: ['0123456789'] }), lockItem('b', 'key', 1));
    const sources = [writeKit(kit), writeItems(kit)];
    const change = fc.record({
      source: fc.nat(1),
      at: fc.nat(400),
      drop: fc.nat(6),
      text: fc.string({ maxLength: 4 }),
    });
    fc.assert(
      fc.property(change, ({ source, at, drop, text }) => {
        const from = sources[source] ?? '';
        const result = read(from.slice(0, at) + text + from.slice(at + drop));
        if (!result.ok) expect(kitProblemLines(result.problems, result.more).length).toBeGreaterThan(0);
      }),
      { seed: 4180, numRuns: 500 },
    );
  });
});
