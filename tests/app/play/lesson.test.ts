/** Sentence, chart and map of one minute say the same, because they come from one run. */
import { expect, test } from 'vitest';
import { axisOf } from '../../../app/play/axis.ts';
import { eventFrom, within } from '../../../app/play/clock.ts';
import { type Lesson, lessonFrom, minuteOf, tenthFrom } from '../../../app/play/lesson.ts';
import { marksOf } from '../../../app/play/Openings.tsx';
import { compile } from '../../../src/engine/network.ts';
import { simulate } from '../../../src/engine/simulation/batch.ts';
import { clockOf } from '../../../src/engine/simulation/clock.ts';
import { statedRules } from '../../../src/engine/simulation/rules.ts';
import type { Game, GameNode } from '../../../src/game/model.ts';
import { minuteSentence, waitsForName } from '../../../src/words/play.ts';
import { plain } from '../../../src/words/sentence.ts';
import { seededRandom } from '../../random-game.ts';
import { randomPageGame } from '../../random-page-game.ts';

const RUNS = 60;

function lessonOf(game: Game): Lesson | undefined {
  const clock = clockOf(game, compile(game));
  const simulated = simulate(clock, statedRules(clock), RUNS);
  return simulated && lessonFrom(game, clock, simulated);
}

const isShareable = (node: GameNode) =>
  node.kind === 'tool' || node.kind === 'container' || node.kind === 'place';

/** A seeded game as a teacher might bring it, some with a lesson, checks, shared things and red herrings of their own. */
function gameFor(seed: number): Game {
  const game = randomPageGame(seed, { steps: 6 + (seed % 5) * 6 });
  const random = seededRandom(seed);
  const nodes = new Map(game.nodes);
  for (const [id, node] of nodes) {
    const kind = Math.floor(10 * random());
    if (kind === 0) nodes.set(id, { ...node, checked: true });
    if (kind === 1) nodes.set(id, { ...node, minutes: { low: 0.1, likely: 0.2, high: 0.3 } });
    if (kind === 2) nodes.set(id, { ...node, minutes: { low: 0.3, likely: 0.3, high: 0.3 } });
    if (kind === 4 && isShareable(node)) nodes.set(id, { ...node, shared: 1 });
    if (kind === 3 && random() < 0.5) nodes.set(id, { ...node, atMinute: 3.25 });
  }
  const lesson = { pupils: 1 + Math.floor(30 * random()), teams: 1 + (seed % 4), minutes: 5 * (seed % 9) };
  return { ...game, nodes, head: { ...game.head, lesson } };
}

const lessons: Lesson[] = [];
for (let seed = 1; seed <= 40; seed++) {
  const lesson = lessonOf(gameFor(seed));
  if (lesson && lesson.end > 0) lessons.push(lesson);
}

/** Every event, and minutes between. */
function minutesOf({ events, last }: Lesson): number[] {
  return [...events, ...[0.13, 0.37, 0.61, 0.89].map((share) => Math.round(share * last * 10) / 10)];
}

test('most of the seeded games can be played', () => {
  expect(lessons.length).toBeGreaterThan(30);
});

test('who works, who waits and what the map says of each thing agree at every minute', () => {
  let queued = 0;
  for (const lesson of lessons) {
    for (const minute of minutesOf(lesson)) {
      const { moments, told } = minuteOf(lesson, minute);
      const inState = (state: string) =>
        [...moments].flatMap(([id, moment]) => (moment.state === state ? [id] : [])).sort();
      const busy = told.working.reduce((sum, { pupils }) => sum + pupils, 0);
      expect(inState('working')).toEqual(told.working.map(({ node }) => node).sort());
      expect(inState('open')).toEqual([...told.open].sort());
      expect(inState('checking')).toEqual([...told.checking].sort());
      expect(inState('queueing')).toEqual(told.queueing.map(({ node }) => node).sort());
      for (const queue of told.queueing) {
        const name = waitsForName(lesson.game, queue);
        expect(moments.get(queue.node)?.text).toBe(name === '' ? 'with others' : `waits for ${name}`);
        queued++;
      }
      // As long as somebody waits, nothing is left that could be taken up.
      if (told.waiting > 0) expect(told.open).toEqual([]);
      for (const { node, pupils } of told.working) {
        expect(moments.get(node)?.text).toBe(pupils === 1 ? '1 pupil' : `${pupils} pupils`);
      }
      if (told.prizes) expect([busy, told.waiting]).toEqual([0, 0]);
      else expect(busy + told.waiting).toBe(lesson.clock.lesson.team);
    }
  }
  expect(queued).toBeGreaterThan(20);
});

test('the areas of the chart are as high as the sentence says, and add up to the team until the end', () => {
  for (const lesson of lessons) {
    const { stretches, end } = lesson;
    expect(stretches.at(-1)?.to).toBe(end);
    for (const { from, to, busy, waiting } of stretches) {
      expect(busy + waiting).toBe(lesson.clock.lesson.team);
      const minute = tenthFrom(from);
      if (minute >= to || minute >= end) continue;
      const { told } = minuteOf(lesson, minute);
      expect(told.working.reduce((sum, { pupils }) => sum + pupils, 0)).toBe(busy);
      expect(told.waiting).toBe(waiting);
    }
  }
});

test('a box is open on the map from the minute of its square on', () => {
  for (const lesson of lessons) {
    for (const { node, minute } of lesson.openings) {
      if (node === undefined || minute === undefined) continue;
      const at = tenthFrom(minute);
      expect(minuteOf(lesson, at).moments.get(node)).toEqual({ state: 'done', text: 'open' });
      if (at > 0.1) expect(minuteOf(lesson, at - 0.1).moments.get(node)?.state).not.toBe('done');
    }
  }
});

test('between two events nothing changes on the map, and each event changes something', () => {
  for (const lesson of lessons) {
    let before = minuteOf(lesson, 0);
    for (const [i, event] of lesson.events.slice(1).entries()) {
      const just = Math.round(event * 10 - 1) / 10;
      const until = minuteOf(lesson, just, before.moments);
      if (just > (lesson.events[i] ?? 0)) expect(until.moments).toBe(before.moments);
      before = minuteOf(lesson, event, before.moments);
      expect(before.moments).not.toBe(until.moments);
    }
    expect(before.told.prizes).toBeDefined();
  }
});

test('the sentence stays short and says no figure that is none', () => {
  for (const lesson of lessons) {
    for (const minute of minutesOf(lesson)) {
      const words = minuteSentence(lesson.game, minuteOf(lesson, minute).told);
      const bare = words.map((part) => (typeof part === 'string' ? part : '')).join('');
      expect(bare.length).toBeLessThan(200);
      expect(plain(words)).toMatch(/^minute \d+(\.\d)?(, after the bell)?: /);
      expect(plain(words)).not.toMatch(/NaN|Infinity|undefined| {2}|: $/);
    }
  }
});

test('every bar lies on the chart and says when', () => {
  for (const lesson of lessons) {
    const latest = Math.max(lesson.end, ...lesson.openings.map(({ high }) => high ?? 0));
    const axis = axisOf(latest, lesson.clock.lesson.minutes, 700);
    for (const { from, to, at, told } of marksOf(lesson, axis, 700)) {
      for (const x of [from, to, at]) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(700);
      }
      expect(told).toMatch(/\d/);
      expect(told).not.toMatch(/NaN|Infinity|undefined/);
    }
  }
});

test('minutes are kept within the lesson; from event to event it goes to the end and back', () => {
  for (const lesson of lessons) {
    expect(within(lesson, -3)).toBe(0);
    expect(within(lesson, lesson.last + 100)).toBe(lesson.last);
    let minute = 0;
    for (let i = 1; i < lesson.events.length; i++) minute = eventFrom(lesson, minute, 1);
    expect(minute).toBe(lesson.last);
    expect(eventFrom(lesson, minute, 1)).toBe(minute);
    for (let i = 1; i < lesson.events.length; i++) minute = eventFrom(lesson, minute, -1);
    expect(minute).toBe(0);
  }
});
