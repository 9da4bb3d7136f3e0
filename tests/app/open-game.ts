/** A small game in the stores, for tests of the screen. */

import { useGame } from '../../app/store/game.ts';
import { useView } from '../../app/store/view.ts';
import { emptyGame, type Game, type GameLink, type GameNode } from '../../src/game/model.ts';

export function gameOf(nodes: readonly GameNode[], links: readonly GameLink[] = []): Game {
  return {
    ...emptyGame,
    nodes: new Map(nodes.map((node) => [node.id, node])),
    links: new Map(links.map((link) => [link.id, link])),
  };
}

/** A sill with a box on it; in the box a prize; a number lock that a puzzle opens, the puzzle fed by a clue on the sill. */
export const NODES: readonly GameNode[] = [
  { id: 'sill', kind: 'place', name: 'Window sill' },
  { id: 'note', kind: 'clue', name: 'Torn note', in: 'sill' },
  { id: 'sum', kind: 'puzzle', name: 'Add the rows', answer: '472' },
  { id: 'tin', kind: 'container', name: 'Green tin', in: 'sill' },
  { id: 'lock', kind: 'fastener', name: 'Number lock', on: 'tin', type: 'number', code: '472' },
  { id: 'medal', kind: 'prize', name: 'Medal', in: 'tin' },
];

export const LINKS: readonly GameLink[] = [
  { id: 'l1', from: 'note', to: 'sum' },
  { id: 'l2', from: 'sum', to: 'lock' },
];

let opened = 0;

export function openGame(game: Game = gameOf(NODES, LINKS)): void {
  useGame.getState().open(game, { id: `game${opened++}`, revision: 0 });
  useView.getState().reset();
}

export const theGame = () => useGame.getState().game;
export const past = () => useGame.getState().history.past.length;
