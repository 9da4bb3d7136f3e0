/** The room as trays: what stands by itself beside the spine, with all that lies in it as rows. */
import { rowOf } from '../../../engine/rows.ts';
import type { Assessment } from '../../../findings/assess.ts';
import type { NodeId } from '../../../game/model.ts';
import type { Caption } from '../../../map/layout.ts';
import { byFirstUse } from '../../lists/whereabouts.ts';
import type { Row, Tray } from '../content.ts';

/** In the order of first use. Locks first, in the order of play, then things, then boxes, each by first use. */
export function traysOf(assessment: Assessment): Tray[] {
  const { network, context, measures } = assessment;
  const byUse = byFirstUse(assessment);
  const sorted = (items: Iterable<number>) => [...items].sort(byUse);

  const fill = (rows: Row[], index: number, depth: number): void => {
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
  const groups = new Map<string, { readonly caption: Caption; readonly ids: NodeId[] }>();
  for (const index of sorted(network.ids.keys())) {
    if ((network.parent[index] ?? -1) >= 0) continue;
    const kind = context.kindOf(index);
    const id = context.idOf(index);
    if (kind === 'place' || kind === 'container') {
      const rows: Row[] = [];
      fill(rows, index, 0);
      trays.push({ key: id, rows });
    } else if (kind !== 'puzzle' && kind !== 'fastener') {
      const giver = Array.from(rowOf(network.needs, index)).find((need) => context.kindOf(need) === 'puzzle');
      const caption = giver === undefined ? 'hand' : 'given';
      const key = giver === undefined ? caption : `${caption} ${context.idOf(giver)}`;
      let group = groups.get(key);
      if (!group) {
        group = { caption, ids: [] };
        groups.set(key, group);
        trays.push({ key: `caption ${key}`, rows: groupRows(group.caption, group.ids) });
      }
      group.ids.push(id);
    }
  }
  // The rows of a group are known once all that is in it has been met.
  return trays.map((tray) => {
    const group = groups.get(tray.key.replace(/^caption /, ''));
    return group && tray.key.startsWith('caption ')
      ? { key: tray.key, rows: groupRows(group.caption, group.ids) }
      : tray;
  });
}

function groupRows(caption: Caption, ids: readonly NodeId[]): Row[] {
  return [
    { row: 'head', id: caption, depth: 0, continued: false },
    ...ids.map((id): Row => ({ row: 'thing', id, depth: 0 })),
    { row: 'foot', id: caption, depth: 0, continues: false },
  ];
}

/** Two trays of one: all rows before the given one, and the rest, each with the heads and feet of what is open there. */
export function cutTray({ key, rows }: Tray, before: number): readonly [Tray, Tray] {
  const open: Extract<Row, { row: 'head' }>[] = [];
  for (const row of rows.slice(0, before)) {
    if (row.row === 'head') open.push(row);
    else if (row.row === 'foot') open.pop();
  }
  const feet = [...open].reverse().map(({ id, depth }): Row => ({ row: 'foot', id, depth, continues: true }));
  const heads = open.map(({ id, depth }): Row => ({ row: 'head', id, depth, continued: true }));
  return [
    { key: `${key}<${before}`, rows: [...rows.slice(0, before), ...feet] },
    { key: `${key}>${before}`, rows: [...heads, ...rows.slice(before)] },
  ];
}
