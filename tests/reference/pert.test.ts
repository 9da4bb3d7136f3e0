/**
 * PERT (Malcolm, Roseboom, Clark and Fazar 1959, Application of a Technique for Research and Development Program Evaluation) on
 * the construction project of Hillier and Lieberman, with their published results: mean 44 and variance 9 along the mean critical
 * path, P(T ≤ 47) about 0.84. PERT takes ((high − low)/6)² for the variance of a step. The beta distribution with the same mean and
 * λ = 4 has (mean − low)(high − mean)/7 (Vose 2008, Risk Analysis; from memory): 9.286 along that path, P(T ≤ 47) about 0.838.
 * Both take the path that is longest on the means for the whole project, which makes the end too early and too sure (Fulkerson
 * 1962, Expected Critical Path Lengths in PERT Networks). Simulated, the project ends at 44.3 on average, and by 47 with a chance
 * of about 0.82 (a million runs: 44.33 and 0.816).
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch } from '../../src/engine/simulation/batch.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import { PLAIN } from '../../src/engine/simulation/rules.ts';
import type { Game } from '../../src/game/model.ts';
import { plainGame, simulatePlainly } from './plain-simulation.ts';
import { project, RELIABLE_CONSTRUCTION } from './project.ts';
import { seededChance } from './seeded-chance.ts';

const BELL = 47;
/** Every activity has hands from the start. */
const game: Game = {
  ...project(RELIABLE_CONSTRUCTION),
  head: { lesson: { pupils: RELIABLE_CONSTRUCTION.length, teams: 1, minutes: BELL } },
};
const path = RELIABLE_CONSTRUCTION.filter(({ id }) => 'ABCEFJLN'.includes(id));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Φ(z), by Simpson's rule from 0. */
function normalShare(z: number): number {
  const density = (x: number) => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);
  const step = z / 1000;
  const weights = Array.from({ length: 1001 }, (_, i) => (i === 0 || i === 1000 ? 1 : i % 2 === 1 ? 4 : 2));
  return 0.5 + (step / 3) * sum(weights.map((weight, i) => weight * density(i * step)));
}

describe('PERT on the construction project of Hillier and Lieberman', () => {
  const network = compile(game);
  const mean = (id: string) => network.minutes[network.index.get(id) ?? -1] ?? Number.NaN;

  it('has mean 44 and variance 9 along the mean critical path, and a chance of 0.84', () => {
    expect(sum(path.map(({ id }) => mean(id)))).toBeCloseTo(44, 9);
    const variance = sum(path.map(({ low, high }) => ((high - low) / 6) ** 2));
    expect(variance).toBeCloseTo(9, 9);
    expect(normalShare((BELL - 44) / Math.sqrt(variance))).toBeCloseTo(0.8413, 4);
  });

  it('has variance 9.286 there with beta-PERT, and a chance of 0.838', () => {
    const variance = sum(path.map(({ id, low, high }) => ((mean(id) - low) * (high - mean(id))) / 7));
    expect(variance).toBeCloseTo(65 / 7, 9);
    expect(normalShare((BELL - 44) / Math.sqrt(variance))).toBeCloseTo(0.838, 3);
  });

  it('ends later than its mean critical path when the whole of it is simulated', () => {
    const batch = new Batch(clockOf(game, network), PLAIN);
    batch.run(20_000);
    const { ends, inTime } = batch.result();
    // Standard errors 0.021 and 0.003.
    expect(Math.abs(sum([...ends]) / ends.length - 44.3)).toBeLessThan(0.1);
    expect(Math.abs(inTime - 0.82)).toBeLessThan(0.015);
  });

  it('does so by the plainest simulation and other draws too', () => {
    const { ends, inTime } = simulatePlainly(plainGame(game), seededChance(1959), 5000);
    // Standard errors 0.042 and 0.006.
    expect(Math.abs(sum(ends) / ends.length - 44.3)).toBeLessThan(0.15);
    expect(Math.abs(inTime - 0.82)).toBeLessThan(0.025);
  });
});
