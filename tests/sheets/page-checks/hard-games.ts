/** Games that nobody would draw by hand: too little, too much, too deep, too long. Each by what is hard about it. */
import type { Game } from '../../../src/game/model.ts';
import { gameOf, type NodeDraft } from '../../game-of.ts';
import { randomPageGame } from '../../random-page-game.ts';

const LONG_NAME = `${'The long and winding name of a thing '.repeat(5)}end of it`.padEnd(200, '!');
const LONG_WORD = 'Überraschungseierschalensollbruchstellenverursacher'.repeat(4).slice(0, 200);
const LONG_SCRIPT = 'מפת האוצר הישנה של שומר המגדלור '.repeat(7).slice(0, 200);
const LONG_CODE = 'A1B2C3D4E5F6'.repeat(5);

const numbers = (count: number) => Array.from({ length: count }, (_, i) => i);
const clue = (i: number, holder?: string): NodeDraft => ({
  id: `c${i}`,
  kind: 'clue',
  name: `Letter ${i}`,
  ...(holder !== undefined && { in: holder }),
});
const lock = (id: string, on: string, code = '4728'): NodeDraft => ({
  id,
  kind: 'fastener',
  name: '',
  on,
  type: 'number',
  code,
});

function hugeBox(): Game {
  return gameOf(
    [
      { id: 'shelf', kind: 'place', name: 'Shelf' },
      { id: 'chest', kind: 'container', name: 'Chest', in: 'shelf' },
      { id: 'start', kind: 'clue', name: 'Start', in: 'shelf' },
      { id: 'sum', kind: 'puzzle', name: 'Sum', answer: '4728' },
      lock('wheels', 'chest'),
      ...numbers(150).map((i) => clue(i, 'chest')),
      { id: 'last', kind: 'puzzle', name: 'Last', need: 2 },
      { id: 'win', kind: 'prize', name: 'Win' },
    ],
    ['start>sum', 'sum>wheels', ...numbers(20).map((i) => `c${7 * i}>last`), 'last>win'],
  );
}

/** Each box in the one before, with two locks: one by a puzzle, one by a key in the box around it. */
function fiveDeep(): Game {
  const nodes: NodeDraft[] = [];
  const links: string[] = [];
  for (const depth of numbers(5)) {
    const around = depth === 0 ? {} : { in: `b${depth - 1}` };
    nodes.push(
      { id: `b${depth}`, kind: 'container', name: `Box number ${depth + 1}`, ...around },
      { id: `k${depth}`, kind: 'key', name: `Key ${depth + 1}`, ...around },
      { ...clue(depth), ...around },
      { id: `z${depth}`, kind: 'puzzle', name: `Riddle ${depth + 1}`, answer: '4728' },
      lock(`f${depth}`, `b${depth}`),
      { id: `g${depth}`, kind: 'fastener', name: '', on: `b${depth}`, type: 'key' },
    );
    links.push(`c${depth}>z${depth}`, `z${depth}>f${depth}`, `k${depth}>g${depth}`);
  }
  nodes.push({ id: 'win', kind: 'prize', name: 'Win', in: 'b4' });
  return gameOf(nodes, links);
}

function onTheTables(): Game {
  return gameOf(
    [
      ...numbers(100).map((i) => clue(i)),
      ...numbers(4).map((i): NodeDraft => ({ id: `z${i}`, kind: 'puzzle', name: `Riddle ${i}` })),
      { id: 'win', kind: 'prize', name: 'Win' },
    ],
    [...numbers(60).map((i) => `c${i}>z${i % 4}`), 'z3>win'],
  );
}

function longNames(name: string): Game {
  return gameOf(
    [
      { id: 'shelf', kind: 'place', name },
      { id: 'letter', kind: 'clue', name, in: 'shelf' },
      { id: 'lens', kind: 'tool', name },
      { id: 'sum', kind: 'puzzle', name, answer: '4728' },
      { id: 'chest', kind: 'container', name, in: 'shelf' },
      { ...lock('wheels', 'chest'), name },
      { id: 'bolt', kind: 'fastener', name, on: 'chest', type: 'key' },
      { id: 'key', kind: 'key', name },
      { id: 'win', kind: 'prize', name, in: 'chest' },
    ],
    ['letter>sum', 'lens>sum', 'sum>wheels', 'key>bolt'],
  );
}

function longCode(type: string, code: string): Game {
  return gameOf(
    [
      { id: 'letter', kind: 'clue', name: 'Letter' },
      { id: 'sum', kind: 'puzzle', name: 'Sum', answer: code },
      { id: 'chest', kind: 'container', name: 'Chest' },
      { ...lock('wheels', 'chest', code), type },
      { id: 'case', kind: 'container', name: 'Case', in: 'chest' },
      { ...lock('inner', 'case', code), type },
      { id: 'win', kind: 'prize', name: 'Win', in: 'case' },
    ],
    ['letter>sum', 'sum>wheels', 'sum>inner'],
  );
}

/** Riddles that wait for each other, all of them, and clues that do. */
function rings(): Game {
  const riddles = numbers(12);
  return gameOf(
    [
      ...riddles.map((i): NodeDraft => ({ id: `z${i}`, kind: 'puzzle', name: `Riddle ${i}` })),
      ...riddles.map((i) => clue(i)),
      { id: 'win', kind: 'prize', name: 'Win' },
    ],
    [
      ...riddles.flatMap((i) => [1, 3, 5].map((step) => `z${i}>z${(i + step) % 12}`)),
      ...riddles.map((i) => `c${i}>c${(i + 1) % 12}`),
      'z0>win',
    ],
  );
}

/** 'hand' and 'given' are captions, the others fields that every object has. */
function wordsAsIds(): Game {
  return gameOf(
    [
      { id: 'hand', kind: 'place', name: 'First drawer' },
      { id: 'given', kind: 'container', name: 'Second drawer', in: 'hand' },
      { id: 'lock', kind: 'fastener', on: 'given', type: 'number', code: '417', name: '' },
      { id: '__proto__', kind: 'puzzle', name: 'Add it up', answer: '417' },
      { id: 'constructor', kind: 'clue', name: 'Card' },
      { id: 'tables', kind: 'clue', name: 'List', in: 'given' },
      { id: 'toString', kind: 'puzzle', name: 'Hand over' },
      { id: 'valueOf', kind: 'prize', name: 'Cup' },
    ],
    ['constructor>__proto__', '__proto__>lock', 'tables>toString', 'toString>valueOf'],
  );
}

export const HARD_GAMES: readonly (readonly [what: string, game: () => Game])[] = [
  ['nothing', () => gameOf([])],
  ['one place', () => gameOf([{ id: 'shelf', kind: 'place', name: 'Shelf' }])],
  [
    'no place',
    () =>
      gameOf(
        [
          { id: 'sum', kind: 'puzzle', name: 'Sum' },
          { id: 'win', kind: 'prize' },
        ],
        ['sum>win'],
      ),
  ],
  ['no names', () => longNames('')],
  ['one huge box', hugeBox],
  ['everything in one box five deep', fiveDeep],
  ['a hundred things on the tables', onTheTables],
  ['names of 200 characters', () => longNames(LONG_NAME)],
  ['words of 200 characters', () => longNames(LONG_WORD)],
  ['names of 200 characters from right to left', () => longNames(LONG_SCRIPT)],
  ['a name of 60 pictures', () => longNames('👩‍🔬🗝️🧭'.repeat(20))],
  ['a code of 60 symbols', () => longCode('typed', LONG_CODE)],
  ['a code of 60 moves', () => longCode('direction', 'UDLR'.repeat(15))],
  ['rings of links', rings],
  ['ids that are words of the program', wordsAsIds],
  [
    'twelve teams',
    () => {
      const game = fiveDeep();
      return { ...game, head: { ...game.head, lesson: { teams: 12 } } };
    },
  ],
];

/** One puzzle, and one lock, that so many clues lead to. */
export function manyInputs(count: number): Game {
  return gameOf(
    [
      ...numbers(count / 2).map((i): NodeDraft => ({ id: `p${i}`, kind: 'place', name: `Corner ${i}` })),
      ...numbers(count).map((i) => clue(i, `p${i % (count / 2)}`)),
      { id: 'sum', kind: 'puzzle', name: 'Sum', answer: '4728' },
      { id: 'chest', kind: 'container', name: 'Chest' },
      lock('wheels', 'chest'),
      { id: 'win', kind: 'prize', name: 'Win', in: 'chest' },
    ],
    [...numbers(count).flatMap((i) => [`c${i}>sum`, `c${i}>wheels`]), 'sum>wheels'],
  );
}

/** Of three thousand things and more. */
export const veryLargeGame = (): Game => randomPageGame(3, { steps: 1350 });
