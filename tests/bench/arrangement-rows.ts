/** How long a facilitator map and a tidied canvas take: to the first that can be shown, and to the last, which is the best. */
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import { tidy } from '../../src/map/arrange.ts';
import { playNumbers } from '../../src/map/place-missing.ts';
import { printRun } from '../../src/sheets/index.ts';
import { randomPageGame } from '../random-page-game.ts';
import { lessonGame } from './games.ts';
import { medianOf } from './time.ts';

interface Arrangement {
  readonly what: string;
  readonly size: number;
  readonly unit: 'steps' | 'nodes';
  /** Begins anew each time. */
  readonly begin: () => Generator<unknown, unknown>;
}

const numbersOf = (game: Game) => {
  const network = compile(game);
  return playNumbers(network, measure(network));
};

/** Of the first random game that has so many numbered steps. */
function gameOfSteps(size: number): Game {
  for (let seed = 1; ; seed++) {
    const game = randomPageGame(seed, { steps: size });
    if (numbersOf(game).size === size) return game;
  }
}

function page(size: number): Arrangement {
  const assessment = assess(gameOfSteps(size));
  const options = {
    paper: 'A4',
    orientation: 'portrait',
    codes: true,
    times: true,
    rescue: true,
    ticks: true,
    colour: true,
    sheets: ['map'],
  } as const;
  return {
    what: 'facilitator map',
    size,
    unit: 'steps',
    begin: () => printRun(assessment, options, { date: '1 May, 9:15' }),
  };
}

function tidied(size: number): Arrangement {
  const game = lessonGame(size);
  const numbers = numbersOf(game);
  return { what: 'tidied', size, unit: 'nodes', begin: () => tidy(game, numbers, { from: 'scratch' }) };
}

function toTheEnd(search: Generator<unknown, unknown>) {
  while (!search.next().done);
}

/** Growth: the power of the size with which the time grows, from the row before of the same kind. */
export function arrangementTable(): string[] {
  const lines = [
    '| median of several runs, ms | first | final | final : first | growth |',
    '|---|---|---|---|---|',
  ];
  let before: { what: string; size: number; final: number } | undefined;
  for (const { what, size, unit, begin } of [page(12), page(25), page(50), tidied(60), tidied(300)]) {
    const first = medianOf(() => begin().next());
    const final = medianOf(() => toTheEnd(begin()));
    const power =
      before?.what === what
        ? (Math.log(final / before.final) / Math.log(size / before.size)).toFixed(1)
        : '–';
    lines.push(
      `| ${what}, ${size} ${unit} | ${first.toFixed(1)} | ${final.toFixed(0)} | ${(final / first).toFixed(1)} | ${power} |`,
    );
    before = { what, size, final };
  }
  return lines;
}
