/** Where the trays of a part stand on the map of the screen: what the page keeps to, so that it is the map that one knows. */
import type { NodeId } from '../../../game/model.ts';
import type { Side } from '../../../map/layout.ts';
import type { Columns } from '../../../spine/spine.ts';
import type { MapContent, Tray } from '../content.ts';
import type { Part } from './part.ts';

/** What stands by itself on the map and is in this tray: itself, or all that shares its caption. */
function rootsOf({ rows }: Tray): NodeId[] {
  const [first] = rows;
  if (first?.row === 'head') return [first.id];
  return rows.flatMap((row) => (row.row === 'thing' ? [row.id] : []));
}

interface Home {
  readonly side: Side;
  /** From the top of its column. */
  readonly place: number;
}

const known = new WeakMap<MapContent, ReadonlyMap<NodeId, Home>>();

function homesIn(content: MapContent): ReadonlyMap<NodeId, Home> {
  const before = known.get(content);
  if (before) return before;
  const homes = new Map<NodeId, Home>();
  for (const side of ['left', 'right'] as const) {
    for (const [place, id] of content.sides[side].entries()) homes.set(id, { side, place });
  }
  known.set(content, homes);
  return homes;
}

const homesInTray = (part: Part, tray: Tray): Home[] => {
  const homes = homesIn(part.content);
  return rootsOf(tray).flatMap((id) => homes.get(id) ?? []);
};

/** By block. What shares a caption is at home where most of it stands. */
export function homesOf(part: Part): Map<number, Side> {
  const sides = new Map<number, Side>();
  for (const [i, tray] of part.trays.entries()) {
    const all = homesInTray(part, tray);
    const left = all.filter(({ side }) => side === 'left').length;
    if (all.length > 0) sides.set(part.bars.length + i, 2 * left >= all.length ? 'left' : 'right');
  }
  return sides;
}

/** Columns with every tray at home, in the order of the map; undefined when some tray has no home. */
export function homeColumns(part: Part, homes: ReadonlyMap<number, Side>): Columns | undefined {
  if (homes.size < part.trays.length) return undefined;
  const first = part.bars.length;
  const placeOf = (block: number) => {
    const tray = part.trays[block - first];
    const side = homes.get(block);
    const places = tray ? homesInTray(part, tray).filter((home) => home.side === side) : [];
    return Math.min(...places.map(({ place }) => place));
  };
  const column = (side: Side) =>
    [...homes]
      .flatMap(([block, home]) => (home === side ? [block] : []))
      .sort((a, b) => placeOf(a) - placeOf(b) || a - b);
  return { left: column('left'), spine: part.bars.map((_, i) => i), right: column('right') };
}
