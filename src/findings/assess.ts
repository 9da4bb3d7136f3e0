/** The one result that the screen, the command line and every sheet read: what is true of a game, and what is to be said of it. */
import { type Measures, measure } from '../engine/measures.ts';
import { compile, type Network } from '../engine/network.ts';
import type { WordList } from '../fasteners/word-list/index.ts';
import type { Game } from '../game/model.ts';
import { type Context, contextOf } from './context.ts';
import type { Finding } from './finding.ts';
import { findingsOf } from './index.ts';

export interface Assessment {
  readonly game: Game;
  readonly network: Network;
  readonly measures: Measures;
  /** What stops the game first, then what is worth a look. */
  readonly findings: readonly Finding[];
  /** Solvable, and no finding stops it. */
  readonly canBeWon: boolean;
  /** The same and more, the costly parts made when asked for. */
  readonly context: Context;
}

/**
 * Cheap enough for every edit; what moving a thing changes is not in it.
 *
 * @param words where they are at hand; without them a word lock counts every code of its wheels
 */
export function assess(game: Game, words?: WordList): Assessment {
  const network = compile(game);
  const measures = measure(network);
  const context = contextOf(game, network, measures, words);
  const findings = findingsOf(context);
  const canBeWon = measures.solvable && !findings.some(({ level }) => level === 'stops');
  return { game, network, measures, findings, canBeWon, context };
}
