import type { Game } from '../../game/model.ts';
import { word } from '../word.ts';

/** Whether a game has a lock that the list is for, left out or not. */
export function hasWordLock({ nodes }: Pick<Game, 'nodes'>): boolean {
  for (const node of nodes.values()) if (node.kind === 'fastener' && node.type === word.type) return true;
  return false;
}
