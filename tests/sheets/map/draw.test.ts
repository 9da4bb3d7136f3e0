import { expect, test } from 'vitest';
import { fewestSteps } from '../../../src/engine/fewest.ts';
import { assess } from '../../../src/findings/assess.ts';
import { emptyGame, type Game } from '../../../src/game/model.ts';
import type { Drawing } from '../../../src/sheets/drawing.ts';
import { contentOf } from '../../../src/sheets/map/content-of.ts';
import { drawMap, frameOf } from '../../../src/sheets/map/draw-map.ts';
import { planMap } from '../../../src/sheets/map/plan/plan-map.ts';
import { paperOf } from '../../../src/sheets/paper.ts';
import type { SheetOptions } from '../../../src/sheets/sheet.ts';
import { plain } from '../../../src/words/sentence.ts';
import { verdictOf } from '../../../src/words/verdict.ts';
import { gameOf } from '../../game-of.ts';
import { gameOf as exampleOf } from '../../games/example.ts';
import { pageGame } from '../../random-page-game.ts';
import { ALL_ON } from '../all-on.ts';

function pagesOf(game: Game, options: Partial<SheetOptions> = {}): Drawing[] {
  const chosen = { ...ALL_ON, ...options };
  const paper = paperOf(chosen.paper, chosen.orientation);
  const content = contentOf(assess(game), chosen);
  const planning = planMap(content, frameOf(content, chosen, paper));
  for (let step = planning.next(); ; step = planning.next()) {
    if (step.done) return drawMap(content, step.value, chosen, paper);
  }
}

const textsOf = (pages: readonly Drawing[]) =>
  pages.flatMap(({ marks }) => marks.flatMap((mark) => (mark.mark === 'text' ? [mark.text] : [])));

const game = gameOf(
  [
    { id: 'shelf', kind: 'place', name: 'Shelf' },
    { id: 'list', kind: 'clue', name: 'Price list', in: 'shelf' },
    { id: 'sum', kind: 'puzzle', name: 'Add it up', answer: 'UUL' },
    { id: 'tin', kind: 'container', name: 'Green tin' },
    { id: 'lock', kind: 'fastener', on: 'tin', type: 'direction', code: '↑↑←', name: '' },
    { id: 'gold', kind: 'prize', name: 'Gold', in: 'tin' },
    { id: 'spare', kind: 'tool', name: 'Left at home', leftOut: true },
  ],
  ['list>sum', 'sum>lock'],
);

test('a page says the game, the lesson, the verdict, and what its signs mean', () => {
  const texts = textsOf(pagesOf({ ...game, head: { title: 'The shop' } }));
  expect(texts).toContain('The shop');
  expect(texts).toContain('24 pupils in 4 teams, each with its own set · 40 minutes');
  expect(texts.join(' ')).toMatch(/It can be won\..*Without a hitch: .* of 40 minutes/);
  for (const entry of ['clue', 'prize', 'direction lock', 'step, in order of play']) {
    expect(texts).toContain(entry);
  }
  for (const absent of ['key', 'tool', 'latch', 'opened by a step']) expect(texts).not.toContain(absent);
  expect(texts).toContain('1 thing not used today and not on this page');
  expect(texts).not.toContain('Left at home');
});

test('the verdict is the one on the screen, with the fewest steps that are enough', () => {
  const hall = exampleOf('mineral-hall');
  const { network, measures } = assess(hall);
  const { first } = verdictOf(assess(hall), fewestSteps(network, measures));
  expect(plain(first)).toMatch(/20 of 21 steps are enough\.$/);
  expect(textsOf(pagesOf(hall)).join('').replace(/\s/g, '')).toContain(plain(first).replace(/\s/g, ''));
});

test('moves of a code are arrows with their letters', () => {
  const [page] = pagesOf(game);
  const onLock = page?.marks.filter((mark) => 'of' in mark && mark.of === 'lock') ?? [];
  expect(onLock.flatMap((mark) => (mark.mark === 'sign' ? [mark.sign] : []))).toEqual([
    'direction',
    'up',
    'up',
    'left',
  ]);
  expect(onLock.flatMap((mark) => (mark.mark === 'text' && mark.role === 'code' ? [mark.text] : []))).toEqual(
    ['U', 'U', 'L'],
  );
});

test('a lock has a box to tick for each team, numbered when there are several', () => {
  const ticks = (teams: number) => {
    const pages = pagesOf({ ...game, head: { lesson: { teams } } });
    return pages.flatMap(({ marks }) =>
      marks.flatMap((mark) =>
        mark.mark === 'area' && mark.role === 'tick'
          ? [(mark.corners[1]?.x ?? 0) - (mark.corners[0]?.x ?? 0)]
          : [],
      ),
    );
  };
  expect(ticks(6)).toHaveLength(6);
  expect(ticks(1)).toHaveLength(1);
  // 4 mm, in points.
  for (const side of ticks(6)) expect(side).toBeCloseTo((4 / 25.4) * 72, 6);
});

test('a game that cannot be won says so across the page, and why', () => {
  const stuck = gameOf(
    [
      { id: 'tin', kind: 'container', name: 'Green tin' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '905', name: '' },
      { id: 'note', kind: 'clue', answer: '417' },
      { id: 'gold', kind: 'prize', in: 'tin' },
    ],
    ['note>lock'],
  );
  const open = pagesOf(stuck);
  expect(textsOf(open)).toContain('This game cannot be won.');
  expect(textsOf(open).join(' ')).toMatch(/is set to\s+905/);
  expect(open[0]?.marks.some((mark) => mark.mark === 'area' && mark.stroke === 'stop')).toBe(true);
  const covered = textsOf(pagesOf(stuck, { codes: false })).join(' ');
  expect(covered).toContain('This game cannot be won.');
  expect(covered).not.toMatch(/905|417/);
  expect(textsOf(pagesOf(game))).not.toContain('This game cannot be won.');
});

test('an empty game is a page that says so', () => {
  const pages = pagesOf(emptyGame);
  expect(pages).toHaveLength(1);
  expect(textsOf(pages)).toContain('Nothing lies on the map yet.');
});

test('a line runs from its row to what it means', () => {
  const [page] = pagesOf(game);
  const lines = page?.marks.filter((mark) => mark.mark === 'line' && mark.role === 'link') ?? [];
  const links = new Set(lines.flatMap((mark) => (mark.mark === 'line' ? (mark.links ?? []) : [])));
  expect([...links].sort()).toEqual(['list>sum', 'sum>lock']);
  const plate = page?.marks.find((mark) => mark.mark === 'area' && mark.role === 'plate');
  const end = lines.flatMap((mark) =>
    mark.mark === 'line' && mark.arrow && mark.links?.includes('sum>lock') ? mark.points.slice(-1) : [],
  )[0];
  if (plate?.mark !== 'area' || !end) throw new Error('There is no plate, or no line to it.');
  const sides = plate.corners.map(({ x }) => x);
  expect(Math.min(...sides.map((x) => Math.abs(x - end.x)))).toBeLessThan(0.5);
});

test('each part of what was cut says where its own next part is', () => {
  const things = (giver: string) => Array.from({ length: 90 }, (_, i) => `${giver} ${i}`);
  const handed = gameOf(
    [
      { id: 'ask', kind: 'puzzle', name: 'Ask' },
      { id: 'tell', kind: 'puzzle', name: 'Tell' },
      ...[...things('ask'), ...things('tell')].map((id) => ({ id, kind: 'clue', name: id }) as const),
    ],
    [...things('ask').map((id) => `ask>${id}`), ...things('tell').map((id) => `tell>${id}`)],
  );
  const pages = pagesOf(handed);
  const givers = pages.map(({ marks }) => {
    const names = marks.flatMap((mark) =>
      mark.mark === 'text' && mark.role === 'name' ? [mark.text.split(' ')[0] ?? ''] : [],
    );
    return new Set(names.filter((name) => name === 'ask' || name === 'tell'));
  });
  const pointers = pages.flatMap(({ marks }, i) =>
    marks.flatMap((mark) => {
      const found = mark.mark === 'text' ? /^continued (on|from) page (\d+)$/.exec(mark.text) : null;
      return found ? [{ here: i, there: Number(found[2]) - 1, way: found[1] }] : [];
    }),
  );
  const on = pointers.filter(({ way }) => way === 'on');
  const from = pointers.filter(({ way }) => way === 'from');
  expect(on.length).toBeGreaterThanOrEqual(2);
  const pairs = (list: readonly { readonly here: number; readonly there: number }[]) =>
    list.map(({ here, there }) => `${here} ${there}`).sort();
  expect(pairs(on)).toEqual(pairs(from.map(({ here, there }) => ({ here: there, there: here }))));
  for (const { here, there } of on) {
    const shared = [...(givers[here] ?? [])].filter((giver) => givers[there]?.has(giver));
    expect(shared, `from page ${here + 1} to page ${there + 1}`).not.toEqual([]);
  }
});

test('the head of a page takes no more room than is kept for it', () => {
  for (const seed of [2, 4, 7]) {
    const random = pageGame(seed);
    const content = contentOf(assess(random), ALL_ON);
    const paper = paperOf('A4', 'portrait');
    const frame = frameOf(content, ALL_ON, paper);
    for (const [i, { marks }] of pagesOf(random).entries()) {
      const kept = frame.margin + (i === 0 ? frame.headFirst : frame.headOther);
      const heights = marks.flatMap((mark) =>
        mark.mark === 'area' && mark.role !== 'plain' && mark.role !== 'step' && mark.role !== 'tick'
          ? mark.corners.map(({ y }) => y)
          : [],
      );
      expect(Math.min(...heights), `seed ${seed}`).toBeGreaterThanOrEqual(kept - 0.01);
      const legend = marks.flatMap((mark) =>
        mark.mark === 'text' && mark.role === 'plain' && mark.y < kept ? [mark.y] : [],
      );
      expect(Math.max(...legend)).toBeLessThan(kept - 3);
    }
  }
});

test('the legend holds the signs that its page uses, each once, and no others', () => {
  // Arrows of moves are explained by the letters beside them.
  const moves = new Set(['up', 'down', 'left', 'right']);
  for (const seed of [2, 7]) {
    for (const { marks } of pagesOf(pageGame(seed))) {
      const signs = marks.filter((mark) => mark.mark === 'sign').filter(({ sign }) => !moves.has(sign));
      const used = new Set(signs.filter(({ of }) => of !== undefined).map(({ sign }) => sign));
      const legend = signs.filter(({ of }) => of === undefined).map(({ sign }) => sign);
      expect(legend.sort(), `seed ${seed}`).toEqual([...used].sort());
    }
  }
});

test('locks of one box hang on a bar, and the legend says what that means', () => {
  const hung = (locks: readonly string[]) =>
    gameOf(
      [
        { id: 'tin', kind: 'container', name: 'Tin' },
        ...locks.map((id) => ({ id, kind: 'fastener', on: 'tin', type: 'latch', name: '' }) as const),
        { id: 'gold', kind: 'prize', in: 'tin' },
      ],
      [],
    );
  const bars = (pages: readonly Drawing[]) =>
    pages.flatMap(({ marks }) => marks.filter((mark) => mark.mark === 'line' && mark.role === 'hasp'));
  const two = pagesOf(hung(['a', 'b']));
  expect(bars(two)).toHaveLength(1);
  expect(textsOf(two)).toContain('open all locks');
  const one = pagesOf(hung(['a']));
  expect(bars(one)).toEqual([]);
  expect(textsOf(one)).not.toContain('open all locks');
});

test('the legend tells places that a step opens from the others', () => {
  const opened = (places: readonly string[], pairs: readonly string[]) =>
    textsOf(
      pagesOf(
        gameOf(
          [
            { id: 'walk', kind: 'puzzle', name: 'Walk' },
            ...places.map((id) => ({ id, kind: 'place', name: `The ${id}` }) as const),
          ],
          pairs,
        ),
      ),
    );
  const both = opened(['shelf', 'globe'], ['walk>globe']);
  for (const entry of ['hiding place', 'opened by a step']) expect(both).toContain(entry);
  expect(opened(['globe'], ['walk>globe'])).not.toContain('hiding place');
  expect(opened(['shelf'], [])).not.toContain('opened by a step');
});

test('a step that is never reached has a hollow circle, and the legend says so', () => {
  const stuck = gameOf(
    [
      { id: 'shelf', kind: 'place' },
      { id: 'tin', kind: 'container', in: 'shelf' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'key', name: '' },
      { id: 'tag', kind: 'key', in: 'tin' },
      { id: 'gold', kind: 'prize', in: 'tin' },
    ],
    ['tag>lock'],
  );
  expect(textsOf(pagesOf(stuck))).toContain('step never reached');
  expect(textsOf(pagesOf(game))).not.toContain('step never reached');
  for (const entry of ['hiding place', 'box']) expect(textsOf(pagesOf(stuck))).toContain(entry);
});
