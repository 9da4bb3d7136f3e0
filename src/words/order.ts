/** The order of play, line by line: what is done, and why it can be done then. */
import { giversOf } from '../engine/handed-over.ts';
import { parentInUse } from '../engine/left-out.ts';
import { rowOf } from '../engine/rows.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { Assessment } from '../findings/assess.ts';
import { saidCode } from '../game/codes.ts';
import type { GameNode, NodeId, NodeOf } from '../game/model.ts';
import { noteText } from './canvas.ts';
import { lockName } from './kinds.ts';
import { list, minutes } from './numbers.ts';
import { inHolderOf, search } from './places.ts';
import { joined, type Say, sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';
import { waitsFor } from './waits-for.ts';

export interface PlayLine {
  readonly node: NodeId;
  /** From 1. */
  readonly number: number;
  /** "Search Window sill", "Open Green tin". */
  readonly title: Sentence;
  /** "number lock 417", "from Log page and Bay chart: 417"; then what can be done at the same time. */
  readonly reason: Sentence;
  /** Expected time. */
  readonly minutes: string;
}

/** So many numbers are listed after 'side by side with': in a wide game nearly every step could be one. */
const BESIDE = 3;

/** So many names are listed where there is little room. */
const NAMED = 3;

/** Without `codes` no line says a code or an answer. `most`: so many things that a step needs are named, and the rest is counted. */
export function orderOfPlayLines(assessment: Assessment, codes = true, most = NAMED): PlayLine[] {
  const { network, measures, game, context } = assessment;
  const say = sayer(game);
  return Array.from(measures.order).flatMap((index, place) => {
    const node = game.nodes.get(context.idOf(index));
    if (!node) return [];
    const number = place + 1;
    const numbers = context
      .proofs()
      .sideBySide(index)
      .map((other) => measures.number[other] ?? 0);
    const beside = besideText(number, numbers);
    const why = reason(assessment, say, node, index, { codes, most });
    return [
      {
        node: node.id,
        number,
        title: title(assessment, say, node),
        reason: why.length === 0 ? [beside || FROM_START] : sentence(why, beside && `, ${beside}`),
        minutes: minutes(network.minutes[index] ?? 0),
      },
    ];
  });
}

/** "side by side with 2, 5 and 7", "side by side with 2, 5, 7 and others": the nearest numbers. Empty when there are none. */
function besideText(own: number, numbers: readonly number[]): string {
  if (numbers.length === 0) return '';
  const near = [...numbers].sort((a, b) => Math.abs(a - own) - Math.abs(b - own) || a - b);
  const shown = near.slice(0, BESIDE).sort((a, b) => a - b);
  return `side by side with ${list([...shown.map(String), ...(numbers.length > BESIDE ? ['others'] : [])])}`;
}

function title({ network }: Assessment, say: Say, node: GameNode): Sentence {
  const name = say.name(node.id);
  switch (node.kind) {
    case 'place':
      return search(say.game, node.id);
    case 'container':
      return sentence('Look into ', name);
    case 'fastener': {
      const locks = rowOf(network.fasteners, network.index.get(node.on) ?? 0).length;
      if (locks < 2) return sentence('Open ', say.name(node.on));
      return say.title(node.id);
    }
    case 'clue':
      return sentence('Read ', name);
    case 'key':
      return sentence('Try ', name);
    case 'tool':
      return sentence('Use ', name);
    case 'puzzle':
    case 'prize':
      return name;
  }
}

const FROM_START = 'from the start';

const fromMinute = (minute: number) => noteText({ note: 'atMinute', minute, givenOut: false });

/** Before which the step cannot begin, because the teacher gives out only then what it needs; what is a step tells of itself. 0 when there is none. */
function earliestMinute({ network }: Assessment, index: number, things: readonly number[]): number {
  let latest = 0;
  for (const thing of [index, ...things]) {
    for (let node = thing; node >= 0; node = network.parent[node] ?? -1) {
      if (node !== index && network.isStep[node] === 1) break;
      latest = Math.max(latest, network.atMinute[node] ?? 0);
    }
  }
  return latest;
}

interface Wanted {
  readonly codes: boolean;
  readonly most: number;
}

function reason(assessment: Assessment, say: Say, node: GameNode, index: number, wanted: Wanted): Sentence {
  const { context, game, network } = assessment;
  const because = context.proofs().reason(index)?.because ?? [];
  const needs = new Set(rowOf(network.needs, index));
  const enough = network.k[index] ?? needs.size;
  // Where there is a choice, all that can serve are named: not what is had only after this step.
  const before = enough < needs.size ? context.without(index) : undefined;
  const able = before ? [...needs].filter((need) => before[need] === 1) : [];
  const of = enough < able.length ? enough : undefined;
  const used = of === undefined ? because.filter((one) => needs.has(one)) : able;
  // Of a choice, what serves may come from elsewhere: only what is used for sure makes the step late.
  const sure = of === undefined ? [...used, ...aidsOf(assessment, used)] : [];
  const minute = earliestMinute(assessment, index, sure);
  const late = minute > 0 ? `, not before minute ${minute}` : '';
  const uses: Uses = { node, used, of, most: wanted.most };
  if (node.kind === 'fastener') {
    const isWrong = context.codes().some((code) => code.node === index && code.state === 'wrong');
    // What is a step has a line of its own, and stands before this one.
    const isNamed = of !== undefined || used.some((one) => network.isStep[one] !== 1);
    const isByKey = fastenerType(node.type).opensWith !== 'code';
    const names = waitedFor(assessment, say, uses, isByKey ? 'with' : undefined);
    return sentence(lockReason(say, node, names, { isNamed, isWrong, codes: wanted.codes }), late);
  }
  const answer = node.kind === 'puzzle' && wanted.codes ? saidCode(game, node.id) : undefined;
  const gives: Sentence = answer === undefined ? [] : [': ', { code: answer }];
  if (used.length > 0) return sentence(waitedFor(assessment, say, uses), late, gives);
  if (node.kind === 'puzzle') return sentence(minute > 0 ? fromMinute(minute) : FROM_START, gives);
  const holder = because.find((one) => !needs.has(one));
  if (holder !== undefined) return sentence(inHolderOf(game, context.idOf(holder)), late);
  return minute > 0 ? [fromMinute(minute)] : [];
}

interface Uses {
  readonly node: GameNode;
  readonly used: readonly number[];
  /** So many of what is used are enough; undefined: all are needed. */
  readonly of: number | undefined;
  readonly most: number;
}

/** "from Log page and Bay chart, with UV lamp and Hand lens (Lens tin)", "from any 2 of News slip, Word slip and Caption slip", "read with Hand lens". `verb`: for all. */
function waitedFor(
  assessment: Assessment,
  say: Say,
  { node, used, of, most }: Uses,
  verb?: string,
): Sentence {
  const { context } = assessment;
  const items = new Map<string, Sentence[]>();
  const add = (before: string, item: Sentence) => items.set(before, [...(items.get(before) ?? []), item]);
  const verbs = used.map((one) => verb ?? verbBefore(assessment, node, one));
  // Of a choice all stand together, whatever they are.
  const first = verbs.find((one) => one !== 'with') ?? 'with';
  for (const [i, one] of used.entries()) {
    const name = say.name(context.idOf(one));
    add(of === undefined ? (verbs[i] ?? first) : `${first} any ${of} of`, name);
  }
  for (const aid of aidsOf(assessment, used)) add('with', whereFound(assessment, say, aid));
  const groups = [...items].sort(([a], [b]) => Number(a === 'with') - Number(b === 'with'));
  return sentence(
    ...groups.flatMap(([before, names], i) => [i === 0 ? '' : ', ', `${before} `, joined(names, most)]),
  );
}

function verbBefore({ network, context }: Assessment, node: GameNode, source: number): string {
  const isHandedOver = giversOf(network, network.index.get(node.id) ?? -1).includes(source);
  return waitsFor(node.kind, context.kindOf(source), isHandedOver);
}

/** What is needed to read what is used, where no line of its own says so. */
function aidsOf({ network, context }: Assessment, used: readonly number[]): ReadonlySet<number> {
  const aids = new Set<number>();
  const seen = new Set(used);
  for (const one of seen) {
    if (network.isStep[one] === 1) continue;
    const needs = new Set(rowOf(network.needs, one));
    for (const aid of context.proofs().reason(one)?.because ?? []) {
      if (!needs.has(aid) || seen.has(aid) || network.isStep[aid] === 1) continue;
      seen.add(aid);
      aids.add(aid);
    }
  }
  return aids;
}

/** "Hand lens (Lens tin)" */
function whereFound({ game, context }: Assessment, say: Say, thing: number): Sentence {
  const holder = parentInUse(game, context.idOf(thing));
  const where = holder === undefined ? [] : sentence(' (', say.name(holder), ')');
  return sentence(say.name(context.idOf(thing)), where);
}

interface LockFacts {
  /** What gives the code is named. */
  readonly isNamed: boolean;
  readonly isWrong: boolean;
  readonly codes: boolean;
}

function lockReason(
  say: Say,
  node: NodeOf<'fastener'>,
  used: Sentence,
  { isNamed, isWrong, codes }: LockFacts,
): Sentence {
  const type = lockName(node.type);
  const code = saidCode(say.game, node.id);
  switch (fastenerType(node.type).opensWith) {
    case 'nothing':
      if (node.checked !== true) return [`${type}, nothing to solve`];
      return sentence(type, ...(used.length > 0 ? [', ', used] : []), ', checked by the teacher');
    case 'code':
      if (code === undefined) return [`${type}, code not yet known`];
      return sentence(
        type,
        ...(codes ? [' ', { code }] : []),
        isNamed ? sentence(', ', used) : [],
        isWrong ? ', once its code is mended' : '',
      );
    case 'key':
    case 'links':
      return used.length === 0 ? [type] : used;
  }
}
