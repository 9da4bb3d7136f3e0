/** What is worked out about helping a lesson along, in a worker or, where none runs, on the page: the pace first, which takes less. */
import { compile } from '../../src/engine/network.ts';
import { canPlay } from '../../src/engine/simulation/batch.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import { type Pace, paceOf } from '../../src/engine/simulation/pace.ts';
import { statedRules } from '../../src/engine/simulation/rules.ts';
import type { Game, NodeId } from '../../src/game/model.ts';
import { type WhatHelps, whatHelps } from '../../src/helps/what-helps.ts';

export type HelpsPart = 'pace' | 'helps';

export interface PaceOfGame {
  readonly pace: Pace;
  /** What the numbers of nodes stand for. */
  readonly ids: readonly NodeId[];
}

/** Undefined where the game cannot be won. `done`: the share of the changes that have been tried. */
export type HelpsAnswer =
  | { readonly part: 'pace'; readonly value: PaceOfGame | undefined }
  | { readonly part: 'helps'; readonly value: WhatHelps | undefined }
  | { readonly part: 'progress'; readonly done: number };

export function* helpsAnswers(
  game: Game,
  parts: readonly HelpsPart[],
  runs: number,
): Generator<HelpsAnswer | undefined, void> {
  if (parts.includes('pace')) {
    const network = compile(game);
    if (canPlay(network)) {
      const clock = clockOf(game, network);
      const pace = yield* paceOf(clock, statedRules(clock), runs);
      yield { part: 'pace', value: { pace, ids: network.ids } };
    } else yield { part: 'pace', value: undefined };
  }
  if (!parts.includes('helps')) return;
  for (const answer of whatHelps(game, runs)) {
    if (answer === undefined) yield undefined;
    else if ('done' in answer) yield { part: 'progress', done: answer.done };
    else yield { part: 'helps', value: answer.result };
  }
}
