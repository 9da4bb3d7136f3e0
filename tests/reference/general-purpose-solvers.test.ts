import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { gameArbitrary, randomGame } from '../random-game.ts';
import { fewestByInteger } from './integer-program.ts';
import { rulesOf } from './rules.ts';
import { SolvabilityBySat } from './satisfiability.ts';

describe('random games against general-purpose solvers', { timeout: 120_000 }, () => {
  it('solvability and must-do: a satisfiability solver, 1,000 games', () => {
    let won = 0;
    fc.assert(
      fc.property(gameArbitrary({ size: 20 }), (game) => {
        const network = compile(game);
        const measures = measure(network);
        const rules = rulesOf(game);
        const sat = new SolvabilityBySat(rules);
        expect(measures.solvable).toBe(sat.isSolvable());
        if (!measures.solvable) return;
        won++;
        const mustDo = network.ids.filter((_, i) => measures.mustDo[i] === 1);
        const falls = network.ids.filter(
          (id, i) =>
            network.isStep[i] === 1 && measures.reached[i] === 1 && !sat.isSolvable(rules.nameOf.get(id)),
        );
        expect(mustDo).toEqual(falls);
      }),
      { seed: 1977, numRuns: 1000 },
    );
    // Without enough games that can be won, must-do would not have been tried.
    expect(won).toBeGreaterThan(250);
  });

  it('fewest steps: the optimum of an integer programme', async () => {
    const highs = await loadHighs();
    let chosen = 0;
    for (let seed = 0; seed < 2000; seed++) {
      const game = randomGame(seed, 8 + (seed % 16));
      const network = compile(game);
      const measures = measure(network);
      if (!measures.solvable) continue;
      const fewest = fewestSteps(network, measures);
      const mustDo = measures.mustDo.reduce((sum, mark) => sum + mark, 0);
      // Where all that is needed is forced there is nothing to choose, and a few of those are enough.
      if (fewest.steps === mustDo && seed % 60 !== 0) continue;
      if (fewest.steps > mustDo) chosen++;
      expect(fewest).toEqual({
        steps: fewestByInteger(highs, rulesOf(game)),
        exact: true,
        bound: fewest.steps,
      });
    }
    expect(chosen).toBeGreaterThan(20);
  });
});
