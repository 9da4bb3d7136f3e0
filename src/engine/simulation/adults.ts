/** Adults in the room, and the steps that wait for one: first come, first served; of those that come at the same instant the least word first. */
export class Adults {
  /** Steps of teams, as `team * size + step`, doubled, and 1 more for a hint. */
  readonly waiting: Int32Array;
  length = 0;
  free = 0;
  /** Minutes that teams waited, over all runs. */
  queued = 0;
  readonly #count: number;
  readonly #since: Float64Array;
  readonly #words: Float64Array;

  constructor(count: number, room: number) {
    this.#count = count;
    this.waiting = new Int32Array(room);
    this.#since = new Float64Array(room);
    this.#words = new Float64Array(room);
  }

  clear() {
    this.length = 0;
    this.free = this.#count;
  }

  add(item: number, minute: number, word: number) {
    let at = this.length++;
    for (; at > 0 && this.#since[at - 1] === minute && (this.#words[at - 1] ?? 0) > word; at--)
      this.#move(at - 1, at);
    this.waiting[at] = item;
    this.#since[at] = minute;
    this.#words[at] = word;
  }

  /** The first in the queue, which leaves it; only when there is one. */
  take(): number {
    const first = this.waiting[0] ?? 0;
    this.length--;
    for (let at = 0; at < this.length; at++) this.#move(at + 1, at);
    return first;
  }

  #move(from: number, to: number) {
    this.waiting[to] = this.waiting[from] ?? 0;
    this.#since[to] = this.#since[from] ?? 0;
    this.#words[to] = this.#words[from] ?? 0;
  }
}
