/**
 * What helps most: every sound single change is simulated with a few runs, the best of each kind with as many as all figures rest on, and those listed
 * that help beyond noise. Cost: changes times an assessment and some runs, counted in nodes played, never timed.
 */
import { RUNS } from '../engine/simulation/batch.ts';
import { type Assessment, assess } from '../findings/assess.ts';
import type { Game } from '../game/model.ts';
import { type Help, nodesOf } from './help.ts';
import { changesOf } from './index.ts';
import { changed } from './sound.ts';
import { type Effect, effectOf, gain, isBeyondNoise, type LessonFigures, Trial } from './trial.ts';

export interface Helpful {
  readonly help: Help;
  /** Of the changed game, from as many runs as `before`. */
  readonly after: LessonFigures;
  readonly effect: Effect;
}

export interface WhatHelps {
  readonly before: LessonFigures;
  /** What helps most first. */
  readonly helpful: readonly Helpful[];
  /** How many sound changes were tried. */
  readonly tried: number;
}

/** A share of the work that is done, 0 to 1, or the result, which comes last. Of a game that cannot be won: undefined. */
export type HelpsAnswer = { readonly done: number } | { readonly result: WhatHelps | undefined };

const MOST = 6;
const MOST_OF_A_KIND = 2;
/** Of each kind that are simulated in full: more than are listed, since few runs tell the best apart badly. */
const KEPT_OF_A_KIND = 3;
const MOST_KEPT = 16;
const FEWEST_KEPT = 4;
/** Half a lesson in ten, or half a minute of waiting: below, it is not worth a change. */
const WORTH = 0.5;

/** Nodes that are played for the first look at each change, and for the second. */
const FIRST_LOOK = 1_000_000;
const SECOND_LOOK = 2_000_000;
const MOST_RUNS = 150;
const FEWEST_RUNS = 15;
const FEWEST_CHANGES = 20;

function within(least: number, value: number, most: number): number {
  return Math.max(least, Math.min(most, Math.floor(value)));
}

/** Of two changes of one kind to the same thing the better one is enough. */
function subject(help: Help): string {
  return JSON.stringify([help.code, nodesOf(help)[0] ?? '']);
}

interface Candidate {
  readonly help: Help;
  readonly after: Assessment;
  readonly gain: number;
}

/** The best first; of each kind so many, and of one subject one. Equals stay in the order in which they were tried. */
function best<T extends { readonly help: Help; readonly gain: number }>(
  all: readonly T[],
  ofAKind: number,
  most: number,
): T[] {
  const kinds = new Map<string, number>();
  const subjects = new Set<string>();
  const chosen: T[] = [];
  for (const one of [...all].sort((a, b) => b.gain - a.gain)) {
    const { code } = one.help;
    const count = kinds.get(code) ?? 0;
    if (chosen.length >= most || count >= ofAKind || subjects.has(subject(one.help))) continue;
    kinds.set(code, count + 1);
    subjects.add(subject(one.help));
    chosen.push(one);
  }
  return chosen;
}

/** Undefined in between: nothing new, and who works may breathe. @param runs on which all that is told rests */
export function* whatHelps(game: Game, runs = RUNS): Generator<HelpsAnswer | undefined, void> {
  const assessment = assess(game);
  if (!assessment.canBeWon) {
    yield { result: undefined };
    return;
  }
  const before = new Trial(assessment);
  yield* before.run(runs);

  const all = changesOf(assessment);
  const { nodes } = before;
  const changes = all.slice(0, within(FEWEST_CHANGES, FIRST_LOOK / (FEWEST_RUNS * nodes), all.length));
  const few = Math.min(
    runs,
    within(FEWEST_RUNS, FIRST_LOOK / (Math.max(1, changes.length) * nodes), MOST_RUNS),
  );
  const kept = within(FEWEST_KEPT, SECOND_LOOK / (runs * nodes), MOST_KEPT);
  const work = runs + changes.length * few + kept * runs;
  let done = runs;
  yield { done: done / work };

  const candidates: Candidate[] = [];
  let tried = 0;
  for (const help of changes) {
    const after = changed(assessment, help);
    if (after) {
      tried += 1;
      const trial = new Trial(after);
      yield* trial.run(few);
      candidates.push({ help, after, gain: gain(effectOf(before, trial), false) });
    }
    done += few;
    yield { done: done / work };
  }

  const found: (Helpful & { readonly gain: number })[] = [];
  const promising = best(
    candidates.filter((one) => one.gain > 0),
    KEPT_OF_A_KIND,
    kept,
  );
  for (const { help, after } of promising) {
    const trial = new Trial(after);
    yield* trial.run(runs);
    const effect = effectOf(before, trial);
    const isLater = effect.inTime.mean < 0 && isBeyondNoise(effect.inTime);
    const sure = gain(effect, true);
    if (!isLater && sure >= WORTH) found.push({ help, after: trial.figures(), effect, gain: sure });
    done += runs;
    yield { done: done / work };
  }
  const helpful = best(found, MOST_OF_A_KIND, MOST).map(({ gain: _, ...one }) => one);
  yield { result: { before: before.figures(), helpful, tried } };
}
