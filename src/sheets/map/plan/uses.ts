/** Which bars use which trays: what decides where trays go when the map is cut. */
import type { NodeId } from '../../../game/model.ts';
import type { MapContent, Tray } from '../content.ts';
import { nodesOf } from './part.ts';

export interface Uses {
  /** For each tray, the bars that its rows are linked to, by their index, once for each link. */
  readonly bars: readonly (readonly number[])[];
  /** For each tray, the trays that its rows are linked to, once for each link. */
  readonly trays: readonly (readonly number[])[];
  /** For each place between bars (before the bar of that index), how many links span it. */
  readonly across: readonly number[];
}

export function usesOf({ bars, links }: MapContent, trays: readonly Tray[]): Uses {
  const barAt = new Map(bars.map((id, i) => [id, i]));
  const trayAt = new Map<NodeId, number>();
  for (const [i, tray] of trays.entries()) for (const id of nodesOf(tray)) trayAt.set(id, i);
  const barUses = trays.map((): number[] => []);
  const trayUses = trays.map((): number[] => []);
  for (const { from, to } of links) {
    const [fromTray, toTray] = [trayAt.get(from), trayAt.get(to)];
    const [fromBar, toBar] = [barAt.get(from), barAt.get(to)];
    if (fromTray !== undefined && toBar !== undefined) barUses[fromTray]?.push(toBar);
    if (toTray !== undefined && fromBar !== undefined) barUses[toTray]?.push(fromBar);
    if (fromTray !== undefined && toTray !== undefined && fromTray !== toTray) {
      trayUses[fromTray]?.push(toTray);
      trayUses[toTray]?.push(fromTray);
    }
  }
  for (const list of barUses) list.sort((a, b) => a - b);
  // A link spans what lies between its bar and the bars that use the same tray most: the one in the middle stands for those.
  const change = new Array<number>(bars.length + 1).fill(0);
  const span = (a: number, b: number) => {
    change[Math.min(a, b) + 1] = (change[Math.min(a, b) + 1] ?? 0) + 1;
    change[Math.max(a, b) + 1] = (change[Math.max(a, b) + 1] ?? 0) - 1;
  };
  for (const list of barUses) {
    const middle = list[Math.floor((list.length - 1) / 2)];
    if (middle !== undefined) for (const bar of list) if (bar !== middle) span(middle, bar);
  }
  for (const { from, to } of links) {
    const [a, b] = [barAt.get(from), barAt.get(to)];
    if (a !== undefined && b !== undefined && a !== b) span(a, b);
  }
  let sum = 0;
  const across = bars.map((_, i) => {
    sum += change[i] ?? 0;
    return sum;
  });
  return { bars: barUses, trays: trayUses, across };
}
