/** What can be done about each shortage, in a worker or, where none runs, on the page: in the order of the shortages, one answer each. */
import { assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import type { Fitting } from '../../src/kit/fit/index.ts';
import type { Kit } from '../../src/kit/model.ts';
import { type Remedy, remediesFor, type Shortage } from '../../src/kit/remedies/index.ts';
import { newName } from '../../src/words/canvas.ts';
import { freshId } from '../store/ids.ts';

export interface RemediesQuestion {
  readonly game: Game;
  readonly kit: Kit;
  readonly fitting: Fitting;
  readonly shortages: readonly Shortage[];
}

export interface RemediesAnswer {
  readonly shortage: Shortage;
  readonly remedies: readonly Remedy[];
  readonly final: boolean;
}

const FRESH = { newId: freshId, nameOf: newName };

export function* remediesAnswers({
  game,
  kit,
  fitting,
  shortages,
}: RemediesQuestion): Generator<RemediesAnswer, void> {
  const assessment = assess(game);
  for (const [i, shortage] of shortages.entries()) {
    const remedies = remediesFor(assessment, kit, fitting, shortage, FRESH);
    yield { shortage, remedies, final: i === shortages.length - 1 };
  }
}
