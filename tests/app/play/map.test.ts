/** The map at a minute: each thing carries its word, links are pale until they are of use, and only what stands differently is drawn anew. */
import { expect, test } from 'vitest';
import { cardsOf, noCards, type Scene } from '../../../app/flow/cards.ts';
import { arrowsOf } from '../../../app/flow/links/arrows.ts';
import { looksAt, looksOf } from '../../../app/flow/looks.ts';
import { type Lesson, lessonFrom, minuteOf } from '../../../app/play/lesson.ts';
import { simulate } from '../../../src/engine/simulation/batch.ts';
import { clockOf } from '../../../src/engine/simulation/clock.ts';
import { assess } from '../../../src/findings/assess.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView } from '../../../src/map/layout.ts';
import { routes } from '../../../src/map/route.ts';
import { gameOf, LINKS, NODES } from '../open-game.ts';

const game = gameOf(NODES, LINKS);
const assessment = assess(game);
const always = looksOf({ assessment, heat: undefined, fallen: new Set() }, new Map());
const layout = layOut(game, plainView);

function played(): Lesson {
  const clock = clockOf(game, assessment.network);
  const simulated = simulate(clock, undefined, 20);
  if (!simulated) throw new Error('the game cannot be won');
  return lessonFrom(game, clock, simulated);
}
const lesson = played();

function sceneAt(minute: number): Scene {
  const looks = looksAt(always, minuteOf(lesson, minute).moments);
  return { game, layout, looks, selected: new Set(), lifted: undefined };
}

test('at the beginning the place is searched and nothing else is seen; at the end all is done', () => {
  const word = (scene: Scene, id: string) => cardsOf(scene, noCards).byId.get(id)?.data.look.moment?.text;
  const begin = sceneAt(0);
  expect(word(begin, 'sill')).toBe('3 pupils');
  for (const id of ['note', 'tin', 'lock', 'medal', 'sum']) expect(word(begin, id)).toBe('not yet seen');
  const end = sceneAt(lesson.last);
  expect(word(end, 'sill')).toBe('done');
  expect(word(end, 'tin')).toBe('open');
  expect(word(end, 'medal')).toBe('reached');
});

test('it is told to a screen reader, and carried as a class', () => {
  const card = cardsOf(sceneAt(0), noCards).byId.get('tin');
  expect(card?.ariaLabel).toContain('not yet seen');
  expect(card?.className).toContain('flow-at-unseen');
});

test('from one event to the next only what stands differently has a new card, the same as made with nothing remembered', () => {
  let before = cardsOf(sceneAt(0), noCards);
  for (const event of lesson.events) {
    const scene = sceneAt(event);
    const now = cardsOf(scene, before);
    expect(now.list).toEqual(cardsOf(scene, noCards).list);
    for (const card of now.list) {
      const old = before.byId.get(card.id);
      if (old?.data.look.moment === card.data.look.moment) expect(card).toBe(old);
    }
    before = now;
  }
});

test('an arrow is pale until what it starts from is there', () => {
  const weights = (minute: number) => {
    const scene = sceneAt(minute);
    return arrowsOf({
      ...scene,
      routes: routes(layout, game.links.values()),
      selectedNodes: new Set(),
      selectedLinks: new Set(),
      hovered: undefined,
      stopping: new Set(),
      without: undefined,
    }).map(({ weight }) => weight);
  };
  expect(weights(0)).toEqual(['pale', 'pale']);
  expect(weights(lesson.last)).toEqual(['plain', 'plain']);
});
