/** What every type of fastener has to hold to, whatever its codes look like. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FASTENER_TYPES, fastenerType, type Hardware } from '../../src/fasteners/index.ts';
import { ABILITIES } from '../../src/game/abilities.ts';
import { normaliseCode } from '../../src/game/codes.ts';
import { seededRandom } from '../random-game.ts';

const SEED = { seed: 20261125, numRuns: 200 };
const TYPES = [...FASTENER_TYPES, fastenerType('a type from elsewhere'), fastenerType(undefined)];

/** Locks as the document may describe them: as usual, wheels of different lengths, names, a small dial. */
const HARDWARES: readonly (Hardware | undefined)[] = [
  undefined,
  {},
  { wheels: ['0123456789', '0123456789', '0123456789'] },
  { wheels: ['13579', '0-4', '7'] },
  { wheels: ['ABCDÉ', 'ELMNO', 'ST'] },
  { wheels: ['FOX SUN BELL', 'CUP FOX', 'SUN MOON'] },
  { marks: 60 },
  { trySeconds: 3 },
];

const PIECES = [
  ...'047O9ABÉßzñ４٧७↑←⬅️🦊☀️👩‍🚀 ',
  'up',
  'left ',
  'R',
  'FOX ',
  '-',
  ', ',
  '/',
  '4️⃣',
  '\u0301',
  '\u0000',
  '__proto__',
  '32 ',
  '🏳️‍🌈',
];
const text = fc.oneof(
  fc.array(fc.constantFrom(...PIECES), { maxLength: 12 }).map((pieces) => pieces.join('')),
  fc.string({ unit: 'binary', maxLength: 12 }),
);

describe.each(TYPES)('a fastener of type $type', (type) => {
  const random = seededRandom(7);
  const pick = (count: number) => Math.floor(random() * count);

  test('says how long it takes and what it asks for, in words that the document knows', () => {
    const { low, likely, high } = type.minutes;
    expect(low).toBeLessThanOrEqual(likely);
    expect(likely).toBeLessThanOrEqual(high);
    expect(type.trySeconds).toBeGreaterThan(0);
    for (const ability of type.asks) expect(ABILITIES).toContain(ability);
    expect(new Set(type.asks).size).toBe(type.asks.length);
  });

  test('has wheels where these fix how long its code is, and draws a code of the usual length', () => {
    const fixed = HARDWARES.filter((hardware) => hardware?.wheels).map((hardware) => type.length(hardware));
    expect(fixed).toEqual(fixed.map(() => (type.hasWheels ? 3 : undefined)));
    const { usualLength } = type;
    if (usualLength !== undefined) expect(type.draw(pick, usualLength)).toHaveLength(usualLength);
  });

  test('takes any text apart without a throw, into symbols that are normalised and never empty', () => {
    fc.assert(
      fc.property(text, (typed) => {
        for (const symbol of type.symbols(typed)) {
          expect(symbol).not.toBe('');
          expect(normaliseCode(symbol)).toBe(symbol);
        }
      }),
      SEED,
    );
  });

  test('stores one form: what it has read it reads again as the same', () => {
    fc.assert(
      fc.property(text, fc.constantFrom(...HARDWARES), (typed, hardware) => {
        const reading = type.read(typed, hardware);
        if (!reading.ok) return;
        expect(type.read(reading.code, hardware)).toEqual(reading);
        const symbols = type.symbols(reading.code);
        expect(type.symbols(type.write(symbols))).toEqual(symbols);
      }),
      SEED,
    );
  });

  test('reads nothing as no code', () => {
    for (const typed of ['', '  ', '\t\n']) {
      expect(type.read(typed)).toEqual({ ok: true, code: '' });
      expect(type.symbols(typed)).toEqual([]);
    }
    for (const hardware of HARDWARES) expect(type.misfits([], hardware)).toEqual([]);
  });

  test('fits exactly the codes whose length and symbols the lock has', () => {
    fc.assert(
      fc.property(text, fc.constantFrom(...HARDWARES), (typed, hardware) => {
        const symbols = type.symbols(typed);
        if (symbols.length === 0) return;
        const length = type.length(hardware);
        const wrong = symbols.flatMap((symbol, i) =>
          type.wheel(i, hardware)?.includes(symbol) === false ? [i + 1] : [],
        );
        const misfits = type.misfits(symbols, hardware);
        const told = misfits.flatMap((one) => (one.misfit === 'symbol' ? [one.position] : []));
        expect(told).toEqual(wrong);
        const lengths = misfits.filter((one) => one.misfit === 'length' && !one.assumed);
        expect(lengths.length > 0).toBe(length !== undefined && length !== symbols.length);
      }),
      SEED,
    );
  });

  test('has as many codes left as there are wheels to turn', () => {
    for (const hardware of HARDWARES) {
      const length = type.length(hardware) ?? 3;
      const all = type.codes(length, hardware);
      expect(all).toBeGreaterThanOrEqual(1);
      expect(type.left(length, hardware, new Set())).toBe(all);
      expect(type.left(length, hardware, new Set([0, 1, 2]))).toBe(1);
      const one = type.left(length, hardware, new Set([1]));
      expect(one).toBeLessThanOrEqual(all);
      const shown = type.wheel(1, hardware);
      if (shown) expect(one * shown.length).toBe(all);
      expect(type.left(length, hardware, new Set([99]))).toBe(all);
    }
  });

  test('draws codes that the lock can show, that are not weak and are written in the stored form', () => {
    for (const hardware of HARDWARES) {
      const length = type.length(hardware) ?? 3;
      for (let draw = 0; draw < 40; draw++) {
        const code = type.draw(pick, length, hardware);
        if (code.length === 0) break;
        expect(code).toHaveLength(length);
        expect(type.misfits(code, hardware)).toEqual([]);
        expect(type.weak(code, { hardware })).toBeUndefined();
        expect(type.read(type.write(code), hardware)).toEqual({ ok: true, code: type.write(code) });
        expect(type.symbols(type.write(code))).toEqual(code);
      }
    }
  });

  test('finds no code of one symbol weak, and any pattern the same for the same code', () => {
    fc.assert(
      fc.property(text, (typed) => {
        const symbols = type.symbols(typed);
        if (symbols.length === 1) expect(type.weak(symbols)).toBeUndefined();
        expect(type.weak([...symbols])).toBe(type.weak(symbols));
      }),
      SEED,
    );
  });
});
