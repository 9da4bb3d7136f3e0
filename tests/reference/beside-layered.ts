/** The printed page beside a general layered layout of the same game, by the same measures. */
import { assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import type { Drawing } from '../../src/sheets/drawing.ts';
import { checkMap, type MapReport } from '../sheets/page-checks/check.ts';
import type { FaultKind } from '../sheets/page-checks/fault.ts';
import { OPTIONS } from '../sheets/page-checks/hand-made.ts';
import { checkGame } from '../sheets/page-checks/print.ts';
import { layeredPage } from './layered.ts';

export interface Measured {
  /** Type size of names, in points: the smallest. */
  readonly names: number;
  readonly crossings: number;
  readonly onEachOther: number;
  /** Lines through texts, or through trays and bars that they do not serve. */
  readonly through: number;
  readonly told: number;
  readonly pages: number;
}

function measured({ faults, names, crossings, told, pages }: MapReport): Measured {
  const count = (...kinds: FaultKind[]) => faults.filter(({ kind }) => kinds.includes(kind)).length;
  return {
    names,
    crossings,
    told,
    pages,
    onEachOther: count('line on line', 'line along a wall'),
    through: count('line through text', 'line through an area'),
  };
}

export interface Beside {
  readonly steps: number;
  readonly links: number;
  readonly spine: Measured;
  /** Undefined when none was found in time. */
  readonly layered: Measured | undefined;
}

/** Both on A4, upright or lying, whichever has the larger text; the spine on as few pages as may be. */
export async function beside(game: Game, seconds?: number): Promise<Beside> {
  const assessment = assess(game);
  const [first, ...others] = (['portrait', 'landscape'] as const).map((orientation) =>
    measured(checkGame(game, { ...OPTIONS, orientation })),
  );
  if (first === undefined) throw new RangeError('no page');
  const spine = others.reduce(
    (best, other) =>
      other.pages < best.pages || (other.pages === best.pages && other.names > best.names) ? other : best,
    first,
  );
  const page = await layeredPage(assessment, seconds);
  const report = (drawing: Drawing) => measured(checkMap([drawing], assessment, OPTIONS));
  return {
    steps: assessment.measures.steps,
    links: assessment.game.links.size,
    spine,
    layered: page && report(page.drawing),
  };
}
