/** What gives a lock its code in parts: which position each source fills, whether its line is drawn or told. */
import type { NodeId } from '../../../game/model.ts';
import { wrap } from '../../../type/text.ts';
import { elsewhere, positionOf, source } from '../../../words/sheet-map.ts';
import { stepNumbers } from '../../../words/sheets.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { broken, type Line, textPiece } from './pieces.ts';
import type { Type } from './type.ts';

interface Positions {
  readonly lines: readonly Line[];
  /** What is told at the lock and not yet said by the lines. */
  readonly others: readonly Told[];
}

/** 'position 1: Cube scrap (Lens tin), 2: step 7'. `leftOut`: told at the lock, and no room to say it. No lines for a lock whose code comes whole. */
export function positionLines(
  facts: Facts,
  lock: NodeId,
  told: readonly Told[],
  leftOut: readonly Told[],
  width: number,
  type: Type,
): Positions {
  const from = (some: readonly Told[], node: NodeId) =>
    some.find(({ other, otherEnd }) => other === node && otherEnd === 'from');
  const parts = (facts.locks.get(lock)?.openers ?? []).flatMap(({ node, at }) =>
    at && !from(leftOut, node) ? [{ node, at }] : [],
  );
  const said = new Set<Told>();
  const pieces = parts.flatMap(({ node, at }, i) => {
    const one = from(told, node);
    if (one) said.add(one);
    const number = facts.number(node);
    const name = number > 0 ? stepNumbers([number]) : facts.name(node);
    const holder = number > 0 || !one ? undefined : facts.holderName(node);
    const giver = source(0, name, holder, 0, one?.elsewhere && elsewhere(one.elsewhere));
    const text = positionOf(at, giver, i === 0, i === parts.length - 1);
    const look = one
      ? ({ role: 'reference', of: lock, links: [one.link] } as const)
      : ({ role: 'note', of: lock } as const);
    return wrap(text, width, type.told).map((line) => textPiece(line, type.told, look, type.gap));
  });
  return { lines: broken(pieces, width), others: told.filter((one) => !said.has(one)) };
}
