/**
 * What is drawn in a run. Every word depends on the stream, the run, the team, what it is drawn for and the key of the step, and on nothing that
 * was drawn before: a changed game is compared on like draws. Team 0 draws as the only team of the plain model does.
 */

import { pertAlpha, pertTable, quantileAt } from './beta.ts';
import type { Clock } from './clock.ts';
import { philox } from './philox.ts';

/** What a word is for; beside the team in the second word of the key. */
const TIME = 0;
const CHOICE = 1;
const TURN = 2;
const PURPOSES = 4;

/** Four words come from one counter: of times for four runs, of choices for four choices of a team that follow one another. */
export class Draws {
  readonly #size: number;
  readonly #stream: number;
  readonly #low: Float64Array;
  readonly #high: Float64Array;
  readonly #keys: Uint32Array;
  /** Steps whose time varies, and their quantiles. */
  readonly #varied: Int32Array;
  readonly #tables: readonly Float64Array[];
  readonly #timeWords: Uint32Array;
  readonly #choiceWords: Uint32Array;
  /** By team: the four choices that its words are for; -1 for none in this run. */
  readonly #choiceBlock: Int32Array;
  readonly #spare = new Uint32Array(4);
  readonly #teams: number;
  #fourRuns = -1;
  #run = 0;

  constructor({ network, low, likely, high, keys }: Clock, teams: number, stream: number) {
    const { size } = network;
    this.#size = size;
    this.#teams = teams;
    this.#stream = stream;
    this.#low = low;
    this.#high = high;
    this.#keys = keys;
    const varied: number[] = [];
    const tables: Float64Array[] = [];
    for (let node = 0; node < size; node++) {
      const from = low[node] ?? 0;
      const to = high[node] ?? 0;
      if (!(from < to)) continue;
      varied.push(node);
      tables.push(pertTable(pertAlpha(from, likely[node] ?? 0, to)));
    }
    this.#varied = Int32Array.from(varied);
    this.#tables = tables;
    this.#timeWords = new Uint32Array(4 * teams * varied.length);
    this.#choiceWords = new Uint32Array(4 * teams);
    this.#choiceBlock = new Int32Array(teams);
  }

  /** Begins a run: writes the minutes of each step of each team, `size` entries a team; those of steps that never vary stand already. */
  begin(run: number, minutes: Float64Array) {
    this.#run = run;
    this.#choiceBlock.fill(-1);
    const low = this.#low;
    const high = this.#high;
    const keys = this.#keys;
    const varied = this.#varied;
    const words = this.#timeWords;
    const count = varied.length;
    if (this.#fourRuns !== run >>> 2) {
      this.#fourRuns = run >>> 2;
      for (let team = 0; team < this.#teams; team++) {
        for (let i = 0; i < count; i++) {
          const key = 2 * (varied[i] ?? 0);
          philox(
            run >>> 2,
            0,
            keys[key] ?? 0,
            keys[key + 1] ?? 0,
            this.#stream,
            PURPOSES * team + TIME,
            words,
            4 * (team * count + i),
          );
        }
      }
    }
    for (let team = 0; team < this.#teams; team++) {
      for (let i = 0; i < count; i++) {
        const node = varied[i] ?? 0;
        const table = this.#tables[i];
        if (table === undefined) continue;
        const from = low[node] ?? 0;
        const word = words[4 * (team * count + i) + (run & 3)] ?? 0;
        minutes[team * this.#size + node] = from + ((high[node] ?? 0) - from) * quantileAt(table, word);
      }
    }
  }

  /**
   * The word by which a team's choice of that number (from 0) ranks a step: the least is taken. A word of the choice, mixed with the key of the
   * step: most of a run's words are of this kind, and mixing takes a small part of the time of the generator's ten rounds.
   */
  choice(team: number, number: number, node: number): number {
    const words = this.#choiceWords;
    if (this.#choiceBlock[team] !== number >>> 2) {
      this.#choiceBlock[team] = number >>> 2;
      philox(this.#run, number >>> 2, 0, 0, this.#stream, PURPOSES * team + CHOICE, words, 4 * team);
    }
    const keys = this.#keys;
    const word = mixed((words[4 * team + (number & 3)] ?? 0) ^ (keys[2 * node] ?? 0));
    // Where two steps share the first word of their keys, the second decides, either way alike.
    return (word ^ (keys[2 * node + 1] ?? 0)) >>> 0;
  }

  /** The word that ranks teams which come at the same instant, by a number of the instant and, if it is about a step, that step. */
  turn(team: number, number: number, node: number): number {
    const key = 2 * node;
    philox(
      this.#run,
      number,
      this.#keys[key] ?? 0,
      this.#keys[key + 1] ?? 0,
      this.#stream,
      PURPOSES * team + TURN,
      this.#spare,
    );
    return this.#spare[0] ?? 0;
  }
}

/** A word of which every bit depends on every bit of the one given (the finalizer of MurmurHash3, Appleby 2011). */
function mixed(word: number): number {
  let x = word;
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return x ^ (x >>> 16);
}
