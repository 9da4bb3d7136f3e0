/**
 * Random gestures for tests: lists of edits, legal or not, made for the game as it stands when they are applied.
 * A gesture is drawn as plain numbers, so that fast-check can shrink it; 0 is always the plainest choice.
 */
import fc from 'fast-check';
import { copyOf, duplicateEdits, pasteEdits } from '../src/game/edits/copies.ts';
import type { Applied, Edit, Placement } from '../src/game/edits/edit.ts';
import { applyEdits } from '../src/game/edits/index.ts';
import type { Game, GameNode, Kind, NodeId } from '../src/game/model.ts';

export interface Gesture {
  readonly edits: readonly EditPlan[];
}

interface EditPlan {
  readonly type: number;
  readonly first: number;
  readonly second: number;
  readonly third: number;
  readonly x: number;
  readonly y: number;
  readonly field: number;
  readonly value: unknown;
}

const KINDS: readonly Kind[] = ['place', 'container', 'fastener', 'key', 'clue', 'tool', 'puzzle', 'prize'];
const FIELDS = [
  'text',
  'note',
  'need',
  'minutes',
  'hands',
  'atMinute',
  'decoy',
  'code',
  'answer',
  'type',
  'name',
  'future',
  'id',
  'kind',
  'in',
  'on',
  'at',
  '__proto__',
  'constructor',
];
const HEAD_FIELDS = ['title', 'summary', 'lesson', 'objectives', 'future', 'nodes', 'format', '__proto__'];
const SENSIBLE: readonly unknown[] = [
  undefined,
  'words',
  2,
  'all',
  true,
  { low: 1, likely: 2, high: 4 },
  { low: 3, likely: 2, high: 1 },
  { pupils: 20, teams: 5 },
  [{ id: 'o1', text: 'Reads a map' }],
  0.5,
  -1,
  Number.NaN,
  { deep: [{ er: null }] },
];

function pick<T>(list: readonly T[], number: number): T | undefined {
  return list[number % list.length];
}

/** Some ids of the game, sometimes one that it does not have. */
function someIds(ids: readonly string[], number: number): string[] {
  const count = 1 + (number % 3);
  const chosen = Array.from(
    { length: count },
    (_, i) => pick(ids, Math.floor(number / 3) + i * 7) ?? 'nobody',
  );
  return number % 31 === 30 ? [...chosen, 'nobody'] : chosen;
}

function fieldsOf(names: readonly string[], plan: EditPlan): Record<string, unknown> {
  return Object.fromEntries([[pick(names, plan.field) ?? '', plan.value]]);
}

function newNode(plan: EditPlan, nodes: readonly NodeId[], id: NodeId): GameNode {
  const kind = pick(KINDS, plan.second) ?? 'place';
  const parent = pick(nodes, plan.third) ?? 'nobody';
  const common = {
    id,
    name: `New ${kind}`,
    ...(plan.x % 4 === 3 ? fieldsOf(FIELDS.slice(0, 12), plan) : {}),
  };
  if (kind === 'fastener') return { ...common, kind, on: parent };
  if (kind === 'place' || kind === 'puzzle') return { ...common, kind };
  return plan.third % 3 === 0 ? { ...common, kind } : { ...common, kind, in: parent };
}

/** The edits that a plan means in a game; a duplicate or a paste may be more than one. */
function editsOf(game: Game, plan: EditPlan, newId: () => string): readonly Edit[] {
  const nodes = [...game.nodes.keys()];
  const links = [...game.links.keys()];
  const ids = someIds(nodes, plan.first);
  const [id = 'nobody'] = ids;
  const other = pick(nodes, plan.second) ?? 'nobody';
  const point = { x: plan.x, y: plan.y };
  const positions = ids.map((each, i): Placement => [each, { x: plan.x + i, y: plan.y }]);
  const holder = plan.second % 4 === 0 ? null : other;
  const before = plan.third % 3 === 0 ? null : (pick(nodes, plan.third) ?? null);
  const linkId = pick(links, plan.first) ?? 'nothing';
  switch (plan.type % 16) {
    case 0:
      return [{ type: 'move', positions }];
    case 1:
      return [{ type: 'place', ids, holder, before, positions }];
    case 2:
      return [{ type: 'place', ids, holder }];
    case 3:
      return [{ type: 'fasten', ids, on: other, before }];
    case 4:
      return [
        { type: 'link', id: newId(), from: id, to: other, ...(plan.third % 5 === 4 ? { at: [plan.x] } : {}) },
      ];
    case 5:
      return [{ type: 'unlink', ids: [linkId] }];
    case 6:
      return [{ type: 'setLink', id: linkId, at: plan.third % 3 === 0 ? undefined : [plan.x, plan.y] }];
    case 7:
      return [{ type: 'rename', id, name: `Name ${plan.second % 5}` }];
    case 8:
      return [{ type: 'setFields', id, fields: fieldsOf(FIELDS, plan) }];
    case 9:
      return [{ type: 'leaveOut', ids, leftOut: plan.second % 2 === 0 }];
    case 10:
      return [{ type: 'remove', nodes: ids, links: plan.second % 3 === 0 ? [linkId] : [] }];
    case 11:
      return [{ type: 'setHead', fields: fieldsOf(HEAD_FIELDS, plan) }];
    case 12: {
      const node = newNode(plan, nodes, plan.y % 9 === 8 ? id : newId());
      const link = { id: newId(), from: node.id, to: other };
      const placed: Placement[] = plan.x % 2 === 0 ? [[node.id, point]] : [];
      return [{ type: 'add', nodes: [node], links: plan.second % 3 === 0 ? [link] : [], positions: placed }];
    }
    case 13:
      return [{ type: 'pin', ids, pinned: plan.second % 2 === 0 }];
    case 14:
      return duplicateEdits(game, ids, newId, { x: 24, y: 24 }).edits;
    default: {
      const pasted = pasteEdits(game, copyOf(game, ids), holder, point, newId);
      return pasted.ok ? pasted.edits : [{ type: 'fasten', ids: [pasted.refusal.reason], on: other }];
    }
  }
}

const number = fc.nat(1 << 16);
const coordinate = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: -5, max: 400 }) },
  { weight: 1, arbitrary: fc.constantFrom(-0, 0.5, Number.NaN, Number.POSITIVE_INFINITY) },
);

const planArbitrary: fc.Arbitrary<EditPlan> = fc.record({
  type: number,
  first: number,
  second: number,
  third: number,
  x: coordinate,
  y: coordinate,
  field: number,
  value: fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...SENSIBLE) },
    {
      weight: 1,
      arbitrary: fc.anything({ withNullPrototype: true, withBigInt: true, withMap: true, withDate: true }),
    },
  ),
});

/** A session of gestures. */
export const gesturesArbitrary: fc.Arbitrary<readonly Gesture[]> = fc.array(
  fc.record({ edits: fc.array(planArbitrary, { minLength: 1, maxLength: 3 }) }),
  { maxLength: 12 },
);

/** Ids that no random game has. */
export function countingIds(): () => string {
  let count = 0;
  return () => `new${count++}`;
}

/** The edits of a whole gesture. */
export function gestureEdits(game: Game, gesture: Gesture, newId: () => string): Edit[] {
  return gesture.edits.flatMap((plan) => editsOf(game, plan, newId));
}

export interface Step extends Applied {
  readonly before: Game;
}

/** Plays gestures one after another; those that are refused leave the game as it was, and are told to `onRefused`. */
export function play(
  game: Game,
  gestures: readonly Gesture[],
  onRefused: (reason: string) => void = () => {},
): Step[] {
  const newId = countingIds();
  const steps: Step[] = [];
  let before = game;
  for (const gesture of gestures) {
    const result = applyEdits(before, gestureEdits(before, gesture, newId));
    if (!result.ok) {
      onRefused(result.refusal.reason);
      continue;
    }
    steps.push({ ...result, before });
    before = result.game;
  }
  return steps;
}
