/** The nodes of the canvas: one object for each, the same for as long as nothing in it changed. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cardsOf, noCards, type Scene } from '../../../app/flow/cards.ts';
import { arrowsOf } from '../../../app/flow/links/arrows.ts';
import { fallenWith, looksOf } from '../../../app/flow/looks.ts';
import { assess } from '../../../src/findings/assess.ts';
import type { Edit } from '../../../src/game/edits/edit.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import type { Game, NodeId } from '../../../src/game/model.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView } from '../../../src/map/layout.ts';
import { routes } from '../../../src/map/route.ts';
import { gesturesArbitrary, play } from '../../random-edits.ts';
import { gameArbitrary } from '../../random-game.ts';
import { gameOf, LINKS, NODES } from '../open-game.ts';

const game: Game = {
  ...gameOf(NODES, LINKS),
  positions: new Map([
    ['sill', { x: 0, y: 0 }],
    ['sum', { x: 500, y: 0 }],
  ]),
};

function sceneOf(of: Game, before?: Scene, selected: readonly NodeId[] = []): Scene {
  return {
    game: of,
    layout: layOut(of, plainView, before?.layout),
    looks: looksOf(
      { assessment: assess(of), heat: undefined, fallen: new Set() },
      before?.looks ?? new Map(),
    ),
    selected: new Set(selected),
    lifted: undefined,
  };
}

function after(edit: Edit): Game {
  const result = applyEdits(game, [edit]);
  if (!result.ok) throw new Error(`refused: ${result.refusal.reason}`);
  return result.game;
}

const scene = sceneOf(game);
const cards = cardsOf(scene, noCards);

function changed(next: Scene): NodeId[] {
  const now = cardsOf(next, cards);
  return now.list.filter((card) => cards.byId.get(card.id) !== card).map(({ id }) => id);
}

test('parents come before what lies in them, and roots in the order of play', () => {
  const order = cards.list.map(({ id }) => id);
  for (const { id, parentId } of cards.list) {
    if (parentId !== undefined) expect(order.indexOf(parentId)).toBeLessThan(order.indexOf(id));
  }
  expect(order.indexOf('sill')).toBeLessThan(order.indexOf('sum'));
});

test('the same scene gives the same list', () => {
  expect(cardsOf(sceneOf(game, scene), cards)).toBe(cards);
});

test('moving a tray changes its own card and no other, though all that it holds goes along', () => {
  const moved = after({ type: 'move', positions: [['sill', { x: 40, y: 10 }]] });
  expect(changed(sceneOf(moved, scene))).toEqual(['sill']);
});

test('a place drawn small counts anew when what lies in it goes into a box in it', () => {
  const put = after({ type: 'place', ids: ['note'], holder: 'tin' });
  const told = (of: typeof cards) => of.byId.get('sill')?.data.small?.holds;
  expect(told(cards)).toBe('1 clue');
  expect(told(cardsOf(sceneOf(put, scene), cards))).toBe('');
});

test('after any edits the cards are those that would be made with nothing remembered', () => {
  fc.assert(
    fc.property(gameArbitrary({ size: 16 }), gesturesArbitrary, (start, gestures) => {
      let before = sceneOf(start);
      let kept = cardsOf(before, noCards);
      for (const { game: edited } of play(start, gestures)) {
        before = sceneOf(edited, before);
        kept = cardsOf(before, kept);
        expect(kept.list).toEqual(cardsOf(before, noCards).list);
      }
    }),
    { seed: 93, numRuns: 60 },
  );
});

test('selecting changes the cards that are and were selected', () => {
  expect(changed(sceneOf(game, scene, ['note']))).toEqual(['note']);
});

test('each says to a screen reader what it is, in words', () => {
  expect(cards.byId.get('tin')?.ariaLabel).toMatch(/^Green tin, box, in Window sill, 1 prize/);
  expect(cards.byId.get('lock')?.ariaLabel).toMatch(/number lock, step \d, code 472, on Green tin/);
});

test('lifting a thing pales all that falls with it, and its locks say that they stay shut', () => {
  const assessment = assess(game);
  const fallen = fallenWith(assessment, 'note');
  expect([...fallen].sort()).toEqual(['lock', 'medal', 'note', 'sum', 'tin']);
  const looks = looksOf({ assessment, heat: undefined, fallen }, new Map());
  expect(looks.get('lock')?.state).toBe('staysShut');
  expect(looks.get('medal')?.pale).toBe(true);
  expect(looks.get('sill')?.pale).toBe(false);
  expect(fallenWith(assessment, undefined).size).toBe(0);
});

test('a lock that nothing opens cannot be opened, and what it wants is not lifted away', () => {
  const cut = after({ type: 'unlink', ids: ['l2'] });
  const looks = looksOf({ assessment: assess(cut), heat: undefined, fallen: new Set() }, new Map());
  expect(looks.get('lock')?.state).toBe('cannotOpen');
});

const looksAt = (of: Game, lifted?: NodeId) => {
  const assessment = assess(of);
  const fallen = fallenWith(assessment, lifted);
  const heat = new Map([['sum', { share: 1, text: '5.5 min' }]]);
  return looksOf({ assessment, heat, fallen }, new Map());
};

test('while a thing is lifted, what falls with it has no colour of the time', () => {
  expect(looksAt(game).get('sum')?.heat?.text).toBe('5.5 min');
  expect(looksAt(game, 'note').get('sum')?.heat).toBeUndefined();
});

test('a lock with a prize behind it whose code is not the one that is found out says so', () => {
  expect(looksAt(game).get('lock')?.state).toBeUndefined();
  const off = after({ type: 'setFields', id: 'lock', fields: { code: '473' } });
  expect(looksAt(off).get('lock')?.state).toBe('wrongCode');
  const short = after({ type: 'setFields', id: 'sum', fields: { answer: '47' } });
  expect(looksAt(short).get('lock')?.state).toBe('wrongCode');
  expect(looksAt(off, 'note').get('lock')?.state).toBe('staysShut');
  const card = cardsOf({ ...sceneOf(off), looks: looksAt(off) }, noCards).byId.get('lock');
  expect(card?.className).toContain('flow-blocked');
  expect(card?.ariaLabel).toContain('wrong code');
});

test('a lock on a box that is left out, and the arrow to it, are out as the box is', () => {
  const out = after({ type: 'leaveOut', ids: ['tin'], leftOut: true });
  const of = sceneOf(out);
  expect(cardsOf(of, noCards).byId.get('lock')?.className).toContain('flow-out');
  const arrows = arrowsOf({
    ...of,
    routes: routes(of.layout, out.links.values()),
    selectedNodes: new Set(),
    selectedLinks: new Set(),
    hovered: undefined,
    stopping: new Set(),
    without: undefined,
  });
  expect(arrows.map(({ weight }) => weight).sort()).toEqual(['pale', 'plain']);
});

test('what decides the end is drawn heavier, and what falls with a lifted thing is not', () => {
  const assessment = assess(game);
  const fallen = fallenWith(assessment, 'note');
  const chain = new Set(['sill', 'sum']);
  const of = (lifted: ReadonlySet<NodeId>) =>
    looksOf({ assessment, heat: undefined, fallen: lifted, chain }, new Map());
  const card = cardsOf({ ...scene, looks: of(new Set()) }, noCards).byId.get('sum');
  expect(card?.className).toContain('flow-chain');
  expect(card?.ariaLabel).toContain('decides the end');
  expect(of(new Set()).get('note')?.inChain).toBe(false);
  expect(of(fallen).get('sum')?.inChain).toBe(false);
});
