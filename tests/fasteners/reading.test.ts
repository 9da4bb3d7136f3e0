/** Codes as teachers type and paste them: what is plain is understood, the rest is told with its place. */
import { describe, expect, test } from 'vitest';
import { type FastenerType, fastenerType, type Hardware } from '../../src/fasteners/index.ts';

const number = fastenerType('number');
const word = fastenerType('word');
const dial = fastenerType('dial');
const picture = fastenerType('picture');
const typed = fastenerType('typed');

const read = (type: FastenerType, text: string, hardware?: Hardware) => {
  const reading = type.read(text, hardware);
  return reading.ok ? reading.code : reading.trouble;
};

describe('digits', () => {
  test.each([
    ['472', '472'],
    [' 4 7 2 ', '472'],
    ['4-7-2', '472'],
    ['4, 7, 2', '472'],
    ['4/7/2', '472'],
    ['４７２', '472'],
    ['٤٧٢', '472'],
    ['४७२', '472'],
    ['4️⃣7️⃣2️⃣', '472'],
    ['④⑦②', '472'],
    ['007', '007'],
  ])('%s', (text, code) => {
    expect(read(number, text)).toBe(code);
  });

  test.each([
    ['4O2', 2, 'O'],
    ['four', 1, 'F'],
    ['47😀', 3, '😀'],
    ['½7', 2, '⁄'],
    ['-', 0, ''],
  ])('not digits: %s', (text, position, symbol) => {
    const reading = number.read(text);
    if (position === 0) expect(reading).toEqual({ ok: true, code: '' });
    else expect(reading).toEqual({ ok: false, trouble: { trouble: 'digitWanted', position, symbol } });
  });

  test('letters that its own wheels show are meant', () => {
    expect(read(number, '4a2', { wheels: ['0-9', 'ABC', '0-9'] })).toBe('4A2');
    expect(read(number, '4d2', { wheels: ['0-9', 'ABC', '0-9'] })).toMatchObject({
      position: 2,
      symbol: 'D',
    });
  });
});

describe('letters', () => {
  test.each([
    ['core', 'CORE'],
    ['ＣＯＲＥ', 'CORE'],
    ['Café', 'CAFE'],
    ['Cafe\u0301', 'CAFE'],
    ['straße', 'STRASSE'],
    ['œuf', 'OEUF'],
    ['smørrebrød', 'SMORREBROD'],
    ['don’t', 'DONT'],
    ['ice cream', 'ICECREAM'],
    ['merry-go-round', 'MERRYGOROUND'],
    ['КОД', 'КОД'],
  ])('%s', (text, code) => {
    expect(read(word, text)).toBe(code);
  });

  test('a mark that the wheels have is kept', () => {
    const wheels = ['ABC', 'AÑO', 'ÑN'];
    expect(read(word, 'año', { wheels })).toBe('AÑO');
    expect(read(word, 'cañ', { wheels })).toBe('CAÑ');
    expect(read(word, 'éa', { wheels })).toBe('EA');
  });

  test.each([
    ['c0re', 2, '0'],
    ['fox🦊', 4, '🦊'],
    ['R&D', 2, '&'],
  ])('not letters: %s', (text, position, symbol) => {
    expect(read(word, text)).toEqual({ trouble: 'letterWanted', position, symbol });
  });
});

describe('numbers of a dial', () => {
  test.each([
    ['32 14 25', '32 14 25'],
    ['32-14-25', '32 14 25'],
    ['32.14.25', '32 14 25'],
    ['32, 14 / 25', '32 14 25'],
    ['05 00 7', '5 0 7'],
    ['３２－１４－２５', '32 14 25'],
    ['R32 L14 R25', '32 14 25'],
    ['32 right, 14 left, 25 right', '32 14 25'],
    ['right 32 left 14 right 25', '32 14 25'],
  ])('%s', (text, code) => {
    expect(read(dial, text)).toBe(code);
    expect(dial.symbols(text)).toEqual(code.split(' '));
  });

  test.each([
    ['32 fox 25', { trouble: 'numberWanted', position: 2, symbol: 'FOX' }],
    ['321425', { trouble: 'numbersRunTogether', position: 1, symbol: '321425' }],
    ['L32 R14 L25', { trouble: 'turning', position: 1, symbol: 'L' }],
    ['R32 L14 25', { trouble: 'turning', position: 3, symbol: '' }],
  ])('not numbers of a dial: %s', (text, trouble) => {
    expect(read(dial, text)).toEqual(trouble);
    expect(dial.symbols(text).length).toBeGreaterThan(0);
  });
});

describe('pictures', () => {
  test.each([
    ['fox sun bell', 'FOX SUN BELL'],
    ['Fox, sun; bell', 'FOX SUN BELL'],
    ['fox – sun – bell', 'FOX SUN BELL'],
    ['fox/sun/bell', 'FOX SUN BELL'],
    ['T-Rex sun', 'T-REX SUN'],
    ['🦊☀️🔔', '🦊 ☀️ 🔔'],
    ['👩‍🚀 🏳️‍🌈', '👩‍🚀 🏳️‍🌈'],
    ['rouge été', 'ROUGE ÉTÉ'],
  ])('%s', (text, code) => {
    expect(read(picture, text)).toBe(code);
    expect(picture.symbols(text)).toEqual(code.split(' '));
  });
});

describe('answers that are typed in', () => {
  test.each([
    ['kd413', 'KD413'],
    ['  red   fox ', 'RED FOX'],
    ['ＫＤ４１３', 'KD413'],
    ['naïve?', 'NAÏVE?'],
  ])('%s', (text, code) => {
    expect(read(typed, text)).toBe(code);
  });
});

describe('what the wheels of a lock show', () => {
  const shown = (type: FastenerType, ...wheels: string[]) =>
    wheels.map((_, position) => type.wheel(position, { wheels }));

  test('is read as a code of that type is, each symbol once', () => {
    expect(shown(number, '0123', '0-3', '3 2 1', '３３', '1,2')).toEqual([
      ['0', '1', '2', '3'],
      ['0', '1', '2', '3'],
      ['3', '2', '1'],
      ['3'],
      ['1', '2'],
    ]);
    expect(shown(word, 'abcé', 'A–E', 'S T')).toEqual([['A', 'B', 'C', 'É'], [...'ABCDE'], ['S', 'T']]);
    expect(shown(picture, 'fox sun bell', '🦊☀️🔔', 'red, blue')).toEqual([
      ['FOX', 'SUN', 'BELL'],
      ['🦊', '☀️', '🔔'],
      ['RED', 'BLUE'],
    ]);
  });

  test('may differ from wheel to wheel', () => {
    const wheels = ['ABCDEF', 'AE', 'NRST'];
    expect(word.length({ wheels })).toBe(3);
    expect(word.misfits([...'BET'], { wheels })).toEqual([]);
    expect(word.misfits([...'BOTS'], { wheels })).toEqual([
      { misfit: 'length', wanted: 3, got: 4, assumed: false },
      { misfit: 'symbol', position: 2, symbol: 'O', wheel: ['A', 'E'], assumed: false },
    ]);
    expect(word.codes(3, { wheels })).toBe(6 * 2 * 4);
    expect(word.left(3, { wheels }, new Set([0, 2]))).toBe(2);
  });
});

describe('weak codes', () => {
  const reason = (type: string, code: string, options?: { year?: number; hardware?: Hardware }) => {
    const { symbols, weak } = fastenerType(type);
    return weak(symbols(code), options);
  };

  test.each([
    ['number', '0000', 'factorySetting'],
    ['number', '5555', 'allAlike'],
    ['number', '9876', 'run'],
    ['number', '8901', 'run'],
    ['number', '121212', 'repeated'],
    ['number', '2049', 'year'],
    ['word', 'ABCD', 'run'],
    ['word', 'PAPA', 'repeated'],
    ['direction', 'LLLL', 'allAlike'],
    ['direction', 'RDLU', 'run'],
    ['direction', 'UDLUDL', 'repeated'],
    ['dial', '35 25 15', 'run'],
    ['dial', '7 7 7', 'allAlike'],
    ['picture', 'FOX SUN FOX SUN', 'repeated'],
    ['typed', 'DCBA', 'run'],
    ['typed', '2031', 'year'],
  ])('%s %s: %s', (type, code, why) => {
    expect(reason(type, code)).toBe(why);
  });

  test.each([
    ['number', '12'],
    ['number', '1492'],
    ['number', '471'],
    ['number', '1221'],
    ['word', 'CORE'],
    ['direction', 'UDL'],
    ['dial', '32 14 25'],
    ['picture', 'FOX SUN'],
    ['key', '111'],
    ['latch', '111'],
  ])('%s %s is none', (type, code) => {
    expect(reason(type, code)).toBeUndefined();
  });

  test('the year, where it is known, is that year and those beside it', () => {
    expect(reason('number', '2027', { year: 2026 })).toBe('year');
    expect(reason('number', '2012', { year: 2026 })).toBeUndefined();
  });

  test('a lock whose wheels begin elsewhere comes from the shop otherwise', () => {
    const hardware = { wheels: ['123456', '123456', '123456'] };
    expect(reason('number', '111', { hardware })).toBe('factorySetting');
    expect(reason('word', 'BAD', { hardware: { wheels: ['BCS', 'AEI', 'DNT'] } })).toBe('factorySetting');
  });
});
