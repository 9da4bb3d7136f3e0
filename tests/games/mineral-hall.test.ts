/** Plays the game from its texts. What a pupil has to know is in the tables of this file: school geology, common practice. */
import { expect, test } from 'vitest';
import { normaliseCode } from '../../src/game/codes.ts';
import { groups, known, only, openExample } from './example.ts';

const game = openExample('mineral-hall');

test('the first thing that scratches a sample, and its shine, give the word of the slate case', () => {
  const bands = game
    .lines('strip')
    .filter((line) => /: dull/.test(line))
    .map((line) => groups(line, /^(.+): dull ([A-Z]), shiny ([A-Z])$/));
  expect(new Set(bands.flatMap(([, dull, shiny]) => [dull, shiny])).size).toBe(10);
  const scratchers = bands.map(([name]) => name).slice(0, -1);
  const samples = game.lines('scratch').filter((line) => /^Sample/.test(line));
  expect(samples).toHaveLength(4);
  const letters = samples.map((line) => {
    const [list = '', shine = ''] = groups(line, /^Sample \d: (.+); (dull|shiny)$/);
    const marks = list.split(', ').map((mark) => groups(mark, /^(.+) (yes|no)$/));
    expect(marks.map(([name]) => name)).toEqual(scratchers);
    const first = marks.findIndex(([, mark]) => mark === 'yes');
    const harder = first === -1 ? [] : marks.slice(first);
    expect(harder.every(([, mark]) => mark === 'yes')).toBe(true);
    const [, dull, shiny] = bands.at(first) ?? [];
    return shine === 'dull' ? dull : shiny;
  });
  expect(letters.join('')).toBe(game.code('scratchtest'));
  expect(letters.join('')).toBe(game.code('slatelock'));
});

test('the three gauges give the numbers for the dial of the lens tin', () => {
  const readings = game
    .lines('gauges')
    .filter((line) => /equal spaces/.test(line))
    .map((line) => {
      const [numbers = '', spaces, past, from] = groups(
        line,
        /numbers at ([\d, ]+) \w+; (\d+) equal spaces between two numbers; pointer (\d+) spaces? past (\d+)$/,
      );
      const [zero, next] = numbers.split(', ').map(Number);
      expect(zero).toBe(0);
      expect(numbers.split(', ')).toContain(from);
      expect(Number(past)).toBeLessThan(Number(spaces));
      return Number(from) + (Number(next) / Number(spaces)) * Number(past);
    });
  expect(readings).toEqual([32, 14, 25]);
  const asked = game.lines('readscales').filter((line) => / of the (?!lens tin)/.test(line));
  expect(asked.map((line) => line.split(' ')[0])).toEqual(['first', 'then', 'last']);
  const names = ['balance', 'thermometer', 'measuring jug'];
  const numbers = asked.map((line) => {
    const gauge = only(
      names.flatMap((name, index) => (line.endsWith(name) ? [index] : [])),
      line,
    );
    return readings[gauge];
  });
  expect(numbers.join(' ')).toBe(game.node('readscales').answer);
  expect(numbers.join(' ')).toBe(game.node('lenslock').code);
  const [highest] = groups(game.node('lenslock').note ?? '', /0 to (\d+)/);
  for (const number of numbers) expect(number).toBeLessThanOrEqual(Number(highest));
});

/** Grams of a mass written as kilograms, grams or both. */
function grams(mass: string): number {
  const both = /^(\d+) kg (\d+) g$/.exec(mass);
  if (both) return Number(both[1]) * 1000 + Number(both[2]);
  const [amount, unit] = groups(mass, /^([\d.]+) (kg|g)$/);
  return Number(amount) * (unit === 'kg' ? 1000 : 1);
}

test('the pictures of the crates from light to heavy open the courier box', () => {
  const crates = game
    .lines('freight')
    .filter((line) => /; \w+$/.test(line))
    .map((line) => {
      const [mass = '', picture = ''] = groups(line, /: (.+); (\w+)$/);
      return { grams: grams(mass), picture };
    })
    .toSorted((a, b) => a.grams - b.grams);
  expect(crates.map((crate) => crate.grams)).toEqual([980, 1090, 1250, 1400]);
  const code = normaliseCode(crates.map(({ picture }) => picture).join(' '));
  expect(code).toBe(game.code('weigh'));
  expect(code).toBe(game.code('courierlock'));
});

const ORIGIN_OF_ROCK = [
  [/^Card \d, granite/, 'cooled slowly'],
  [/^Card \d, pumice/, 'cooled fast'],
  [/^Card \d, (sandstone|limestone)/, 'settled in layers'],
  [/^Card \d, marble/, 'changed by heat or pressure'],
] as const;

const ARROWS = new Map([
  ['LEFT', 'L'],
  ['RIGHT', 'R'],
  ['UP', 'U'],
  ['DOWN', 'D'],
]);

test('how each rock was made gives the directions for the field bag', () => {
  const rules = game.lines('tree').filter((line) => /: [A-Z]+$/.test(line));
  expect(rules).toHaveLength(4);
  const cards = game.lines('cards').filter((line) => /^Card/.test(line));
  expect(cards).toHaveLength(5);
  const moves = cards.map((card) => {
    const rule = only(
      rules.filter((line) => line.includes(known(ORIGIN_OF_ROCK, card))),
      card,
    );
    return ARROWS.get(groups(rule, /: ([A-Z]+)$/)[0] ?? '');
  });
  expect(moves.join('')).toBe(game.code('formed'));
  expect(normaliseCode(moves.join(''))).toBe(game.code('baglock'));
});

test('the caretaker walks to the globe, inside the plan all the way', () => {
  const spots = new Map(
    game.lines('plan').flatMap((line) => {
      const match = /^([a-z ]+) ([A-E])([1-5])$/.exec(line);
      return match ? [[`${match[2]}${match[3]}`, match[1]]] : [];
    }),
  );
  expect(spots.size).toBe(8);
  expect(spots.get('A1')).toBe('door');
  let [column, row] = [0, 1];
  const walk = game.lines('round').filter((line) => /^(north|south|east|west) \d$/.test(line));
  expect(walk).toHaveLength(4);
  for (const line of walk) {
    const [way, count] = groups(line, /^(\w+) (\d)$/);
    column += (way === 'east' ? 1 : way === 'west' ? -1 : 0) * Number(count);
    row += (way === 'north' ? 1 : way === 'south' ? -1 : 0) * Number(count);
    expect(column).toBeGreaterThanOrEqual(0);
    expect(column).toBeLessThan(5);
    expect(row).toBeGreaterThanOrEqual(1);
    expect(row).toBeLessThanOrEqual(5);
  }
  const spot = spots.get(`${'ABCDE'.charAt(column)}${row}`) ?? '';
  expect(normaliseCode(spot)).toBe(game.code('findbox'));
  expect(game.node('globe').name.toLowerCase()).toContain(spot);
});

const WORD_FOR_MEANING = [
  [/left of a living thing/, 'FOSSIL'],
  [/throws back the light/, 'LUSTRE'],
  [/natural substance/, 'MINERAL'],
  [/resists scratching/, 'HARDNESS'],
  [/line of powder/, 'STREAK'],
] as const;

test('the words of the trade give the word under the lens', () => {
  const words = groups(game.text('tiny'), /^WORDS OF THE TRADE: (.+)$/m)[0]?.split(', ') ?? [];
  const letters = game
    .lines('tiny')
    .filter((line) => /: letter \d$/.test(line))
    .map((line) => {
      const word = known(WORD_FOR_MEANING, line);
      expect(words).toContain(word);
      return word.charAt(Number(groups(line, /letter (\d)$/)[0]) - 1);
    });
  expect(letters.join('')).toBe(game.code('underlens'));
  expect(letters.join('')).toBe(game.code('caseword'));
});

const SHAPES = [
  [/is a cube\. How many faces/, '6'],
  [/can be an octahedron.* How many edges/, '12'],
  [/all rhombuses\. How many corners has one such face/, '4'],
] as const;

test('three scraps give the four wheels of the number lock of the case', () => {
  const wheels = ['first', 'second', 'third', 'fourth'];
  const code: string[] = [];
  for (const id of ['scrap1', 'scrap2', 'scrap3']) {
    const text = game.text(id);
    const [named = ''] = groups(text, /^CURATOR'S CASE, (.+) wheels?$/m);
    const at = named.split(' and ').map((name) => wheels.indexOf(name) + 1);
    const link = game.file.links.find((one) => one.from === id && one.to === 'casenumber');
    expect(link?.at).toEqual(at);
    expect(known(SHAPES, text)).toBe(game.code(id));
    expect(game.code(id)).toHaveLength(at.length);
    for (const [i, wheel] of at.entries()) code[wheel - 1] = game.code(id).charAt(i);
  }
  expect(code).toHaveLength(wheels.length);
  expect(code.join('')).toBe(game.code('casenumber'));
});

test('one stone of the table fits the report, and each line of the report is needed', () => {
  const stones = game
    .lines('table')
    .filter((line) => /; [A-Z]+\d+$/.test(line))
    .map((line) => {
      const [name, lustre, streak, magnet, glass, mark] = groups(
        line,
        /^(\w+): ([\w-]+); ([\w-]+); (yes|no); (yes|no); ([A-Z]{2}\d{3})$/,
      );
      return { name, lustre, streak, magnet, glass, mark };
    });
  expect(new Set(stones.map((stone) => stone.mark)).size).toBe(8);
  const report = game.text('report');
  const [lustre] = groups(report, /^lustre: (\w+)$/m);
  const [notStreak] = groups(report, /^streak: not (.+)$/m);
  const [magnet] = groups(report, /^sticks to a magnet: (yes|no)$/m);
  const [glass] = groups(report, /^scratches glass: (yes|no)$/m);
  const tests = [
    (stone: (typeof stones)[number]) => stone.lustre === lustre,
    (stone: (typeof stones)[number]) => stone.streak !== notStreak,
    (stone: (typeof stones)[number]) => stone.magnet === magnet,
    (stone: (typeof stones)[number]) => stone.glass === glass,
  ];
  const stone = only(
    stones.filter((one) => tests.every((fits) => fits(one))),
    report,
  );
  expect(stone.name).toBe('Pyrite');
  expect(stone.mark).toBe(game.code('nameit'));
  expect(stone.mark).toBe(game.code('tabletcode'));
  for (const dropped of tests) {
    const fits = stones.filter((one) => tests.every((test) => test === dropped || test(one)));
    expect(fits.length).toBeGreaterThan(1);
  }
});
