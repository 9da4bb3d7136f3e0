/** The room as trays: what stands by itself beside the spine, with all that lies in it as rows. */
import { giversOf } from '../../../engine/handed-over.ts';
import { rowOf } from '../../../engine/rows.ts';
import type { Assessment } from '../../../findings/assess.ts';
import type { NodeId } from '../../../game/model.ts';
import type { Caption } from '../../../map/layout.ts';
import { byFirstUse } from '../../first-use.ts';
import { isOpening, type Opening, type Tray, type TrayRow } from '../content.ts';

/** In the order of first use. Locks first, in the order of play, then things, then boxes, each by first use. */
export function traysOf(assessment: Assessment): Tray[] {
  const { network, context, measures } = assessment;
  const byUse = byFirstUse(assessment);
  const sorted = (items: Iterable<number>) => [...items].sort(byUse);

  const fill = (rows: TrayRow[], index: number, depth: number): void => {
    const id = context.idOf(index);
    rows.push({ row: 'head', id, depth, continued: false });
    const locks = [...rowOf(network.fasteners, index)].sort((a, b) => rank(a) - rank(b) || a - b);
    for (const lock of locks) rows.push({ row: 'lock', id: context.idOf(lock), depth });
    const inside = sorted(rowOf(network.contents, index));
    for (const thing of inside) {
      if (context.kindOf(thing) !== 'container') rows.push({ row: 'thing', id: context.idOf(thing), depth });
    }
    for (const box of inside) if (context.kindOf(box) === 'container') fill(rows, box, depth + 1);
    rows.push({ row: 'foot', id, depth, continues: false });
  };
  const rank = (lock: number) => measures.number[lock] || Number.POSITIVE_INFINITY;

  const trays: Tray[] = [];
  const groups = new Map<string, Group>();
  for (const index of sorted(network.ids.keys())) {
    if ((network.parent[index] ?? -1) >= 0) continue;
    const kind = context.kindOf(index);
    const id = context.idOf(index);
    if (kind === 'place' || kind === 'container') {
      const rows: TrayRow[] = [];
      fill(rows, index, 0);
      trays.push({ key: `node ${id}`, rows });
    } else if (kind !== 'puzzle' && kind !== 'fastener') {
      const [giver] = giversOf(network, index);
      const isTimed = giver === undefined && (network.atMinute[index] ?? 0) > 0;
      const key = giver !== undefined ? `given ${context.idOf(giver)}` : isTimed ? 'timed' : 'hand';
      let group = groups.get(key);
      if (!group) {
        group = groupOf(key === 'hand' ? 'hand' : 'given');
        groups.set(key, group);
        trays.push({ key, rows: group.rows });
      }
      group.add(id);
    }
  }
  return trays;
}

interface Group {
  readonly rows: readonly TrayRow[];
  readonly add: (id: NodeId) => void;
}

function groupOf(caption: Caption): Group {
  const rows: TrayRow[] = [
    { row: 'caption', caption, depth: 0, continued: false },
    { row: 'foot', id: undefined, depth: 0, continues: false },
  ];
  return { rows, add: (id) => rows.splice(-1, 0, { row: 'thing', id, depth: 0 }) };
}

/** Two trays of one: all rows before the given one, and the rest, each with the heads and feet of what is open there. */
export function cutTray(
  { key, rows, cutFrom = { whole: key, before: 0 } }: Tray,
  before: number,
): readonly [Tray, Tray] {
  const above = rows.slice(0, before);
  const open: Opening[] = [];
  for (const row of above) {
    if (isOpening(row)) open.push(row);
    else if (row.row === 'foot') open.pop();
  }
  const feet = open.map((row): TrayRow => {
    const id = row.row === 'head' ? row.id : undefined;
    return { row: 'foot', id, depth: row.depth, continues: true };
  });
  const heads = open.map((row): TrayRow => ({ ...row, continued: true }));
  const { whole, before: start } = cutFrom;
  return [
    partOf(whole, start, [...above, ...feet.reverse()]),
    partOf(whole, start + above.filter(isOfWhole).length, [...heads, ...rows.slice(before)]),
  ];
}

/** Not made by a cut. */
function isOfWhole(row: TrayRow): boolean {
  return row.row === 'foot' ? !row.continues : !(isOpening(row) && row.continued);
}

/** A tray may be cut at different rows on different plans: its parts are told apart by where they begin and end. */
function partOf(whole: string, before: number, rows: readonly TrayRow[]): Tray {
  const end = before + rows.filter(isOfWhole).length;
  return { key: `${before}-${end} ${whole}`, rows, cutFrom: { whole, before } };
}
