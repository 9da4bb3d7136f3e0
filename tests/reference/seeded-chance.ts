/**
 * Chance for the plain simulation that owes nothing to the engine: another generator, and beta draws from two gamma draws
 * (Marsaglia and Tsang 2000, A Simple Method for Generating Gamma Variables, ACM TOMS 26) instead of a quantile.
 */
import quantile from '@stdlib/stats-base-dists-beta-quantile';
import type { Estimate } from '../../src/game/model.ts';
import { seededRandom } from '../random-game.ts';
import type { Chance } from './plain-simulation.ts';

/** Each draw from numbers of its own, so that a run can be repeated with one step changed. */
export function seededChance(seed: number): Chance {
  return chanceBy(seed, betaPert);
}

/** The same with times by the quantiles of a general-purpose statistics library. */
export function quantileChance(seed: number): Chance {
  return chanceBy(seed, (random, { low, likely, high }) => {
    if (low === high) return low;
    const alpha = 1 + (4 * (likely - low)) / (high - low);
    return low + (high - low) * quantile(random(), alpha, 6 - alpha);
  });
}

function chanceBy(seed: number, time: (random: () => number, estimate: Estimate) => number): Chance {
  return {
    draw: (run, { id, estimate }) => {
      const key = [...id].reduce((sum, sign) => Math.imul(sum, 31) + (sign.codePointAt(0) ?? 0), 7);
      return time(seededRandom(mix(mix(seed, run), key)), estimate);
    },
    choose: (run, choice, open) => {
      const random = seededRandom(mix(mix(seed + 1, run), choice));
      const chosen = open[Math.floor(random() * open.length)];
      if (chosen === undefined) throw new RangeError('choose: nothing is open');
      return chosen;
    },
  };
}

/** One seed of two numbers. */
function mix(a: number, b: number): number {
  return Math.floor(seededRandom(Math.imul(a, 0x9e3779b1) ^ b)() * 2 ** 32);
}

/** low + (high − low) · Beta(1 + 4(likely − low)/(high − low), 1 + 4(high − likely)/(high − low)): beta-PERT with λ = 4. */
export function betaPert(random: () => number, { low, likely, high }: Estimate): number {
  if (low === high) return low;
  const a = gamma(random, 1 + (4 * (likely - low)) / (high - low));
  const b = gamma(random, 1 + (4 * (high - likely)) / (high - low));
  return low + ((high - low) * a) / (a + b);
}

/** A gamma draw of a shape of at least 1, scale 1. */
function gamma(random: () => number, shape: number): number {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < x ** 2 / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** A standard normal draw (Box and Muller 1958). */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
