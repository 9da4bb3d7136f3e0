/** The order of play, line by line: what is done, and why it can be done then. */
import { rowOf } from '../engine/rows.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { Assessment } from '../findings/assess.ts';
import { codeOf } from '../game/codes.ts';
import type { GameNode, NodeId, NodeOf } from '../game/model.ts';
import { lockName } from './kinds.ts';
import { list, minutes } from './numbers.ts';
import { lockLabel, type Say, sayer, sentence } from './say.ts';
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

/** Without `codes` no line says a code or an answer. */
export function orderOfPlayLines(assessment: Assessment, codes = true): PlayLine[] {
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
    const why = reason(assessment, say, node, index, codes);
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

function reason(assessment: Assessment, say: Say, node: GameNode, index: number, codes: boolean): Sentence {
  const { context, game } = assessment;
  const because = context.proofs().reason(index)?.because ?? [];
  const needs = new Set(rowOf(assessment.network.needs, index));
  const used = because.filter((one) => needs.has(one)).map(context.idOf);
  if (node.kind === 'fastener') {
    const isWrong = context.codes().some((code) => code.node === index && code.state === 'wrong');
    return lockReason(say, node, used, isWrong, codes);
  }
  const answer = node.kind === 'puzzle' && codes ? codeOf(game, node.id) : undefined;
  const gives: Sentence = answer === undefined ? [] : [': ', { code: answer }];
  if (used.length > 0) return sentence('from ', say.names(used, 3), gives);
  if (node.kind === 'puzzle') return sentence('from the start', gives);
  const holder = because.find((one) => !needs.has(one));
  return holder === undefined ? [] : sentence('in ', say.name(context.idOf(holder)));
}

function lockReason(
  say: Say,
  node: NodeOf<'fastener'>,
  used: readonly NodeId[],
  isWrong: boolean,
  codes: boolean,
): Sentence {
  const type = lockName(node.type);
  const code = codeOf(say.game, node.id);
  switch (fastenerType(node.type).opensWith) {
    case 'nothing':
      return [`${type}, nothing to solve`];
    case 'code':
      if (code === undefined) return [`${type}, code not yet known`];
      return sentence(type, ...(codes ? [' ', { code }] : []), isWrong ? ', once its code is mended' : '');
    case 'key':
    case 'links':
      return used.length === 0 ? [type] : sentence('with ', say.names(used, 3));
  }
}
