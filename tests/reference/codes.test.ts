/**
 * How many codes a lock has, and how many tries a search takes, against published figures, by counting rules and by trying them all.
 * - Multiplication principle: Levin, Discrete Mathematics: An Open Introduction, 3rd edition, section 1.1: plates of three letters and
 *   three digits, 26³ · 10³ of them, and 1000 ways for the digits alone. The same lock of three wheels of ten: University of
 *   Regina, Math Central, question QQ.09.18 (Antony), 1000.
 * - Variations with repetition: n symbols at k positions make nᵏ (any textbook of combinatorics; from memory).
 * - Tries: University of Southampton, EdShare document 6269: of n keys one opens the door; with wrong ones laid aside (n + 1) / 2
 *   tries are expected, with wrong ones mixed in again n.
 */
import { describe, expect, test } from 'vitest';
import { minutesOfTrying } from '../../src/engine/guess/guess.ts';
import { fastenerType, type Hardware } from '../../src/fasteners/index.ts';
import { assess } from '../../src/findings/assess.ts';
import { gameOf } from '../game-of.ts';
import { seededRandom } from '../random-game.ts';

describe('numbers of codes', () => {
  const digits = Array.from({ length: 3 }, () => '0123456789');
  const letters = Array.from({ length: 3 }, () => 'ABCDEFGHIJKLMNOPQRSTUVWXYZ');

  test.each([
    ['three wheels of digits', 'number', 3, { wheels: digits }, 1000],
    [
      'a plate of three letters and three digits',
      'number',
      6,
      { wheels: [...letters, ...digits] },
      17_576_000,
    ],
  ] as const)('%s', (_, type, length, hardware, codes) => {
    const known = hardware && { wheels: [...hardware.wheels] };
    expect(fastenerType(type).codes(length, known)).toBe(codes);
  });

  test.each([
    ['number', 10],
    ['word', 26],
    ['direction', 4],
    ['dial', 40],
    ['picture', 10],
  ] as const)('a %s lock that is as usual: variations with repetition of %i symbols', (type, symbols) => {
    for (let length = 1; length <= 6; length++) {
      expect(fastenerType(type).codes(length)).toBe(symbols ** length);
      expect(fastenerType(type).left(length, undefined, new Set([0]))).toBe(symbols ** (length - 1));
    }
  });

  test('a typed answer has as many as its kind of signs', () => {
    const { codes, left } = fastenerType('typed');
    expect(codes(4, undefined, [...'4172'])).toBe(10 ** 4);
    expect(codes(4, undefined, [...'FERN'])).toBe(26 ** 4);
    expect(codes(5, undefined, [...'KD413'])).toBe(36 ** 5);
    expect(left(4, undefined, new Set([1, 3]), [...'FERN'])).toBe(26 ** 2);
  });
});

/** All codes of so many symbols out of these. */
function* variations(symbols: readonly string[], length: number): Generator<string[]> {
  if (length === 0) {
    yield [];
    return;
  }
  for (const first of symbols) for (const rest of variations(symbols, length - 1)) yield [first, ...rest];
}

/** Every code of the length that can be made of what stands anywhere on the lock, and something that does not, if the lock can show it. */
function shownCodes(type: string, length: number, hardware: Hardware | undefined): string[][] {
  const { wheel, misfits } = fastenerType(type);
  const symbols = new Set(['?']);
  for (let position = 0; position < length; position++) {
    for (const symbol of wheel(position, hardware) ?? []) symbols.add(symbol);
  }
  return [...variations([...symbols], length)].filter((code) => misfits(code, hardware).length === 0);
}

const SMALL: readonly (readonly [type: string, length: number, hardware: Hardware | undefined])[] = [
  ['number', 2, undefined],
  ['number', 3, { wheels: ['0-4', '13579', '28'] }],
  ['word', 3, { wheels: ['ABCD', 'EIO', 'NST'] }],
  ['picture', 3, { wheels: ['FOX SUN BELL', 'CUP FOX', 'SUN MOON BELL CUP'] }],
  ['direction', 5, undefined],
  ['dial', 3, { marks: 12 }],
];

describe('trying all codes of a small lock', () => {
  test.each(SMALL)('%s of %i: as many as it says, and as many as are left', (type, length, hardware) => {
    const { codes, left } = fastenerType(type);
    const all = shownCodes(type, length, hardware);
    expect(codes(length, hardware)).toBe(all.length);
    const random = seededRandom(11);
    for (let round = 0; round < 12; round++) {
      const right = all[Math.floor(random() * all.length)] ?? [];
      const known = new Set(right.flatMap((_, position) => (random() < 0.5 ? [position] : [])));
      const agree = all.filter((code) => [...known].every((position) => code[position] === right[position]));
      expect(left(length, hardware, known)).toBe(agree.length);
    }
  });

  test('a length that the lock cannot have has none', () => {
    const three = { wheels: ['0-9', '0-9', '0-9'] };
    expect(fastenerType('number').codes(2, three)).toBe(0);
    expect(shownCodes('number', 2, three)).toEqual([]);
  });
});

describe('tries until a lock opens', () => {
  test('are (n + 1) / 2 on average over all codes, in whatever order they are tried', () => {
    for (const [type, length, hardware] of SMALL) {
      const all = shownCodes(type, length, hardware);
      const order = shuffled(all, seededRandom(3)).map((code) => code.join(' '));
      const tries = all.map((code) => order.indexOf(code.join(' ')) + 1);
      const mean = tries.reduce((sum, tried) => sum + tried, 0) / all.length;
      expect(mean).toBeCloseTo((all.length + 1) / 2, 9);
    }
  });

  /** Ten keys, or the ten symbols of a wheel. */
  const TEN = 10;
  const PLAYS = 20_000;

  test('by play: wrong ones laid aside (n + 1) / 2, mixed in again n', () => {
    const random = seededRandom(20261125);
    let aside = 0;
    let again = 0;
    for (let play = 0; play < PLAYS; play++) {
      const right = Math.floor(random() * TEN);
      aside +=
        shuffled(
          Array.from({ length: TEN }, (_, key) => key),
          random,
        ).indexOf(right) + 1;
      do again++;
      while (Math.floor(random() * TEN) !== right);
    }
    // Standard errors of the means: √((n² − 1) / 12 / plays) = 0.020, and √(n² − n) / √plays = 0.067; four of them each.
    expect(Math.abs(aside / PLAYS - 5.5)).toBeLessThan(0.081);
    expect(Math.abs(again / PLAYS - TEN)).toBeLessThan(0.27);
  });

  test('by play: the last wheel of a lock takes the minutes that the engine says', () => {
    const game = gameOf(
      [
        { id: 'one', kind: 'clue', answer: '6' },
        { id: 'two', kind: 'clue', answer: '12' },
        { id: 'sum', kind: 'puzzle', answer: '4' },
        { id: 'case', kind: 'container' },
        {
          id: 'lock',
          kind: 'fastener',
          on: 'case',
          type: 'number',
          code: '6124',
          hardware: { trySeconds: 4 },
        },
        { id: 'map', kind: 'prize', in: 'case' },
      ],
      ['one>lock@1', 'two>lock@2,3', 'sum>lock@4'],
    );
    const { context, network } = assess(game);
    const guess = context.guesses().locks.get(network.index.get('lock') ?? -1);
    const stage = guess?.stages.find(({ known }) => known.length === 3);
    expect([guess?.codes, stage?.left]).toEqual([10_000, 10]);
    const random = seededRandom(7);
    let seconds = 0;
    for (let play = 0; play < PLAYS; play++) {
      let symbol = Math.floor(random() * TEN);
      const right = Math.floor(random() * TEN);
      for (seconds += 4; symbol !== right; seconds += 4) symbol = (symbol + 1) % TEN;
    }
    const minutes = seconds / PLAYS / 60;
    expect(stage?.minutes).toBeCloseTo(minutesOfTrying(10, 4), 9);
    // Four standard errors of 0.020 tries of four seconds.
    expect(Math.abs((stage?.minutes ?? 0) - minutes)).toBeLessThan((0.081 * 4) / 60);
  });
});

function shuffled<T>(things: readonly T[], random: () => number): T[] {
  const mixed = [...things];
  for (let last = mixed.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    const [a, b] = [mixed[last], mixed[other]];
    if (a === undefined || b === undefined) continue;
    mixed[last] = b;
    mixed[other] = a;
  }
  return mixed;
}
