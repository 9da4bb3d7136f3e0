/**
 * Lists of whole numbers, one for each of n owners, in two flat arrays (compressed sparse rows): the list of owner i is
 * `items[starts[i]]` up to but not including `items[starts[i + 1]]`.
 */
export interface Rows {
  readonly starts: Int32Array;
  readonly items: Int32Array;
}

/** Owner and item pairs in the making; there is room for so many. */
export class Pairs {
  readonly #owners: Int32Array;
  readonly #items: Int32Array;
  #length = 0;

  constructor(room: number) {
    this.#owners = new Int32Array(room);
    this.#items = new Int32Array(room);
  }

  add(owner: number, item: number) {
    this.#owners[this.#length] = owner;
    this.#items[this.#length++] = item;
  }

  rows(count: number): Rows {
    return rowsOf(count, this.#owners.subarray(0, this.#length), this.#items.subarray(0, this.#length));
  }
}

/** Rows from pairs; a row keeps the order in which its pairs come. */
export function rowsOf(count: number, owners: Int32Array, items: Int32Array): Rows {
  const starts = new Int32Array(count + 1);
  const pairs = owners.length;
  for (let i = 0; i < pairs; i++) {
    const next = (owners[i] ?? 0) + 1;
    starts[next] = (starts[next] ?? 0) + 1;
  }
  for (let i = 0; i < count; i++) starts[i + 1] = (starts[i + 1] ?? 0) + (starts[i] ?? 0);
  const next = starts.slice(0, count);
  const filled = new Int32Array(pairs);
  for (let i = 0; i < pairs; i++) {
    const owner = owners[i] ?? 0;
    const at = next[owner] ?? 0;
    filled[at] = items[i] ?? 0;
    next[owner] = at + 1;
  }
  return { starts, items: filled };
}

/** The list of one owner, as a view. */
export function rowOf(rows: Rows, owner: number): Int32Array {
  return rows.items.subarray(rows.starts[owner], rows.starts[owner + 1]);
}

/** The same pairs the other way round, for `count` owners. */
export function reversed(rows: Rows, count: number): Rows {
  const owners = new Int32Array(rows.items.length);
  for (let owner = 0; owner + 1 < rows.starts.length; owner++) {
    owners.fill(owner, rows.starts[owner], rows.starts[owner + 1]);
  }
  return rowsOf(count, rows.items, owners);
}
