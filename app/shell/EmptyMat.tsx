/** One line on the mat of a game begun empty, until the first thing stands on it. */
import { PAGE } from '../../src/words/screen.ts';
import { useKeep } from '../keep/index.ts';
import { useGame } from '../store/game.ts';

export function EmptyMat() {
  const empty = useGame((state) => state.game.nodes.size === 0 && !state.readOnly);
  const begun = useKeep((state) => state.ready && state.fromNothing);
  return empty && begun ? <p className="page-mat-line">{PAGE.firstThing}</p> : null;
}
