import { readFileSync } from 'node:fs';
import type { Game } from '../../../src/game/model.ts';
import { readGame } from '../../../src/game/read.ts';

/** A game with something for every sheet and every choice. */
export function theExample(): Game {
  const result = readGame(readFileSync('public/games/front-page.latchmap.json', 'utf8'), {
    newId: () => 'example',
  });
  if (!result.ok) throw new Error('the example cannot be read');
  return result.document.game;
}
