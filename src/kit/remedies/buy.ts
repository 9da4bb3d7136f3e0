/** A line on the list to buy: more of a thing that suits, or a thing that the kit does not know yet. */
import type { Game } from '../../game/model.ts';
import { boxUnfit, haspUnfit, lockUnfit, symbolsFor, toolUnfit } from '../fit/suits.ts';
import { boxSort, haspSort, lockSort, toolSort } from '../from-games.ts';
import type { Kit, KitItem } from '../model.ts';
import type { Needs } from '../needs.ts';
import type { RemedyWith, Shortage } from './remedy.ts';

interface Wanted {
  readonly suits: (item: KitItem) => boolean;
  readonly sort: KitItem;
}

function wanted(game: Game, needs: Needs, { part, node }: Shortage): Wanted | undefined {
  if (part === 'lock') {
    const need = needs.locks.find((one) => one.node.id === node);
    const symbols = need && symbolsFor(game, need);
    return (
      need && {
        suits: (item) => lockUnfit(need.type, symbols, item, undefined) === undefined,
        sort: lockSort(game, need),
      }
    );
  }
  if (part === 'tool') {
    const need = needs.tools.find((one) => one.node.id === node);
    return need && { suits: (item) => toolUnfit(need.node, item) === undefined, sort: toolSort(need.node) };
  }
  const need = needs.boxes.find((one) => one.node.id === node);
  if (!need) return undefined;
  return part === 'box'
    ? { suits: (item) => boxUnfit(need, item) === undefined, sort: boxSort(need.locks) }
    : { suits: (item) => haspUnfit(need.locks, item) === undefined, sort: haspSort(need.locks) };
}

export function buy(
  game: Game,
  kit: Kit,
  needs: Needs,
  shortage: Shortage,
  newId: () => string,
): RemedyWith<'buy'> | undefined {
  const what = wanted(game, needs, shortage);
  if (!what) return undefined;
  const item = kit.items.find(what.suits) ?? { ...what.sort, id: newId() };
  return { code: 'buy', values: { node: shortage.node, item, count: shortage.missing }, edits: [] };
}
