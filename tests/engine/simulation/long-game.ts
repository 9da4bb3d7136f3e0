/** Games of any size that can be won: side by side so many chains of places, clues, puzzles, locks and boxes, and one prize that needs them all. */
import type { Game } from '../../../src/game/model.ts';
import { gameOf, type NodeDraft } from '../../game-of.ts';

/** Each link of a chain has six nodes, three of them steps whose times vary. */
export function longGame(chains: number, length: number): Game {
  const nodes: NodeDraft[] = [
    { id: 'last', kind: 'puzzle' },
    { id: 'prize', kind: 'prize' },
  ];
  const links: string[] = ['last>prize'];
  for (let chain = 0; chain < chains; chain++) {
    for (let at = 0; at < length; at++) {
      const [place, clue, puzzle, box, lock] = ['place', 'clue', 'puzzle', 'box', 'lock'].map(
        (name) => `${name} ${chain} ${at}`,
      );
      if (!place || !clue || !puzzle || !box || !lock) continue;
      nodes.push(
        { id: place, kind: 'place' },
        { id: clue, kind: 'clue', in: place },
        { id: puzzle, kind: 'puzzle' },
        { id: box, kind: 'container' },
        { id: lock, kind: 'fastener', on: box, type: 'number' },
        { id: `note ${chain} ${at}`, kind: 'clue', in: box },
      );
      links.push(`${clue}>${puzzle}`, `${puzzle}>${lock}`);
      links.push(`note ${chain} ${at}>${at + 1 < length ? `place ${chain} ${at + 1}` : 'last'}`);
    }
  }
  return gameOf(nodes, links);
}
