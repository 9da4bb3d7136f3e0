/** What the command line says of a kit against a game. */
import type { Game } from '../game/model.ts';
import type { Fitting } from '../kit/fit/index.ts';
import { shortagesOf } from '../kit/remedies/remedy.ts';
import { likeKeysSentence, shortageSentence, shortSummary } from './kit-remedies.ts';
import { plain } from './sentence.ts';

/** A line on whether all is there, then one for each shortage, and one for each key that opens too much. */
export function fittingLines(game: Game, fitting: Fitting): string[] {
  return [
    shortSummary(fitting.missing, fitting.teams),
    ...shortagesOf(fitting).map((shortage) => `- ${plain(shortageSentence(game, shortage))}`),
    ...fitting.likeKeys.map((alike) => `- ${plain(likeKeysSentence(game, alike))}`),
  ];
}
