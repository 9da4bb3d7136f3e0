/**
 * The assignment problem: to every row one column of its own, so that the sum of costs is the least.
 * Method: the Hungarian method (Kuhn 1955, Munkres 1957) with potentials, one row after the other along a shortest augmenting path.
 * Cost: rows² times columns. Of several least sums the one that it finds depends on the order of rows and columns alone.
 */

/**
 * The column of each row. Costs are finite; whole numbers are summed without rounding up to 2^53.
 * @param cost of row i in column j
 * @param columns at least as many as rows
 */
export function assign(
  rows: number,
  columns: number,
  cost: (row: number, column: number) => number,
): Int32Array {
  if (columns < rows) throw new RangeError('assign: give at least as many columns as rows');
  // Rows and columns count from 1; column 0 holds the row that is looking for one.
  const rowPrice = new Float64Array(rows + 1);
  const columnPrice = new Float64Array(columns + 1);
  const rowIn = new Int32Array(columns + 1);
  const cameFrom = new Int32Array(columns + 1);
  const costs = new Float64Array(rows * columns);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) costs[row * columns + column] = cost(row, column);
  }
  for (let row = 1; row <= rows; row++) {
    rowIn[0] = row;
    const slack = new Float64Array(columns + 1).fill(Number.POSITIVE_INFINITY);
    const isSeen = new Uint8Array(columns + 1);
    let at = 0;
    do {
      isSeen[at] = 1;
      const from = rowIn[at] ?? 0;
      const offset = (from - 1) * columns - 1;
      const price = rowPrice[from] ?? 0;
      let step = Number.POSITIVE_INFINITY;
      let next = 0;
      for (let column = 1; column <= columns; column++) {
        if (isSeen[column] === 1) continue;
        const reduced = (costs[offset + column] ?? 0) - price - (columnPrice[column] ?? 0);
        if (reduced < (slack[column] ?? 0)) {
          slack[column] = reduced;
          cameFrom[column] = at;
        }
        if ((slack[column] ?? 0) < step) {
          step = slack[column] ?? 0;
          next = column;
        }
      }
      for (let column = 0; column <= columns; column++) {
        if (isSeen[column] === 1) {
          const holder = rowIn[column] ?? 0;
          rowPrice[holder] = (rowPrice[holder] ?? 0) + step;
          columnPrice[column] = (columnPrice[column] ?? 0) - step;
        } else {
          slack[column] = (slack[column] ?? 0) - step;
        }
      }
      at = next;
    } while (rowIn[at] !== 0);
    while (at !== 0) {
      const before = cameFrom[at] ?? 0;
      rowIn[at] = rowIn[before] ?? 0;
      at = before;
    }
  }
  const columnOf = new Int32Array(rows);
  for (let column = 1; column <= columns; column++) {
    const row = rowIn[column] ?? 0;
    if (row > 0) columnOf[row - 1] = column - 1;
  }
  return columnOf;
}
