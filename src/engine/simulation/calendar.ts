/** What is to come, the earliest first: a binary heap of minutes and what happens then, in arrays that are made once. */
export class Calendar {
  readonly #minutes: Float64Array;
  readonly #items: Int32Array;
  #length = 0;

  constructor(room: number) {
    this.#minutes = new Float64Array(room);
    this.#items = new Int32Array(room);
  }

  clear() {
    this.#length = 0;
  }

  /** Infinity when nothing is to come. */
  get earliest(): number {
    return this.#length > 0 ? (this.#minutes[0] ?? 0) : Number.POSITIVE_INFINITY;
  }

  add(minute: number, item: number) {
    const minutes = this.#minutes;
    const items = this.#items;
    let at = this.#length++;
    while (at > 0) {
      const above = (at - 1) >> 1;
      const other = minutes[above] ?? 0;
      if (other <= minute) break;
      minutes[at] = other;
      items[at] = items[above] ?? 0;
      at = above;
    }
    minutes[at] = minute;
    items[at] = item;
  }

  /** Takes away the earliest and returns what it is; only when there is one. */
  take(): number {
    const minutes = this.#minutes;
    const items = this.#items;
    const first = items[0] ?? 0;
    const length = --this.#length;
    const minute = minutes[length] ?? 0;
    const item = items[length] ?? 0;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= length) break;
      if (below + 1 < length && (minutes[below + 1] ?? 0) < (minutes[below] ?? 0)) below++;
      const other = minutes[below] ?? 0;
      if (other >= minute) break;
      minutes[at] = other;
      items[at] = items[below] ?? 0;
      at = below;
    }
    minutes[at] = minute;
    items[at] = item;
    return first;
  }
}
