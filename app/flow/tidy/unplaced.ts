/** Games too large to be arranged while they are read are arranged once they are open. */
import { type Game, type NodeId, parentOf } from '../../../src/game/model.ts';
import { PLACED_ON_READING } from '../../keep/reading.ts';
import { useGame } from '../../store/game.ts';
import { useTidying } from '../../store/tidying.ts';
import { TIDY_UP } from './parts.ts';

/** Milliseconds of rest after an edit before it is begun again. */
const REST = 500;

/** What stands on the mat and has no position, and whether that is all that stands there. */
function unplaced(game: Game): { readonly ids: ReadonlySet<NodeId>; readonly all: boolean } {
  const ids = new Set<NodeId>();
  if (game.nodes.size <= PLACED_ON_READING) return { ids, all: false };
  let all = true;
  for (const node of game.nodes.values()) {
    if (parentOf(node) !== undefined) continue;
    if (game.positions.has(node.id)) all = false;
    else ids.add(node.id);
  }
  return { ids, all };
}

/** Called once when the page starts. */
export function startPlacing(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const begin = async () => {
    // Where it cannot be had, the next edit tries again.
    const tidying = await TIDY_UP.load();
    if (!tidying) return;
    const { ids, all } = unplaced(useGame.getState().game);
    if (ids.size > 0 && !useTidying.getState().work) tidying.placeUnplaced(all ? undefined : ids);
  };
  const consider = (rest: number) => {
    clearTimeout(timer);
    if (unplaced(useGame.getState().game).ids.size > 0) timer = setTimeout(() => void begin(), rest);
  };
  useGame.subscribe((now, before) => {
    if (now.game !== before.game) consider(now.provenance.id === before.provenance.id ? REST : 0);
  });
  consider(0);
}
