/** Plays the game from its texts. What a pupil has to know is in the tables of this file: school botany, common practice. */
import { expect, test } from 'vitest';
import { groups, known, only, openExample } from './example.ts';

const game = openExample('greenhouse-pump');

const PART_BY_JOB = [
  [/holds? the plant up/, 'stem'],
  [/catch the sunlight/, 'leaves'],
  [/calls the bees/, 'petals'],
] as const;

test('the jobs on the slip and the numbers on the card open the seed tin', () => {
  const numbers = new Map(
    game.lines('plantcard').flatMap((line) => {
      const match = /^(\w+)\b.* (\d)$/.exec(line);
      return match ? [[match[1], match[2]]] : [];
    }),
  );
  expect(new Set(numbers.values()).size).toBe(6);
  const wheels = game.lines('jobslip').filter((line) => / wheel: /.test(line));
  expect(wheels.map((line) => groups(line, /^(\w+) wheel/)[0])).toEqual(['First', 'Second', 'Third']);
  const code = wheels.map((line) => numbers.get(known(PART_BY_JOB, line))).join('');
  expect(code).toBe(game.code('whodoes'));
  expect(code).toBe(game.code('seedlock'));
});

/** Walks the branching key with the words of one leaf; each branch must have just one of its two conditions true. */
function walk(leaf: string): { tree: string; letter: string } {
  const entries = new Map(
    game
      .lines('leafkey')
      .filter((line) => /^\d\. /.test(line))
      .map((line) => [line.slice(0, 1), line.slice(3)]),
  );
  let entry = '1';
  for (let visited = 0; visited <= entries.size; visited++) {
    const branches = [...(entries.get(entry) ?? '').matchAll(/([^:]+): ([^.]+)\.\s*/g)];
    expect(branches).toHaveLength(2);
    const [, , end] = only(
      branches.filter((branch) => leaf.toLowerCase().includes((branch[1] ?? '').toLowerCase())),
      `entry ${entry} for ${leaf}`,
    );
    const next = /^go to (\d)$/.exec(end ?? '');
    if (!next) {
      const [tree = '', letter = ''] = groups(end ?? '', /^(.+), letter ([A-Z])$/);
      return { tree, letter };
    }
    entry = next[1] ?? '';
  }
  throw new Error(`the key runs in a ring for: ${leaf}`);
}

test('each pressed leaf comes to one tree, and their letters open the pump case', () => {
  const ends = game
    .lines('leaves')
    .filter((line) => /^Leaf \d/.test(line))
    .map(walk);
  expect(ends.map((end) => end.tree)).toEqual(['ash', 'lilac', 'horse chestnut', 'oak']);
  const word = ends.map((end) => end.letter).join('');
  expect(word).toBe(game.code('nameleaf'));
  expect(word).toBe(game.code('pumpword'));
});

const WAY_OF_THE_WATER = [
  [/in from the soil/, 1],
  [/gathers in the main root/, 2],
  [/tubes in the stem/, 3],
  [/through the blade/, 4],
  [/vapour/, 5],
] as const;

test('the way of the water gives the letters for the teacher', () => {
  const sentences = game.lines('starter').filter((line) => /^[A-Z]: /.test(line));
  const inOrder = sentences.toSorted((a, b) => known(WAY_OF_THE_WATER, a) - known(WAY_OF_THE_WATER, b));
  expect(inOrder.map((line) => line.slice(0, 1)).join('')).toBe(game.code('startpump'));
  expect(new Set(sentences.map((line) => known(WAY_OF_THE_WATER, line)))).toEqual(new Set([1, 2, 3, 4, 5]));
  expect(sentences).not.toEqual(inOrder);
});
