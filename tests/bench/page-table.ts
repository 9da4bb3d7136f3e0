/** What came of many printed games, as text. */

export interface Printed {
  readonly seed: number;
  readonly nodes: number;
  readonly paper: string;
  readonly pages: number;
  readonly smallest: number;
  /** Smallest type size of a name on the map. */
  readonly names: number;
  readonly crossings: number;
  readonly drawn: number;
  readonly told: number;
  /** Of its faults, one entry each. */
  readonly kinds: readonly string[];
  readonly lines: readonly string[];
  readonly seconds: number;
}

const SHOWN = 12;

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

const rowOf = ({ seed, nodes, paper, pages, names, crossings, drawn, told, seconds }: Printed) =>
  `game ${seed}: ${nodes} nodes, ${paper}, ${pages} pages, names of ${names} pt, ${crossings} crossings, ${drawn} drawn, ${told} told, ${seconds.toFixed(1)} s`;

/** Counts of all faults, then figures of all games, then the smallest games that have faults, or all games. */
export function pageTable(results: readonly Printed[], all: boolean): string[] {
  const kinds = new Map<string, { games: number; faults: number }>();
  for (const { kinds: found } of results) {
    for (const kind of new Set(found)) {
      const count = kinds.get(kind) ?? { games: 0, faults: 0 };
      count.games += 1;
      count.faults += found.filter((one) => one === kind).length;
      kinds.set(kind, count);
    }
  }
  const wrong = results.filter(({ lines }) => lines.length > 0).sort((a, b) => a.nodes - b.nodes);
  const figures = results.filter(({ pages }) => pages > 0);
  const row = (name: string, of: (one: Printed) => number) => {
    const values = figures.map(of);
    const cells = [0, 0.5, 0.9, 1].map((share) => Math.round(quantile(values, share) * 100) / 100);
    return `| ${name} | ${cells.join(' | ')} |`;
  };
  return [
    `${results.length} games, ${wrong.length} with faults`,
    ...[...kinds]
      .sort(([, a], [, b]) => b.games - a.games)
      .map(([kind, { games, faults }]) => `  ${kind}: ${faults} in ${games} games`),
    '',
    '| of each game | least | median | 9 of 10 | most |',
    '|---|---|---|---|---|',
    row('nodes', ({ nodes }) => nodes),
    row('pages of the map', ({ pages }) => pages),
    row('smallest text, pt', ({ smallest }) => smallest),
    row('names on the map, pt', ({ names }) => names),
    row('crossings', ({ crossings }) => crossings),
    row('links drawn', ({ drawn }) => drawn),
    row('links told', ({ told }) => told),
    row('seconds of the processor', ({ seconds }) => seconds),
    '',
    ...(all ? results : wrong.slice(0, SHOWN)).flatMap((one) => [
      rowOf(one),
      ...one.lines.map((line) => `  ${line}`),
    ]),
  ];
}
