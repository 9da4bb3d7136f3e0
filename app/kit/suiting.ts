/** What in my kit can serve for one part of the open game. */
import type { Game, NodeId } from '../../src/game/model.ts';
import { boxUnfit, haspUnfit, lockUnfit, symbolsFor } from '../../src/kit/fit/suits.ts';
import type { KitItem, What } from '../../src/kit/model.ts';
import { type Needs, needsOf } from '../../src/kit/needs.ts';
import { memoLast } from '../store/memo.ts';

interface Asked {
  readonly game: Game;
  readonly teams: number;
}

const needsNow = memoLast<Asked, Needs>(
  ({ game, teams }) => [game.nodes, game.links, teams],
  ({ game, teams }) => needsOf(game, teams),
);

export type Suiting = (what: What, node: NodeId, items: readonly KitItem[]) => readonly KitItem[];

/** Sizes apart: whether a shackle goes through a hole hangs on the box that the copy gets. */
export function suitingIn(game: Game, teams: number): Suiting {
  const { locks, boxes, tools } = needsNow({ game, teams });
  return (what, node, items) => {
    const isOwn = (need: { readonly node: { readonly id: NodeId } }) => need.node.id === node;
    if (what === 'lock') {
      const need = locks.find(isOwn);
      const symbols = need && symbolsFor(game, need);
      return items.filter((item) => need && lockUnfit(need.type, symbols, item, undefined) === undefined);
    }
    // A teacher knows what else will do: a magnifier for a hand lens.
    if (what === 'tool') return items.filter((item) => item.what === 'tool' && tools.some(isOwn));
    const need = boxes.find(isOwn);
    if (!need) return [];
    if (what === 'hasp') return items.filter((item) => haspUnfit(need.locks, item) === undefined);
    return items.filter((item) => boxUnfit(need, item) === undefined);
  };
}
