/** Contents of a map for tests of its plan: rows of fixed height by the size of the type; what is told adds lines. */
import type { LinkId, NodeId } from '../../../src/game/model.ts';
import { cutTray } from '../../../src/sheets/map/content/trays.ts';
import { isOwnRow, type MapContent, type PageLink, type TrayRow } from '../../../src/sheets/map/content.ts';

export interface Box {
  readonly id: NodeId;
  readonly locks?: readonly NodeId[];
  readonly things?: readonly NodeId[];
  readonly boxes?: readonly Box[];
}

function rowsOf(box: Box, depth: number): TrayRow[] {
  return [
    { row: 'head', id: box.id, depth, continued: false },
    ...(box.locks ?? []).map((id): TrayRow => ({ row: 'lock', id, depth })),
    ...(box.things ?? []).map((id): TrayRow => ({ row: 'thing', id, depth })),
    ...(box.boxes ?? []).flatMap((inner) => rowsOf(inner, depth + 1)),
    { row: 'foot', id: box.id, depth, continues: false },
  ];
}

export interface Sketch {
  readonly bars: readonly NodeId[];
  readonly trays: readonly Box[];
  readonly pairs: readonly (readonly [NodeId, NodeId])[];
  /** Lines of the name, by node; 1 where it is left out. */
  readonly lines?: ReadonlyMap<NodeId, number>;
  /** Steps with a rescue line. */
  readonly rescued?: readonly NodeId[];
}

export function contentOf({ bars, trays, pairs, lines, rescued = [] }: Sketch): MapContent {
  const links = pairs.map(([from, to], i): PageLink => ({ id: `l${i}` as LinkId, from, to }));
  const linesAt = (id: NodeId) => lines?.get(id) ?? 1;
  return {
    bars,
    trays: trays.map((box) => ({ key: box.id, rows: rowsOf(box, 0) })),
    links,
    sides: { left: [], right: [] },
    numbers: new Map(bars.map((id, i) => [id, i + 1])),
    notes: rescued.map((id) => ({ key: id, steps: [id] })),
    measureBar: (id, { size }, told) => {
      const count = linesAt(id) + 1 + 1.7 * (told.get(id)?.length ?? 0);
      const height = 1.25 * size * count + 0.9 * size;
      return {
        height,
        ends: new Map([[id, size]]),
        entries: [0.6 * size, height / 2, height - 0.6 * size],
      };
    },
    measureTray: ({ rows }, { size }, told) => {
      let y = 0;
      const tops: number[] = [];
      const ends = new Map<string, number>();
      for (const row of rows) {
        tops.push(y);
        if (row.row === 'foot') {
          y += 0.5 * size;
          continue;
        }
        if (row.row === 'caption') throw new Error('No sketch has a caption.');
        const references = told.get(row.id)?.length ?? 0;
        const count = linesAt(row.id) + Math.max(0, references - 1);
        if (isOwnRow(row)) ends.set(row.id, y + 0.9 * size);
        y += 1.25 * size * count + (row.row === 'thing' ? 0.2 : 0.5) * size;
      }
      return { height: y, ends, tops: [...tops, y] };
    },
    leastBarWidth: (_, size) => 6 * size,
    measureNote: (_, { size }) => 3 * 1.2 * Math.max(7.5, size - 1),
    cut: cutTray,
  };
}
