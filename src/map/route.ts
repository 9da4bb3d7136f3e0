/** Lines at right angles between the things on the map. */
import type { GameLink, LinkId } from '../game/model.ts';
import type { MapLayout, Route } from './layout.ts';
import { linkEnds, obstacles } from './route/ends.ts';
import { edgeX, matOf, type Range, wayBetween } from './route/path.ts';
import { type Planned, type Ports, portsOf } from './route/ports.ts';
import { assignTracks, type Level, type Stub, type Track } from './route/tracks.ts';
import { same } from './same.ts';

interface Drawn extends Planned {
  readonly ports: Ports;
}

/** Ways with sides chosen for ports in the middle, then the same sides once more for the ports that they got. */
function plan(layout: MapLayout, links: Iterable<GameLink>): Drawn[] {
  const mat = matOf(obstacles(layout));
  const first = linkEnds(layout, links).map((link) => ({
    ...link,
    way: wayBetween(link.from, link.to, mat),
  }));
  const ports = portsOf(first);
  return first.map((link) => {
    const { from, to, way } = link;
    const port = ports.get(link.id) ?? { from: from.y, to: to.y };
    if (way.way === 'stacked') return { ...link, ports: port };
    const at = { from: { ...from, y: port.from }, to: { ...to, y: port.to } };
    return { ...link, ports: port, way: wayBetween(at.from, at.to, mat, [way.fromSide], [way.toSide]) };
  });
}

const meet = (a: Range, b: Range): Range => ({ lo: Math.max(a.lo, b.lo), hi: Math.min(a.hi, b.hi) });

/** Upright runs while they are gathered: those into one puzzle on one side become one. */
interface Gathering {
  readonly tracks: { x: Range; top: number; bottom: number; stubs: Stub[] }[];
  readonly shared: Map<string, number[]>;
  readonly levels: Level[];
}

function addTrack(
  gathering: Gathering,
  shareKey: string | undefined,
  x: Range,
  ys: readonly [number, number],
  stubs: readonly Stub[],
): number {
  const top = Math.min(...ys);
  const bottom = Math.max(...ys);
  const { tracks, shared } = gathering;
  const candidates = shareKey === undefined ? [] : (shared.get(shareKey) ?? []);
  for (const i of candidates) {
    const track = tracks[i];
    const both = track && meet(track.x, x);
    if (!track || !both || both.hi - both.lo < 8) continue;
    track.x = both;
    track.top = Math.min(track.top, top);
    track.bottom = Math.max(track.bottom, bottom);
    track.stubs.push(...stubs);
    return i;
  }
  tracks.push({ x, top, bottom, stubs: [...stubs] });
  const index = tracks.length - 1;
  if (shareKey !== undefined) shared.set(shareKey, [...candidates, index]);
  return index;
}

/** Levels in the middle of long ways: each in a free place of its gap, apart from those before it. */
function middleLevels(drawn: readonly Drawn[]): ReadonlyMap<LinkId, number> {
  const taken: { y: number; x: Range }[] = [];
  const heights = new Map<LinkId, number>();
  for (const { id, way } of drawn) {
    if (way.way !== 'two') continue;
    const x = { lo: Math.min(way.x1.lo, way.x2.lo), hi: Math.max(way.x1.hi, way.x2.hi) };
    const centre = Math.round((way.y.lo + way.y.hi) / 2);
    let y = centre;
    for (let i = 1; i < 12; i++) {
      const isFree = taken.every(
        (other) => Math.abs(other.y - y) >= 6 || other.x.hi < x.lo || x.hi < other.x.lo,
      );
      if (isFree) break;
      const next = centre + (i % 2 === 1 ? 1 : -1) * Math.ceil(i / 2) * 6;
      if (next < way.y.lo || next > way.y.hi) continue;
      y = next;
    }
    taken.push({ y, x });
    heights.set(id, y);
  }
  return heights;
}

type Corners = (xs: readonly number[]) => Route;

function gather(link: Drawn, gathering: Gathering, middleY: number): Corners {
  const { id, from, to, way, ports } = link;
  if (way.way === 'stacked') {
    const x = Math.round((way.x.lo + way.x.hi) / 2);
    const start = way.down ? from.rect.y + from.rect.height : from.rect.y;
    const end = way.down ? to.rect.y : to.rect.y + to.rect.height;
    return () => [
      { x, y: start },
      { x, y: end },
    ];
  }
  const startX = edgeX(from.rect, way.fromSide);
  const endX = edgeX(to.rect, way.toSide);
  const outgoing = from.kind === 'puzzle' ? `${id} out` : `${from.shown} out ${way.fromSide}`;
  const incoming = `${id} in`;
  const shareKey = to.kind === 'puzzle' ? `${to.shown} ${way.toSide}` : undefined;
  const start = { x: startX, y: ports.from };
  const end = { x: endX, y: ports.to };
  if (way.way === 'one') {
    if (ports.from === ports.to && way.fromSide !== way.toSide) {
      const x = { lo: Math.min(startX, endX), hi: Math.max(startX, endX) };
      gathering.levels.push({ y: ports.from, x, line: incoming });
      return () => [start, end];
    }
    const track = addTrack(
      gathering,
      shareKey,
      way.x,
      [ports.from, ports.to],
      [
        { y: ports.from, x: startX, line: outgoing },
        { y: ports.to, x: endX, line: incoming },
      ],
    );
    return (xs) => {
      const x = xs[track] ?? startX;
      return [start, { x, y: ports.from }, { x, y: ports.to }, end];
    };
  }
  const second = addTrack(
    gathering,
    shareKey,
    way.x2,
    [middleY, ports.to],
    [{ y: ports.to, x: endX, line: incoming }],
  );
  const first = addTrack(
    gathering,
    undefined,
    way.x1,
    [ports.from, middleY],
    [
      { y: ports.from, x: startX, line: outgoing },
      { y: middleY, x: { track: second }, line: `${id} middle` },
    ],
  );
  return (xs) => {
    const x1 = xs[first] ?? startX;
    const x2 = xs[second] ?? endX;
    return [
      start,
      { x: x1, y: ports.from },
      { x: x1, y: middleY },
      { x: x2, y: middleY },
      { x: x2, y: ports.to },
      end,
    ];
  };
}

/** Corners without those that lie on a straight line. */
function straightened(route: Route): Route {
  return route.filter((point, i) => {
    const before = route[i - 1];
    const after = route[i + 1];
    if (!before || !after) return true;
    const level = before.y === point.y && point.y === after.y;
    const upright = before.x === point.x && point.x === after.x;
    return !level && !upright;
  });
}

/**
 * A route for each link that can be drawn, from the edge of one thing to the edge of the other; a link with an end inside a folded tray
 * ends at that tray, and one with both ends in the same has no route. Links that are not given are not there, so that while
 * something is dragged the links that touch it can be routed alone. Given the routes before, those that are equal stay the same objects.
 */
export function routes(
  layout: MapLayout,
  links: Iterable<GameLink>,
  previous?: ReadonlyMap<LinkId, Route>,
): ReadonlyMap<LinkId, Route> {
  const drawn = plan(layout, links);
  const heights = middleLevels(drawn);
  const gathering: Gathering = { tracks: [], shared: new Map(), levels: [] };
  const corners = drawn.map((link) => gather(link, gathering, heights.get(link.id) ?? link.ports.from));
  const tracks: readonly Track[] = gathering.tracks;
  const xs = assignTracks(tracks, gathering.levels);
  return new Map(
    drawn.map(({ id }, i) => {
      const route = straightened(corners[i]?.(xs) ?? []);
      const before = previous?.get(id);
      return [id, before && same(before, route) ? before : route];
    }),
  );
}
