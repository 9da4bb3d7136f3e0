/** Guess resistance: what runs beside the verdict, without and with the list of words, and once by compiling a game for each question. */
import { loadWordList } from '../../app/command/word-list.ts';
import { codesOf } from '../../src/engine/codes.ts';
import { guessesOf } from '../../src/engine/guess/guess.ts';
import { withShortCut } from '../../src/engine/guess/short-cut.ts';
import { type Measures, measure } from '../../src/engine/measures.ts';
import { compile, type Network } from '../../src/engine/network.ts';
import type { WordList } from '../../src/fasteners/word-list/index.ts';
import type { Game } from '../../src/game/model.ts';
import type { Row } from './table.ts';

const WHOLE = 'guesses of all locks';

export const GUESS_ROWS: readonly Row[] = [
  { name: WHOLE, task: (game) => guessing(game) },
  { name: 'guesses with the list of words', task: (game) => guessing(game, loadWordList()) },
  {
    name: 'every short cut measured anew',
    beside: WHOLE,
    mostNodes: 300,
    task(game) {
      const { network, measures, guesses } = prepared(game);
      return () =>
        [...guesses.locks].flatMap(([node, { stages }]) =>
          stages.map(({ given, minutes }) => skipsAnew(network, measures, node, given, minutes)),
        );
    },
  },
];

function prepared(game: Game, words?: WordList) {
  const network = compile(game);
  const measures = measure(network);
  const codes = codesOf(game, network);
  return { network, measures, codes, guesses: guessesOf(game, network, measures, codes, words) };
}

function guessing(game: Game, words?: WordList): () => unknown {
  const { network, measures, codes } = prepared(game, words);
  return () => guessesOf(game, network, measures, codes, words);
}

function skipsAnew(
  network: Network,
  measures: Measures,
  node: number,
  given: readonly number[],
  minutes: number,
): number[] {
  const after = measure(withShortCut(network, node, given, minutes));
  return [...network.ids.keys()].filter((step) => measures.mustDo[step] === 1 && after.mustDo[step] !== 1);
}
