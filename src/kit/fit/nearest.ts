/** Of the locks that are there and of the right type, the one that comes nearest to a code: what keeps it from it is worth saying. */

import { fastenerType } from '../../fasteners/index.ts';
import type { Misfit } from '../../fasteners/type.ts';
import type { Game, NodeId } from '../../game/model.ts';
import { type ItemOf, itemsOf, type Kit } from '../model.ts';
import { needsOf, teamsOf } from '../needs.ts';
import { lockUnfit, symbolsFor } from './suits.ts';

export interface Nearest {
  readonly item: ItemOf<'lock'>;
  readonly misfits: readonly Misfit[];
}

/** Undefined where no lock of the type is there, or where one of them carries the code. */
export function nearestLock(game: Game, kit: Kit, fastener: NodeId): Nearest | undefined {
  const need = needsOf(game, teamsOf(game)).locks.find(({ node }) => node.id === fastener);
  const symbols = need && symbolsFor(game, need);
  if (!symbols) return undefined;
  const { type } = need;
  const items = itemsOf(kit, 'lock').filter((item) => item.type === type && item.count > 0);
  if (items.some((item) => lockUnfit(type, symbols, item, undefined) === undefined)) return undefined;
  let nearest: Nearest | undefined;
  for (const item of items) {
    const misfits = fastenerType(type)
      .misfits(symbols, item)
      .filter(({ assumed }) => !assumed);
    if (!nearest || misfits.length < nearest.misfits.length) nearest = { item, misfits };
  }
  return nearest;
}
