import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isLeftOut } from '../../../src/engine/left-out.ts';
import { type Assessment, assess } from '../../../src/findings/assess.ts';
import type { Edit } from '../../../src/game/edits/edit.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import type { Game } from '../../../src/game/model.ts';
import { sameContent } from '../../../src/game/write.ts';
import { type Choices, type Line, type Plan, planOf, rereadBack } from '../../../src/kit/adapt/plan.ts';
import { adapted } from '../../../src/kit/adapt/sound.ts';
import { sparesOf } from '../../../src/kit/adapt/spare.ts';
import { takeBack } from '../../../src/kit/adapt/take-back.ts';
import { setText } from '../../../src/kit/adapt/texts.ts';
import { fitKit } from '../../../src/kit/fit/index.ts';
import type { Kit } from '../../../src/kit/model.ts';
import { gameOf } from '../../game-of.ts';
import { gameArbitrary } from '../../random-game.ts';
import { kitOf, roomOf } from './room.ts';

const NOTHING: Choices = { kept: new Set() };

function plan(original: Game, kit: Kit, current = original, choices = NOTHING): Plan {
  const before = assess(original);
  const now = current === original ? before : assess(current);
  const spares = { came: sparesOf(before), now: sparesOf(now) };
  return planOf({ original: before, current: now, kit, choices, fitting: fitKit(current, kit), spares });
}

function edited(game: Game, edits: readonly Edit[] | undefined): Game {
  const result = applyEdits(game, edits ?? []);
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.game;
}

const lineOf = <S extends Line['sort']>({ lines }: Plan, sort: S, id?: string) => {
  const found = lines.filter((line): line is Extract<Line, { sort: S }> => line.sort === sort);
  return found.find(({ key }) => id === undefined || key.includes(JSON.stringify(id)));
};

const STORY = gameOf(
  [
    { id: 'shelf', kind: 'place', name: 'Book shelf', note: 'Behind the atlas.' },
    { id: 'sill', kind: 'place', name: 'Window sill' },
    { id: 'slip', kind: 'clue', in: 'shelf', text: 'Now go to the window sill. A sill is cold.' },
    { id: 'list', kind: 'clue', in: 'sill', text: 'Wax\nIce\nWINDOW SILL\nGum', note: 'WIWG.' },
    { id: 'read', kind: 'puzzle', answer: 'WIWG', text: 'Read the first letters.' },
    { id: 'tin', kind: 'container', name: 'Green tin' },
    { id: 'lock', kind: 'fastener', on: 'tin', name: 'Green tin lock', type: 'word', code: 'WIWG' },
    { id: 'prize', kind: 'prize', in: 'tin', note: 'It lies in the green tin.' },
  ],
  ['list>read', 'read>lock', 'slip>sill'],
);
const ROOM = kitOf(roomOf('Book shelf', 'Reading bench', 'Piano'), [
  { id: 'i1', what: 'box', label: 'Red tin', count: 9 },
  { id: 'i2', what: 'lock', type: 'word', label: 'Word lock', count: 9 },
]);

describe('a colleague’s game in my room', () => {
  test('what I have is no line; what must be renamed is one, with the texts that quote it', () => {
    const now = plan(STORY, ROOM);
    expect(now.placesHere).toEqual(['shelf']);
    const line = lineOf(now, 'place');
    expect(line).toMatchObject({ place: 'sill', state: 'open', was: 'Window sill' });
    const { edits, reworded, withheld } = now.renamer.rename('sill', 'Piano');
    expect(reworded.map(({ after: text }) => text)).toEqual(['Now go to the piano. A sill is cold.']);
    expect(withheld).toMatchObject([{ spot: { of: 'list', field: 'text' } }]);
    const game = edited(STORY, edits);
    expect(game.nodes.get('list')).toBe(STORY.nodes.get('list'));
    expect(lineOf(plan(STORY, ROOM, game), 'place')).toMatchObject({ state: 'done', now: 'Piano' });
  });

  test('a text from which the answer is read is to be read again, and says how', () => {
    const now = plan(STORY, ROOM);
    expect(lineOf(now, 'reread', 'list')?.reasons).toMatchObject([
      { reason: 'reads', thing: 'sill', way: 'lineStarts', answer: 'WIWG' },
    ]);
    expect(lineOf(now, 'reread', 'slip')?.reasons).toEqual([{ reason: 'names', words: ['sill'] }]);
    const read = plan(STORY, ROOM, STORY, { kept: new Set([lineOf(now, 'reread', 'list')?.key ?? '']) });
    expect(lineOf(read, 'reread', 'list')?.state).toBe('kept');
  });

  test('what was read again and changed is done, and goes back to what the names make of it', () => {
    const renamed = edited(STORY, plan(STORY, ROOM).renamer.rename('sill', 'Piano').edits);
    const game = edited(renamed, [
      setText({ of: 'slip', field: 'text' }, 'Now go to the piano. It is cold.'),
    ]);
    const now = plan(STORY, ROOM, game);
    const line = lineOf(now, 'reread', 'slip');
    expect(line?.state).toBe('done');
    if (line) expect(edited(game, rereadBack(now, game, line))).toEqual(renamed);
  });

  test('a box of another colour gives its colour to what quotes it', () => {
    const now = plan(STORY, ROOM);
    expect(lineOf(now, 'thing')).toMatchObject({ thing: 'tin', to: 'Red tin' });
    const game = edited(STORY, now.renamer.rename('tin', 'Red tin').edits);
    expect(game.nodes.get('lock')?.name).toBe('Red tin lock');
    expect(game.nodes.get('prize')?.note).toBe('It lies in the red tin.');
    expect(edited(game, plan(STORY, ROOM, game).renamer.takeBack('tin'))).toEqual(STORY);
  });

  test('two places can change names, in any order, and each is taken back alone', () => {
    const story = gameOf([
      { id: 'a', kind: 'place', name: 'Book shelf' },
      { id: 'b', kind: 'place', name: 'Window sill' },
      { id: 'c', kind: 'clue', text: 'From the book shelf to the window sill' },
    ]);
    const room = kitOf(roomOf('Piano', 'Coat pegs'));
    const one = edited(story, plan(story, room).renamer.rename('a', 'Window sill').edits);
    const both = edited(one, plan(story, room, one).renamer.rename('b', 'Book shelf').edits);
    expect(both.nodes.get('c')?.text).toBe('From the window sill to the book shelf');
    const back = edited(both, plan(story, room, both).renamer.takeBack('a'));
    expect(back.nodes.get('c')?.text).toBe('From the book shelf to the book shelf');
    expect(edited(back, plan(story, room, back).renamer.takeBack('b'))).toEqual(story);
  });

  test('the longer name of a place that keeps its name is no quotation of the shorter', () => {
    const story = gameOf([
      { id: 'shelf', kind: 'place', name: 'Shelf' },
      { id: 'end', kind: 'place', name: 'Shelf end' },
      { id: 'both', kind: 'clue', text: 'Go from the Shelf to the Shelf end' },
      { id: 'one', kind: 'clue', text: 'At the Shelf end' },
    ]);
    const now = plan(story, kitOf(roomOf('Globe', 'Shelf end')));
    const game = edited(story, now.renamer.rename('shelf', 'Globe').edits);
    expect(game.nodes.get('both')?.text).toBe('Go from the Globe to the Shelf end');
    expect(game.nodes.get('one')?.text).toBe('At the Shelf end');
    const after = plan(story, kitOf(roomOf('Globe', 'Shelf end')), game);
    expect(lineOf(after, 'reread')).toBeUndefined();
    expect(edited(game, after.renamer.takeBack('shelf'))).toEqual(story);
    const byHand = edited(game, [setText({ of: 'both', field: 'text' }, 'The Globe, the Shelf end, go')]);
    const back = plan(story, kitOf(roomOf('Globe', 'Shelf end')), byHand).renamer.takeBack('shelf');
    expect(edited(byHand, back).nodes.get('both')?.text).toBe('The Shelf, the Shelf end, go');
  });

  test('a name that two things share is left in the texts, which are to be read again', () => {
    const story = gameOf([
      { id: 'a', kind: 'place', name: 'Window sill' },
      { id: 'b', kind: 'place', name: 'Window sill' },
      { id: 'c', kind: 'clue', text: 'Look on the window sill.' },
    ]);
    const room = kitOf(roomOf('Piano', 'Coat pegs'));
    const first = plan(story, room).renamer.rename('a', 'Piano');
    expect(first.reworded).toEqual([]);
    const one = edited(story, first.edits);
    expect(one.nodes.get('b')?.name).toBe('Window sill');
    const now = plan(story, room, one);
    expect(lineOf(now, 'reread', 'c')).toMatchObject({
      state: 'open',
      reasons: [{ reason: 'names' }],
      passages: [{ suggestion: undefined }],
    });
    const both = edited(one, now.renamer.rename('b', 'Coat pegs').edits);
    expect(both.nodes.get('c')).toBe(story.nodes.get('c'));
    expect(lineOf(plan(story, room, both), 'reread', 'c')?.state).toBe('open');
  });

  test('what was written by hand meanwhile stays', () => {
    const rewritten = edited(STORY, [
      setText({ of: 'slip', field: 'text' }, 'Hurry to the window sill, it is late.'),
    ]);
    const game = edited(rewritten, plan(STORY, ROOM, rewritten).renamer.rename('sill', 'Piano').edits);
    expect(game.nodes.get('slip')?.text).toBe('Hurry to the piano, it is late.');
    expect(edited(game, plan(STORY, ROOM, game).renamer.takeBack('sill'))).toEqual(rewritten);
  });

  test('a place that is off limits here gets another', () => {
    const places = [{ id: 'x', name: 'Window sill', offLimits: true }, ...roomOf('Book shelf', 'Piano')];
    expect(lineOf(plan(STORY, kitOf(places)), 'place')).toMatchObject({
      place: 'sill',
      offLimits: { name: 'Window sill' },
      room: { name: 'Piano' },
    });
  });

  test('under the name of a place that is off limits it is not done, under that of another it is here', () => {
    const places = [{ id: 'x', name: 'Piano', offLimits: true }, ...roomOf('Book shelf', 'Sink')];
    const called = (name: string) => edited(STORY, [{ type: 'rename', id: 'sill', name }]);
    const off = plan(STORY, kitOf(places), called('Piano'));
    expect(lineOf(off, 'place')).toMatchObject({ state: 'open', offLimits: { id: 'x' } });
    expect(off.placesHere).toEqual(['shelf']);
    const here = plan(STORY, kitOf(places), called('sink'));
    expect(lineOf(here, 'place')).toMatchObject({ state: 'done', offLimits: undefined });
    expect(here.placesHere).toEqual(['shelf', 'sill']);
  });

  test('an answer that is the name of what is not there is told', () => {
    const globe = gameOf(
      [
        { id: 'globe', kind: 'place', name: 'Behind the globe' },
        { id: 'walk', kind: 'puzzle', answer: 'globe' },
      ],
      ['walk>globe'],
    );
    expect(lineOf(plan(globe, kitOf(roomOf('Piano'))), 'reread', 'walk')?.reasons).toEqual([
      { reason: 'answer', thing: 'globe', answer: 'GLOBE' },
    ]);
  });

  test('what is short is a line until it is not', () => {
    const poor = kitOf(ROOM.places, [{ id: 'i1', what: 'lock', type: 'number', label: '', count: 4 }]);
    expect(lineOf(plan(STORY, poor), 'short')).toMatchObject({ state: 'open', shortage: { node: 'lock' } });
    const game = edited(STORY, [{ type: 'setFields', id: 'lock', fields: { type: 'latch' } }]);
    expect(lineOf(plan(STORY, poor, game), 'short')?.state).toBe('done');
  });
});

const KIT = kitOf(roomOf('place 1', 'Sink', 'Piano', 'Coat pegs', 'Window sill', 'Low shelf'));

/** The edits of each line that can be done at a press. */
function steps({ lines, renamer }: Plan): (readonly Edit[])[] {
  return lines.flatMap((line): (readonly Edit[])[] => {
    if (line.state !== 'open') return [];
    if (line.sort === 'place' && line.room) return [renamer.rename(line.place, line.room.name).edits];
    if (line.sort === 'spare') return [[{ type: 'leaveOut', ids: line.nodes, leftOut: true }]];
    return [];
  });
}

describe('laws', () => {
  /** Names that are quoted in texts. */
  const quoting = gameArbitrary({ size: 14 }).map((game): Game => {
    const names = [...game.nodes.values()].map(({ name }) => name);
    const nodes = [...game.nodes].map(([id, node], i) => {
      const text = `go to ${names[i % 5]} and ${names[(i + 3) % 7]}`;
      return [id, i % 2 === 0 ? { ...node, text } : node] as const;
    });
    return { ...game, nodes: new Map(nodes) };
  });

  test('no adaptation stops a game, changes a code or an answer, and undo restores', () => {
    fc.assert(
      fc.property(quoting, (game) => {
        const before: Assessment = assess(game);
        for (const edits of steps(plan(game, KIT))) {
          const now = adapted(before, edits);
          expect(now).toBeDefined();
          if (before.canBeWon) expect(now?.canBeWon).toBe(true);
          const next = edited(game, edits);
          expect(sameContent(edited(next, takeBack(game, next, next)), game)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('gone down to the end, the names are those of the room, and all taken back it is the game that came', () => {
    fc.assert(
      fc.property(quoting, fc.boolean(), (game, backwards) => {
        let now = game;
        const done: string[] = [];
        for (;;) {
          const line = plan(game, KIT, now).lines.find(
            (one) => one.sort === 'place' && one.state === 'open' && one.room,
          );
          if (line?.sort !== 'place') break;
          now = edited(now, plan(game, KIT, now).renamer.rename(line.place, line.room?.name ?? '').edits);
          done.push(line.place);
        }
        const used = [...now.nodes.values()].filter(
          (node) => node.kind === 'place' && !isLeftOut(now, node.id),
        );
        const mine = used.filter(({ name }) => KIT.places.some((place) => place.name === name));
        expect(new Set(mine.map(({ name }) => name)).size).toBe(Math.min(used.length, KIT.places.length));
        for (const id of backwards ? done.reverse() : done) {
          now = edited(now, plan(game, KIT, now).renamer.takeBack(id));
        }
        expect(sameContent(now, game)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
