/** What a lock is set to, and what else its plate says. */
import type { NodeId } from '../../../game/model.ts';
import { wrap } from '../../../type/text.ts';
import { LOCK_STATES } from '../../../words/canvas.ts';
import { lockName } from '../../../words/kinds.ts';
import { list } from '../../../words/numbers.ts';
import { rule } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { answerLines } from './answer.ts';
import { type Line, type Piece, textLines, textPiece } from './pieces.ts';
import type { Type } from './type.ts';

/** A code that is not yet known is written in here; in sizes of the type. */
const BLANK = 5;

/** 'cannot open', 'wrong code'. */
export function statePieces(facts: Facts, id: NodeId, width: number, { note, gap }: Type): Piece[] {
  const state = stateOf(facts, id);
  const style = { ...note, weight: 'strong' } as const;
  if (state === undefined) return [];
  return wrap(state, width, style).map((part) =>
    textPiece(part, style, { role: 'note', ink: 'stop', of: id }, gap),
  );
}

function stateOf(facts: Facts, id: NodeId): string | undefined {
  if (!facts.isReached(id)) return LOCK_STATES.cannotOpen;
  const { context, network } = facts.assessment;
  const isWrong = context.codes().some((code) => code.state === 'wrong' && network.ids[code.node] === id);
  return isWrong ? LOCK_STATES.wrongCode : undefined;
}

export function settingLines(
  facts: Facts,
  id: NodeId,
  told: readonly Told[],
  width: number,
  type: Type,
): Line[] {
  const entry = facts.locks.get(id);
  switch (entry?.setting.set) {
    case 'key': {
      const names = entry.setting.keys.map(facts.name);
      const text = list(names, entry.need === undefined ? 'and' : 'or');
      const links = told.filter(({ otherEnd }) => otherEnd === 'from').map(({ link }) => link);
      return textLines(text, width, type.name, { role: 'name', of: id, links });
    }
    case 'nothing':
      return textLines(lockName('latch'), width, type.thing, { role: 'note', of: id });
    case 'code':
      return answerLines(facts, id, width, type) ?? [];
    default:
      return facts.options.codes ? [blank(Math.min(width, BLANK * type.size), type)] : [];
  }
}

function blank(width: number, type: Type): Line {
  const y = type.drop;
  return { width, marks: [rule({ x: 0, y }, { x: width, y }, 0.8, 'ink', [1, 1.6])] };
}
