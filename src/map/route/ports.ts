/**
 * Heights at which lines leave and arrive. What leaves a thing leaves at the middle of its row; at the ends of a puzzle each line
 * has a port of its own, in the order of where the lines come from, as near to straight as that allows (least squares in a chain).
 */
import { isHolder, type LinkId } from '../../game/model.ts';
import { chain } from '../../spine/isotonic.ts';
import type { Side } from '../layout.ts';
import { PORT_GAP } from '../sizes.ts';
import type { End, LinkEnds } from './ends.ts';
import type { Way } from './path.ts';

export interface Planned extends LinkEnds {
  readonly way: Way;
}

/** Port heights of the two ends of a link. */
export interface Ports {
  readonly from: number;
  readonly to: number;
}

interface Port {
  /** Those that leave here as one line; else one. */
  readonly links: LinkId[];
  readonly at: 'from' | 'to';
  /** The line's own height at the other end; of several that of the first. */
  readonly other: number;
}

/** How far a port may be from the edges of what it is on. */
const INSET = 9;
const PLATE_INSET = 7;
/** A line that can be straight moves the others aside. */
const STRAIGHT_WEIGHT = 1000;

function portRange(end: End): { lo: number; hi: number } {
  const inset = end.kind === 'puzzle' ? INSET : PLATE_INSET;
  if (isHolder(end)) return { lo: end.y - 12, hi: end.y + 24 };
  return { lo: end.rect.y + inset, hi: end.rect.y + end.rect.height - inset };
}

const sideOf = (way: Way, at: 'from' | 'to'): Side | undefined =>
  way.way === 'stacked' ? undefined : at === 'from' ? way.fromSide : way.toSide;

/** Lines that leave the same thing on the same side leave as one. */
const sharesPort = (end: End, at: 'from' | 'to') => at === 'from' && end.kind !== 'puzzle';

function spread(end: End, ports: readonly Port[]): number[] {
  const { lo, hi } = portRange(end);
  const count = ports.length;
  if (count === 1 && end.kind !== 'puzzle') return [end.y];
  const gap = count > 1 ? Math.min(PORT_GAP, (hi - lo) / (count - 1)) : 0;
  const straight = ports.map(({ other }) => end.kind === 'puzzle' && lo <= other && other <= hi);
  const targets = ports.map(({ other }, i) => {
    const target = straight[i] ? other : end.y + (i - (count - 1) / 2) * gap;
    return Math.min(hi - gap * (count - 1 - i), Math.max(lo + gap * i, target));
  });
  return chain(
    targets,
    targets.map(() => gap),
    straight.map((isStraight) => (isStraight ? STRAIGHT_WEIGHT : 1)),
  ).map(Math.round);
}

/** A line that misses its port by no more than this leaves a row or reaches a plate a little off its middle, and is straight. */
const NUDGE = 7;

function straighten(planned: readonly Planned[], heights: Map<LinkId, { from: number; to: number }>): void {
  const sharers = new Map<string, number>();
  const keyOf = (link: Planned, at: 'from' | 'to') => `${sideOf(link.way, at)} ${link[at].shown}`;
  for (const link of planned) {
    for (const at of ['from', 'to'] as const) {
      const key = keyOf(link, at);
      sharers.set(key, (sharers.get(key) ?? 0) + 1);
    }
  }
  for (const link of planned) {
    const height = heights.get(link.id);
    if (!height || link.way.way !== 'one' || link.way.fromSide === link.way.toSide) continue;
    if (height.from === height.to || Math.abs(height.from - height.to) > NUDGE) continue;
    const canMove = (at: 'from' | 'to') => link[at].kind !== 'puzzle' && sharers.get(keyOf(link, at)) === 1;
    if (canMove('from')) height.from = height.to;
    else if (canMove('to')) height.to = height.from;
  }
}

/** Port heights of every link: spread over each side of each thing, then a little straighter where that costs nothing. */
export function portsOf(planned: readonly Planned[]): ReadonlyMap<LinkId, Ports> {
  const heights = new Map<LinkId, { from: number; to: number }>();
  for (const { id, from, to } of planned) heights.set(id, { from: from.y, to: to.y });
  const groups = new Map<string, { end: End; ports: Port[] }>();
  for (const at of ['from', 'to'] as const) {
    for (const link of planned) {
      const end = link[at];
      const other = link[at === 'from' ? 'to' : 'from'];
      const side = sideOf(link.way, at);
      if (side === undefined) continue;
      const key = `${side} ${end.shown}`;
      const ports = groups.get(key)?.ports ?? [];
      groups.set(key, { end, ports });
      const shared = sharesPort(end, at) ? ports.find((port) => port.at === at) : undefined;
      if (shared) shared.links.push(link.id);
      else ports.push({ links: [link.id], at, other: other.y });
    }
  }
  for (const { end, ports } of groups.values()) {
    ports.sort((a, b) => a.other - b.other || ((a.links[0] ?? '') < (b.links[0] ?? '') ? -1 : 1));
    const ys = spread(end, ports);
    for (const [i, { links, at }] of ports.entries()) {
      for (const link of links) {
        const height = heights.get(link);
        if (height) height[at] = ys[i] ?? end.y;
      }
    }
  }
  straighten(planned, heights);
  return heights;
}
