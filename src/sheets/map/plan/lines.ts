/** Lines of a part at given heights: nets on tracks in both channels, and arrows from a bar to the next. */

import { byCodePoint } from '../../../game/compare.ts';
import type { LinkId } from '../../../game/model.ts';
import type { Side } from '../../../map/layout.ts';
import type { PageLink } from '../content.ts';
import { ENDS_APART } from '../measured.ts';
import type { PlannedLine } from '../plan.ts';
import type { Measured } from './blocks.ts';
import type { Channel, Geometry } from './geometry.ts';
import { LEVEL, type Net, netsOf } from './nets.ts';
import type { Part } from './part.ts';
import { type Tracked, tracksOf } from './tracks.ts';

/** Between tracks. */
const LEAST = 5;
const MOST = 8;
/** Room for an arrowhead, and for the bend before it, at either wall. */
const ARROW = 10;

export interface Lines {
  readonly lines: readonly PlannedLine[];
  /** The link that has to be told before these lines can be drawn; undefined when they can. */
  readonly worst: LinkId | undefined;
}

interface Heights {
  readonly part: Part;
  readonly measured: Measured;
  readonly drawn: readonly PageLink[];
  readonly y: Float64Array;
  readonly sides: ReadonlyMap<number, Side>;
}

/** Crossed most; the longest of those; ties by id. */
function worstOf(
  channels: readonly { readonly nets: readonly Net[]; readonly tracked: Tracked }[],
): LinkId | undefined {
  let worst: { id: LinkId; count: number; length: number } | undefined;
  for (const { nets, tracked } of channels) {
    for (const [i, net] of nets.entries()) {
      for (const [b, { link, y }] of net.branches.entries()) {
        const count = tracked.trouble[i]?.[b] ?? 0;
        const length = Math.abs(y - net.entry);
        const order = worst
          ? count - worst.count || length - worst.length || byCodePoint(worst.id, link.id)
          : 1;
        if (order > 0) worst = { id: link.id, count, length };
      }
    }
  }
  return worst?.id;
}

/** Nets that meet one bar so close to each other that they look like one line: the bar has no room for both. */
function cramped(nets: readonly Net[]): Net[] {
  return nets.filter((net) =>
    nets.some(
      (other) =>
        other !== net && other.bar === net.bar && Math.abs(other.entry - net.entry) < ENDS_APART - 2 * LEVEL,
    ),
  );
}

function longestOf(nets: readonly Net[]): LinkId | undefined {
  const branches = nets.flatMap(({ entry, branches: of }) =>
    of.map(({ link, y }) => ({ id: link.id, length: Math.abs(y - entry) })),
  );
  branches.sort((a, b) => b.length - a.length || byCodePoint(a.id, b.id));
  return branches[0]?.id;
}

function pointsOf(net: Net, y: number, track: number, { tray, bar }: Channel) {
  const there = [{ x: tray, y }];
  const here = [{ x: bar, y: net.entry }];
  const bend =
    Math.abs(y - net.entry) < LEVEL
      ? []
      : [
          { x: track, y },
          { x: track, y: net.entry },
        ];
  return net.leaves ? [...here, ...bend.reverse(), ...there] : [...there, ...bend, ...here];
}

function linesOf(nets: readonly Net[], tracked: Tracked, channel: Channel, name: string): PlannedLine[] {
  const towards = channel.tray < channel.bar ? -1 : 1;
  const room = Math.abs(channel.bar - channel.tray) - 2 * ARROW;
  const step = Math.max(LEAST, Math.min(MOST, room / Math.max(1, tracked.depth - 1)));
  return nets.flatMap((net, i) => {
    const x = channel.bar + towards * (ARROW + step * (tracked.tracks[i] ?? 0));
    return net.branches.map(({ link, y }) => ({
      net: `${name} ${net.bar} ${net.leaves ? 'out' : 'in'}`,
      links: [link.id],
      from: link.from,
      to: link.to,
      points: pointsOf(net, y, x, channel),
    }));
  });
}

function arrows({ part, measured, drawn, y }: Heights, { bar, metrics }: Geometry): PlannedLine[] {
  const x = bar + metrics.barWidth / 2;
  return drawn.flatMap(({ id, from, to }): PlannedLine[] => {
    const a = measured.ends.get(from)?.block ?? Number.POSITIVE_INFINITY;
    const b = measured.ends.get(to)?.block ?? Number.POSITIVE_INFINITY;
    if (a >= part.bars.length || b >= part.bars.length) return [];
    const start = { x, y: (y[a] ?? 0) + (measured.heights[a] ?? 0) };
    return [{ net: `next ${a}`, links: [id], from, to, points: [start, { x, y: y[b] ?? 0 }] }];
  });
}

export function draw(heights: Heights, geometry: Geometry): Lines {
  const { part, measured, drawn, y, sides } = heights;
  const channels = (['left', 'right'] as const).map((side) => {
    const nets = netsOf(part, measured, drawn, y, (block) => sides.get(block) === side);
    return { side, nets, tracked: tracksOf(nets), channel: geometry.channels[side] };
  });
  const narrow = channels.filter(
    ({ tracked, channel }) => LEAST * (tracked.depth - 1) > Math.abs(channel.bar - channel.tray) - 2 * ARROW,
  );
  const clash = channels.filter(({ tracked }) => tracked.clashes > 0);
  const crossings = channels.reduce((sum, { tracked }) => sum + tracked.crossings, 0);
  const wrong =
    clash.length > 0 ? clash : narrow.length > 0 ? narrow : crossings > part.area.crossings ? channels : [];
  return {
    lines: [
      ...channels.flatMap(({ side, nets, tracked, channel }) => linesOf(nets, tracked, channel, side)),
      ...arrows(heights, geometry),
    ],
    worst:
      longestOf(channels.flatMap(({ nets }) => cramped(nets))) ??
      (wrong.length > 0 ? worstOf(wrong) : undefined),
  };
}
