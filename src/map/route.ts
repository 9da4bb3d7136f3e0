/** Lines at right angles between the things on the map. */
import type { GameLink, LinkId } from '../game/model.ts';
import type { MapLayout, Route } from './layout.ts';
import { type LinkEnds, linkEnds, obstacles } from './route/ends.ts';
import { type Chosen, type Known, remember, stillKnown } from './route/known.ts';
import { edgeX, type Mat, matOf, type Range, wayBetween } from './route/path.ts';
import { portsOf } from './route/ports.ts';
import { assignTracks, type Level, type Stub, type Track } from './route/tracks.ts';
import { same } from './same.ts';

interface Drawn extends Chosen {
  /** What is known of it from the call before, while all that it depends on is as it was. */
  readonly known: Known | undefined;
}

/** Ways with sides chosen for ports in the middle, then the same sides once more for the ports that they got. */
function plan(ends: readonly LinkEnds[], mat: Mat, still: ReadonlyMap<LinkId, Known>): Drawn[] {
  const planned = ends.map((link) => {
    const known = still.get(link.id);
    return { ...link, known, way: known?.link.first ?? wayBetween(link.from, link.to, mat) };
  });
  const ports = portsOf(planned);
  return planned.map(({ known, ...link }) => {
    const { from, to, way } = link;
    const port = ports.get(link.id) ?? { from: from.y, to: to.y };
    if (known && known.link.ports.from === port.from && known.link.ports.to === port.to) {
      return { ...known.link, known };
    }
    const drawn = { ...link, first: way, ports: port, known: undefined };
    if (way.way === 'stacked' || (port.from === from.y && port.to === to.y)) return drawn;
    const at = { from: { ...from, y: port.from }, to: { ...to, y: port.to } };
    return { ...drawn, way: wayBetween(at.from, at.to, mat, [way.fromSide], [way.toSide]) };
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
  const twice = drawn.flatMap(({ id, way, known }) => (way.way === 'two' ? [{ id, way, known }] : []));
  for (const { id, way, known } of [
    ...twice.filter((link) => link.known),
    ...twice.filter((link) => !link.known),
  ]) {
    const x = { lo: Math.min(way.x1.lo, way.x2.lo), hi: Math.max(way.x1.hi, way.x2.hi) };
    const centre = Math.round((way.y.lo + way.y.hi) / 2);
    let y = known?.middleY ?? centre;
    for (let i = 1; !known && i < 12; i++) {
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

/** A link with the tracks that its upright runs are on, first to last. */
interface Gathered {
  readonly runs: readonly number[];
  readonly corners: (xs: readonly number[]) => Route;
}

function gather(link: Drawn, gathering: Gathering, middleY: number): Gathered {
  const { id, from, to, way, ports } = link;
  if (way.way === 'stacked') {
    const x = Math.round((way.x.lo + way.x.hi) / 2);
    const start = way.down ? from.rect.y + from.rect.height : from.rect.y;
    const end = way.down ? to.rect.y : to.rect.y + to.rect.height;
    const route = [
      { x, y: start },
      { x, y: end },
    ];
    return { runs: [], corners: () => route };
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
      return { runs: [], corners: () => [start, end] };
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
    const corners = (xs: readonly number[]) => {
      const x = xs[track] ?? startX;
      return [start, { x, y: ports.from }, { x, y: ports.to }, end];
    };
    return { runs: [track], corners };
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
  const corners = (xs: readonly number[]) => {
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
  return { runs: [first, second], corners };
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

/** The x of every track whose links are all known from before; the others are free to move. */
function fixedTracks(
  drawn: readonly Drawn[],
  gathered: readonly Gathered[],
  tracks: readonly Track[],
): (number | undefined)[] {
  const fixed: (number | undefined)[] = tracks.map(() => undefined);
  const loose = new Set<number>();
  for (const [i, { known }] of drawn.entries()) {
    for (const [run, track] of (gathered[i]?.runs ?? []).entries()) {
      const x = known?.xs[run];
      const range = tracks[track]?.x;
      const agrees = x !== undefined && range && (fixed[track] ?? x) === x;
      if (agrees && range.lo - 1 <= x && x <= range.hi + 1) fixed[track] = x;
      else loose.add(track);
    }
  }
  for (const track of loose) fixed[track] = undefined;
  return fixed;
}

/** How many links `routes` would have to find a way for, given the routes of a call before: what its time depends on. */
export function unrouted(
  layout: MapLayout,
  links: Iterable<GameLink>,
  previous?: ReadonlyMap<LinkId, Route>,
): number {
  const ends = linkEnds(layout, links);
  return ends.length - stillKnown(previous, ends, obstacles(layout)).size;
}

/**
 * A route for each link that can be drawn, from the edge of one thing to the edge of the other; a link with an end inside a folded tray
 * ends at that tray, and one with both ends in the same has no route. Links that are not given are not there, so that while
 * something is dragged the links that touch it can be routed alone.
 *
 * Given the routes of a call before, lines whose ends are where they were keep their way and their track, unless something
 * near them came, went or moved: a line does not move aside for a change elsewhere, so the result can differ from that of
 * a call without them. When most have changed all are routed anew. Routes that are equal stay the same objects, and so does
 * the whole when nothing has changed.
 */
export function routes(
  layout: MapLayout,
  links: Iterable<GameLink>,
  previous?: ReadonlyMap<LinkId, Route>,
): ReadonlyMap<LinkId, Route> {
  const around = obstacles(layout);
  const ends = linkEnds(layout, links);
  const known = stillKnown(previous, ends, around);
  if (previous && known.size === ends.length && known.size === previous.size) return previous;
  const drawn = plan(ends, matOf(around), known);
  const heights = middleLevels(drawn);
  const gathering: Gathering = { tracks: [], shared: new Map(), levels: [] };
  const middleOf = (link: Drawn) => heights.get(link.id) ?? link.ports.from;
  const gathered = drawn.map((link) => gather(link, gathering, middleOf(link)));
  const tracks: readonly Track[] = gathering.tracks;
  const xs = assignTracks(tracks, gathering.levels, fixedTracks(drawn, gathered, tracks));
  const found = new Map<LinkId, Route>();
  const memory = new Map<LinkId, Known>();
  let unchanged = previous?.size === drawn.length;
  for (const [i, link] of drawn.entries()) {
    const { runs = [], corners } = gathered[i] ?? {};
    const fresh = straightened(corners?.(xs) ?? []);
    const before = previous?.get(link.id);
    const route = before && same(before, fresh) ? before : fresh;
    if (route !== before) unchanged = false;
    found.set(link.id, route);
    memory.set(link.id, {
      link,
      middleY: middleOf(link),
      xs: runs.map((track) => xs[track] ?? 0),
      route,
    });
  }
  const result = unchanged && previous ? previous : found;
  remember(result, { around, links: memory });
  return result;
}
