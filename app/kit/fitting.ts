/** Which real thing goes where in the open game: worked out anew with each change, and as it was before where nothing speaks against it. */
import type { Game } from '../../src/game/model.ts';
import { type Fitting, fitKit } from '../../src/kit/fit/index.ts';
import type { Kit } from '../../src/kit/model.ts';
import { useGame } from '../store/game.ts';
import { memoLast } from '../store/memo.ts';
import { useKit } from './kit-state.ts';
import { NO_PINS, type Pins } from './owned.ts';

interface Asked {
  readonly id: string;
  readonly game: Game;
  readonly kit: Kit;
  readonly pins: Pins;
}

interface Found {
  readonly id: string;
  readonly fitting: Fitting;
}

const fittingOf = memoLast<Asked, Found>(
  ({ id, game, kit, pins }) => [id, game.nodes, game.links, game.head, kit, pins],
  ({ id, game, kit, pins }, before) => ({
    id,
    fitting: fitKit(game, kit, {
      pins: pins.nodes,
      haspPins: pins.hasps,
      ...(before?.id === id && { previous: before.fitting }),
    }),
  }),
);

export function useFitting(): Fitting {
  const game = useGame((state) => state.game);
  const id = useGame((state) => state.provenance.id);
  const owned = useKit((state) => state.owned);
  return fittingOf({ id, game, kit: owned.kit, pins: owned.pins.get(id) ?? NO_PINS }).fitting;
}

/** What is chosen for the open game. */
export function usePins(): Pins {
  const id = useGame((state) => state.provenance.id);
  return useKit(({ owned }) => owned.pins.get(id) ?? NO_PINS);
}

/** Chooses an item for one copy, or with null lets any do. `copies`: how many there are. */
export function choose(
  sort: keyof Pins,
  node: string,
  { copy, copies, item }: { readonly copy: number; readonly copies: number; readonly item: string | null },
): void {
  const { id } = useGame.getState().provenance;
  const { owned, change } = useKit.getState();
  const own = owned.pins.get(id) ?? NO_PINS;
  const items = Array.from({ length: copies }, (_, i) =>
    i === copy ? item : (own[sort].get(node)?.[i] ?? null),
  );
  const given = new Map(own[sort]);
  if (items.some((one) => one !== null)) given.set(node, items);
  else given.delete(node);
  change({ ...owned, pins: new Map(owned.pins).set(id, { ...own, [sort]: given }) });
}
