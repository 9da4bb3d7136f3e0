/** How much room bars and trays will take, before it is known what is told: what a cut of the map is judged by. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import type { MapContent, Tellings, Told, Tray } from '../content.ts';
import type { Metrics } from '../measured.ts';
import { BAR_GAP, TRAY_GAP } from './blocks.ts';
import { nodesOf } from './part.ts';
import type { Uses } from './uses.ts';

export interface Loads {
  /** For each bar, its height with the space below it. */
  readonly bars: readonly number[];
  /** For each bar, the heights of the trays that it uses, shared among all that use them. */
  readonly beside: readonly number[];
}

/** What is told wherever everything stands: what joins two trays, or a bar with another that is not the next. */
export function toldAmongTrays({ bars, links }: MapContent, trays: readonly Tray[]): Tellings {
  const inTrays = new Set(trays.flatMap((tray) => [...nodesOf(tray)]));
  const nextOf = new Map(bars.map((id, i) => [id, bars[i + 1]]));
  const told = new Map<NodeId, Told[]>();
  const tell = (at: NodeId, link: LinkId, other: NodeId, otherEnd: 'from' | 'to') =>
    told.set(at, [...(told.get(at) ?? []), { link, other, otherEnd }]);
  for (const { id, from, to } of links) {
    if (inTrays.has(from) !== inTrays.has(to) || nextOf.get(from) === to) continue;
    tell(from, id, to, 'to');
    tell(to, id, from, 'from');
  }
  return told;
}

/** A bar so many bars away from the middle of those that use a tray will mostly be in another part. */
const FAR = 6;

/** What is told among trays, and what will be when the map is cut: for bars alone, since there it takes the most room. */
function likelyTold(content: MapContent, trays: readonly Tray[], uses: Uses): Tellings {
  const barAt = new Map(content.bars.map((id, i) => [id, i]));
  const told = new Map<NodeId, Told[]>();
  for (const [at, all] of toldAmongTrays(content, trays)) {
    const bar = barAt.get(at);
    const isFar = ({ other }: Told) => Math.abs((barAt.get(other) ?? bar ?? 0) - (bar ?? 0)) > FAR;
    told.set(
      at,
      bar === undefined
        ? [...all]
        : all.map((one) => (isFar(one) ? { ...one, elsewhere: { page: 99 } } : one)),
    );
  }
  const trayAt = new Map(
    trays.flatMap((tray, i) => [...nodesOf(tray)].map((id): [NodeId, number] => [id, i])),
  );
  const tell = (at: NodeId, link: LinkId, other: NodeId, otherEnd: 'from' | 'to') => {
    const bar = barAt.get(at);
    const users = uses.bars[trayAt.get(other) ?? -1];
    const middle = users?.[Math.floor((users.length - 1) / 2)];
    if (bar === undefined || middle === undefined || Math.abs(bar - middle) <= FAR) return;
    told.set(at, [...(told.get(at) ?? []), { link, other, otherEnd, elsewhere: { page: 99 } }]);
  };
  for (const { id, from, to } of content.links) {
    tell(from, id, to, 'to');
    tell(to, id, from, 'from');
  }
  return told;
}

export function loadsOf(content: MapContent, trays: readonly Tray[], uses: Uses, metrics: Metrics): Loads {
  const { bars } = content;
  const told = likelyTold(content, trays, uses);
  const beside = bars.map(() => 0);
  for (const [i, tray] of trays.entries()) {
    const users = uses.bars[i] ?? [];
    const height = content.measureTray(tray, metrics, told).height + TRAY_GAP * metrics.size;
    for (const bar of users) beside[bar] = (beside[bar] ?? 0) + height / users.length;
  }
  const heights = bars.map((id) => content.measureBar(id, metrics, told).height + BAR_GAP * metrics.size);
  return { bars: heights, beside };
}
