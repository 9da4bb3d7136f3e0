/**
 * Tidying, from the question to the game. Asked for, its result is one edit: until that, the map shows what has been found without the
 * game knowing of it, so that an edit, or a hand that takes hold of something, ends it without a trace. For a game that came without
 * positions it is no edit, and what is found first is in the game at once.
 */
import type { Placement } from '../../../src/game/edits/edit.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import { type Game, type NodeId, type Point, parentOf } from '../../../src/game/model.ts';
import { playNumbers } from '../../../src/map/place-missing.ts';
import { receiveRoutes } from '../../../src/map/route/sent.ts';
import { PARTS } from '../../../src/words/parts.ts';
import { tellTrouble } from '../../parts/trouble.ts';
import { currentAssessment } from '../../store/assessment.ts';
import { useGame } from '../../store/game.ts';
import { type TidyWork, useTidying } from '../../store/tidying.ts';
import { useView } from '../../store/view.ts';
import { useDrag } from '../drag/held.ts';
import { ask } from './ask.ts';
import type { TidyAnswer, TidyQuestion } from './work.ts';

/** Milliseconds after which it is said that something is under way. */
const SLOW = 1000;
/** Milliseconds for which it is said that nothing was left to be tidied. */
const SAID = 5000;

/** What would stand elsewhere, or had no position. */
function movesTo(game: Game, positions: ReadonlyMap<NodeId, Point>): Placement[] {
  return [...positions].filter(([id, { x, y }]) => {
    const old = game.positions.get(id);
    return game.nodes.has(id) && (old?.x !== x || old.y !== y);
  });
}

const standsOnMat = (game: Game, id: NodeId) => {
  const node = game.nodes.get(id);
  return node !== undefined && parentOf(node) === undefined;
};

/** The positions of the game after the moves, with all else that it says of them. */
function positionsAfter(game: Game, moves: readonly Placement[]): ReadonlyMap<NodeId, Point> {
  const result = applyEdits(game, [{ type: 'move', positions: moves }]);
  return result.ok ? result.game.positions : game.positions;
}

const routesOf = ({ routes }: TidyAnswer) => (routes ? { routes: receiveRoutes(routes) } : {});

function sayAlready(game: Game): void {
  useTidying.setState({ tidyAlready: game });
  setTimeout(() => {
    if (useTidying.getState().tidyAlready === game) useTidying.setState({ tidyAlready: undefined });
  }, SAID);
}

/** Shows an answer to what was asked for; the final one becomes an edit. */
function showAsked(game: Game, answer: TidyAnswer, end: () => void): void {
  const moves = movesTo(game, answer.positions);
  const nothing = !moves.some(([id]) => standsOnMat(game, id));
  if (!answer.final) {
    if (!nothing) useTidying.setState({ shown: positionsAfter(game, moves), ...routesOf(answer) });
    return;
  }
  if (nothing) sayAlready(game);
  else useTidying.setState(routesOf(answer));
  end();
  if (!nothing) useGame.getState().apply([{ type: 'move', positions: moves }]);
}

function begin(work: TidyWork, only: TidyQuestion['only'], from: TidyQuestion['from']): void {
  useTidying.getState().stop?.();
  let { game } = useGame.getState();
  const { opened } = useView.getState();
  const { network, measures } = currentAssessment();
  let waiting: TidyAnswer | undefined;

  const show = (answer: TidyAnswer) => {
    if (work === 'asked') return showAsked(game, answer, end);
    // Nothing is moved from under a hand.
    if (useDrag.getState().held) {
      waiting = answer;
      return;
    }
    useTidying.setState(routesOf(answer));
    game = { ...game, positions: positionsAfter(game, movesTo(game, answer.positions)) };
    useGame.getState().place(game);
    if (answer.final) end();
  };
  const fail = () => {
    end();
    tellTrouble(PARTS.broken);
  };
  const stopAsking = ask(
    { game, numbers: playNumbers(network, measures), opened, only, from },
    { hear: show, fail },
  );
  const slow = setTimeout(() => useTidying.setState({ slow: true }), SLOW);
  const stopListening = [
    useGame.subscribe((now) => {
      if (now.game !== game || (now.readOnly && work === 'asked')) end();
    }),
    useView.subscribe((now) => {
      if (now.opened !== opened) begin(work, only, from);
    }),
    useDrag.subscribe(({ held }) => {
      if (held && work === 'asked') end();
      const late = waiting;
      if (held || !late) return;
      waiting = undefined;
      // What was let go may yet become an edit.
      queueMicrotask(() => {
        if (useTidying.getState().stop === end) show(late);
      });
    }),
  ];
  const end = () => {
    stopAsking();
    clearTimeout(slow);
    for (const stop of stopListening) stop();
    useTidying.setState({ work: undefined, stop: undefined, slow: false, shown: undefined });
  };
  useTidying.setState({ work, stop: end, slow: false, shown: undefined, tidyAlready: undefined });
}

/** Tidies what stands on the mat, or of it only what is given. */
export function tidyUp(only?: ReadonlySet<NodeId>): void {
  begin('asked', only, 'document');
}

/** Finds places for what came without them; undefined: for all. */
export function placeUnplaced(only?: ReadonlySet<NodeId>): void {
  begin('opening', only, only ? 'document' : 'scratch');
}
