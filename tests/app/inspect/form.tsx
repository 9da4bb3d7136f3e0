/** The form of the panel over the real stores, for its tests. */
import { fireEvent, render } from '@testing-library/react';
import Inspector from '../../../app/inspect/Inspector.tsx';
import { useView } from '../../../app/store/view.ts';
import type { GameLink, GameNode, NodeOf } from '../../../src/game/model.ts';
import { gameOf, LINKS, NODES, openGame, theGame } from '../open-game.ts';

export function openForm(...ids: string[]): void {
  useView.getState().select(ids);
  render(<Inspector />);
}

export function type(field: HTMLElement, text: string): void {
  fireEvent.change(field, { target: { value: text } });
}

export const node = (id: string) => theGame().nodes.get(id);

/** The small game with its lock changed, more things and more arrows. */
export function openWithLock(
  fields: Partial<NodeOf<'fastener'>>,
  nodes: readonly GameNode[] = [],
  links: readonly GameLink[] = LINKS,
): void {
  const changed = NODES.map((each) => (each.kind === 'fastener' ? { ...each, ...fields } : each));
  openGame(gameOf([...changed, ...nodes], links));
}
