/**
 * Solvability asked of a satisfiability solver (logic-solver, which is MiniSat: Eén and Sörensson 2003).
 * Rules without negation have a least model, and something is in it exactly when the rules together with its denial cannot be
 * satisfied (van Emden and Kowalski 1976). That is the least fixed point, rings included: a ring may be denied as a whole.
 */
import Logic, { type Formula, type Solver } from 'logic-solver';
import type { Rules } from './rules.ts';

/** A solver holds 16 MB, so games share one, under names of their own, for a while; questions about one do not touch another. */
const GAMES_PER_SOLVER = 20;
let games = 0;
let shared = new Logic.Solver();

function aSolver(): Solver {
  if (games++ % GAMES_PER_SOLVER === 0) shared = new Logic.Solver();
  return shared;
}

export class SolvabilityBySat {
  readonly #solver: Solver;
  readonly #game: Rules;
  readonly #prefix: string;

  constructor(game: Rules) {
    this.#solver = aSolver();
    this.#game = game;
    this.#prefix = `g${games}_`;
    for (const [i, { head, all, some, k }] of game.rules.entries()) {
      const held = this.#name(`never_${head}`);
      for (const chosen of subsets(some, k)) {
        const body = [...all, ...chosen].map((name) => Logic.not(this.#name(name)));
        this.#solver.require(Logic.or(...body, this.#name(head), held));
      }
      // Only the event whose number is assumed may be held back.
      for (const bit of this.#numbered(i + 1)) this.#solver.require(Logic.or(Logic.not(held), bit));
    }
  }

  #name(name: string): string {
    return this.#prefix + name;
  }

  /** Every prize is reached, also if this step never is. */
  isSolvable(never?: string): boolean {
    const { rules, prizes } = this.#game;
    if (prizes.length === 0) return false;
    const number = rules.findIndex(({ head }) => head === never) + 1;
    const denied = Logic.or(...prizes.map((prize) => Logic.not(this.#name(prize))));
    return this.#solver.solveAssuming(Logic.and(...this.#numbered(number), denied)) === null;
  }

  /** A number as the signs of variables, one for each binary digit. */
  #numbered(number: number): Formula[] {
    const digits = Math.ceil(Math.log2(this.#game.rules.length + 1));
    return Array.from({ length: digits }, (_, i) =>
      (number >> i) & 1 ? `digit_${i}` : Logic.not(`digit_${i}`),
    );
  }
}

/** All choices of k of a list; one empty choice for 0, none when there are too few. */
export function subsets<T>(list: readonly T[], k: number): T[][] {
  if (k === 0) return [[]];
  return list.flatMap((first, i) => subsets(list.slice(i + 1), k - 1).map((rest) => [first, ...rest]));
}
