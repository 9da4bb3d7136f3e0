import type { Problem } from './problem.ts';

/** So many problems are told; the rest are counted. */
export const MAX_PROBLEMS = 50;

/** A file with more problems than this is looked at no further: nobody mends it by hand, and junk must not hold the page up. */
const ENOUGH = 10_000;

/** Collects the first problems and counts the others, which are then never put together. */
export class ProblemList {
  readonly #listed: Problem[] = [];
  #count = 0;

  add(make: () => Problem): void {
    if (this.#count < MAX_PROBLEMS) this.#listed.push(make());
    this.#count++;
  }

  get listed(): readonly Problem[] {
    return this.#listed;
  }

  /** How many there are beyond those listed. */
  get more(): number {
    return this.#count - this.#listed.length;
  }

  get isEmpty(): boolean {
    return this.#count === 0;
  }

  get isEnough(): boolean {
    return this.#count > ENOUGH;
  }
}
