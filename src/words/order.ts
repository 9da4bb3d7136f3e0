/** The order of play, line by line: what is done, and why it can be done then. */
import { parentInUse } from '../engine/left-out.ts';
import { rowOf } from '../engine/rows.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { Assessment } from '../findings/assess.ts';
import { codeOf } from '../game/codes.ts';
import type { GameNode, NodeId, NodeOf } from '../game/model.ts';
import { lockName } from './kinds.ts';
import { list, minutes } from './numbers.ts';
import { joined, lockLabel, type Say, sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

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
        reason: why.length === 0 ? [beside || 'from the start'] : sentence(why, beside && `, ${beside}`),
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
      return sentence('Search ', name);
    case 'container':
      return sentence('Look into ', name);
    case 'fastener': {
      const locks = rowOf(network.fasteners, network.index.get(node.on) ?? 0).length;
      if (locks < 2) return sentence('Open ', say.name(node.on));
      const words = lockLabel(say.game, node);
      return sentence(
        { node: node.id, text: words.charAt(0).toUpperCase() + words.slice(1) },
        ' on ',
        say.name(node.on),
      );
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

interface Wanted {
  readonly codes: boolean;
  readonly most: number;
}

function reason(assessment: Assessment, say: Say, node: GameNode, index: number, wanted: Wanted): Sentence {
  const { context, game, network } = assessment;
  const because = context.proofs().reason(index)?.because ?? [];
  const needs = new Set(rowOf(network.needs, index));
  const used = because.filter((one) => needs.has(one));
  const names = say.names(used.map(context.idOf), wanted.most);
  const aids = aidsText(assessment, say, used, wanted.most);
  if (node.kind === 'fastener') {
    const isWrong = context.codes().some((code) => code.node === index && code.state === 'wrong');
    // What is a step has a line of its own, and stands before this one.
    const isNamed = used.some((one) => network.isStep[one] !== 1);
    return sentence(lockReason(say, node, names, { isNamed, isWrong, codes: wanted.codes }), aids);
  }
  const answer = node.kind === 'puzzle' && wanted.codes ? codeOf(game, node.id) : undefined;
  const gives: Sentence = answer === undefined ? [] : [': ', { code: answer }];
  if (used.length > 0) return sentence('from ', names, aids, gives);
  if (node.kind === 'puzzle') return sentence('from the start', gives);
  const holder = because.find((one) => !needs.has(one));
  return holder === undefined ? [] : sentence('in ', say.name(context.idOf(holder)));
}

/** ", with Hand lens (Lens tin)": what is needed to read what is used, where no line of its own says so. Empty when nothing is. */
function aidsText(
  { network, context, game }: Assessment,
  say: Say,
  used: readonly number[],
  most: number,
): Sentence {
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
  if (aids.size === 0) return [];
  const named = [...aids].map((aid) => {
    const holder = parentInUse(game, context.idOf(aid));
    const where = holder === undefined ? [] : sentence(' (', say.name(holder), ')');
    return sentence(say.name(context.idOf(aid)), where);
  });
  return sentence(', with ', joined(named, most));
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
  const code = codeOf(say.game, node.id);
  switch (fastenerType(node.type).opensWith) {
    case 'nothing':
      return [`${type}, nothing to solve`];
    case 'code':
      if (code === undefined) return [`${type}, code not yet known`];
      return sentence(
        type,
        ...(codes ? [' ', { code }] : []),
        isNamed ? sentence(', from ', used) : [],
        isWrong ? ', once its code is mended' : '',
      );
    case 'key':
    case 'links':
      return used.length === 0 ? [type] : sentence('with ', used);
  }
}
