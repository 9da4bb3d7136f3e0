/** What holds for every plan of a map, looked at from outside: positions and measures only. */
import { isOwnRow, type MapContent } from '../../../src/sheets/map/content.ts';
import type { Frame, MapPlan, PlannedLine, PlannedPage, PlannedPart } from '../../../src/sheets/map/plan.ts';

interface Rectangle {
  readonly what: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Segment {
  readonly net: string;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

const SLACK = 0.01;
const TRACKS_APART = 5;
const LINES_APART = 3;
const ENDS_APART = 10;

function blocksOf(content: MapContent, plan: MapPlan, part: PlannedPart): Rectangle[] {
  const { metrics } = part;
  const rectangle = (what: string, x: number, y: number, width: number, height: number): Rectangle => ({
    what,
    left: x,
    top: y,
    right: x + width,
    bottom: y + height,
  });
  return [
    ...part.bars.map(({ id, x, y }) =>
      rectangle(`bar ${id}`, x, y, metrics.barWidth, content.measureBar(id, metrics, plan.told).height),
    ),
    ...part.trays.map(({ tray, x, y }) =>
      rectangle(
        `tray ${tray.key}`,
        x,
        y,
        metrics.trayWidth,
        content.measureTray(tray, metrics, plan.told).height,
      ),
    ),
    ...part.notes.map(({ note, x, y }) =>
      rectangle(`note ${note.key}`, x, y, metrics.noteWidth, content.measureNote(note, metrics)),
    ),
  ];
}

function segmentsOf(lines: readonly PlannedLine[], prefix: number): Segment[] {
  return lines.flatMap(({ net, points }) =>
    points.slice(1).map((end, i) => {
      const start = points[i] ?? end;
      return {
        net: `${prefix} ${net}`,
        x1: Math.min(start.x, end.x),
        y1: Math.min(start.y, end.y),
        x2: Math.max(start.x, end.x),
        y2: Math.max(start.y, end.y),
      };
    }),
  );
}

const isLevel = ({ y1, y2 }: Segment) => y2 - y1 < SLACK;

function onEachOther(a: Segment, b: Segment): boolean {
  if (isLevel(a) !== isLevel(b)) return false;
  if (isLevel(a)) {
    return Math.abs(a.y1 - b.y1) < LINES_APART - SLACK && a.x1 < b.x2 - SLACK && b.x1 < a.x2 - SLACK;
  }
  return Math.abs(a.x1 - b.x1) < TRACKS_APART - SLACK && a.y1 < b.y2 - SLACK && b.y1 < a.y2 - SLACK;
}

const meets = (line: Segment, { left, top, right, bottom }: Rectangle) =>
  line.x1 < right - SLACK && line.x2 > left + SLACK && line.y1 < bottom - SLACK && line.y2 > top + SLACK;

const overlap = (a: Rectangle, b: Rectangle) =>
  a.left < b.right - SLACK &&
  b.left < a.right - SLACK &&
  a.top < b.bottom - SLACK &&
  b.top < a.bottom - SLACK;

function pageFaults(
  content: MapContent,
  plan: MapPlan,
  page: PlannedPage,
  index: number,
  frame: Frame,
): string[] {
  const faults: string[] = [];
  const blocks = page.parts.flatMap((part) => blocksOf(content, plan, part));
  const top = frame.margin + (index === 0 ? frame.headFirst : frame.headOther);
  for (const [i, a] of blocks.entries()) {
    if (a.left < frame.margin - SLACK || a.right > frame.width - frame.margin + SLACK)
      faults.push(`${a.what} is beside the page`);
    if (a.top < top - SLACK || a.bottom > frame.height - frame.margin + SLACK)
      faults.push(`${a.what} is above or below the page`);
    for (const b of blocks.slice(i + 1)) if (overlap(a, b)) faults.push(`${a.what} overlaps ${b.what}`);
  }
  const lines = page.parts.flatMap((part, i) => segmentsOf(part.lines, i));
  for (const [i, a] of lines.entries()) {
    if (a.x2 - a.x1 > SLACK && a.y2 - a.y1 > SLACK) faults.push(`${a.net} is not at right angles`);
    for (const block of blocks) if (meets(a, block)) faults.push(`${a.net} runs into ${block.what}`);
    for (const b of lines.slice(i + 1))
      if (a.net !== b.net && onEachOther(a, b)) faults.push(`${a.net} lies on ${b.net}`);
  }
  return faults;
}

/** Where the ends of a drawn link are: at the wall of the bar, and at the height of the row at the wall of its tray. */
function endFaults(content: MapContent, plan: MapPlan, part: PlannedPart): string[] {
  const { metrics, bars, trays, lines } = part;
  const touches = (id: string, x: number, y: number): boolean => {
    for (const bar of bars) {
      if (bar.id !== id) continue;
      const { height, entries } = content.measureBar(id, metrics, plan.told);
      const beside = Math.abs(x - bar.x) < SLACK || Math.abs(x - bar.x - metrics.barWidth) < SLACK;
      const below = y - bar.y;
      if (beside) return below > (entries[0] ?? 0) - SLACK && below < (entries.at(-1) ?? height) + SLACK;
      return Math.abs(below) < SLACK || Math.abs(below - height) < SLACK;
    }
    for (const { tray, side, x: left, y: top } of trays) {
      const end = content.measureTray(tray, metrics, plan.told).ends.get(id);
      const wall = side === 'left' ? left + metrics.trayWidth : left;
      if (end !== undefined && Math.abs(x - wall) < SLACK && Math.abs(y - top - end) < SLACK) return true;
    }
    return false;
  };
  return lines.flatMap(({ net, from, to, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [`${net} has no points`];
    return [
      ...(touches(from, first.x, first.y) ? [] : [`${net} does not begin at ${from}`]),
      ...(touches(to, last.x, last.y) ? [] : [`${net} does not end at ${to}`]),
    ];
  });
}

function linkFaults(content: MapContent, plan: MapPlan): string[] {
  const count = (list: readonly string[]) => {
    const counts = new Map<string, number>();
    for (const one of list) counts.set(one, (counts.get(one) ?? 0) + 1);
    return counts;
  };
  const parts = plan.pages.flatMap((page) => page.parts);
  const drawn = count(parts.flatMap((part) => part.lines.flatMap((line) => line.links)));
  const told = count([...plan.told].flatMap(([at, list]) => list.map((one) => `${one.link} at ${at}`)));
  return content.links.flatMap(({ id, from, to }) => {
    const ends = [told.get(`${id} at ${from}`) ?? 0, told.get(`${id} at ${to}`) ?? 0];
    const right =
      drawn.get(id) === 1 ? ends[0] === 0 && ends[1] === 0 : !drawn.get(id) && ends[0] === 1 && ends[1] === 1;
    return right ? [] : [`${id} is drawn ${drawn.get(id) ?? 0} times and told ${ends.join(' and ')} times`];
  });
}

function presenceFaults(content: MapContent, plan: MapPlan): string[] {
  const parts = plan.pages.flatMap((page) => page.parts);
  const rowsOf = (trays: readonly { readonly rows: MapContent['trays'][number]['rows'] }[]) =>
    trays
      .flatMap(({ rows }) => rows.filter(isOwnRow))
      .map((row) => `${row.row} ${row.id}`)
      .sort();
  const same = (a: readonly string[], b: readonly string[]) => JSON.stringify(a) === JSON.stringify(b);
  const notes = [
    ...parts.flatMap((part) => part.notes.map(({ note }) => note.key)),
    ...plan.unplaced.map((note) => note.key),
  ];
  return [
    ...(same(rowsOf(content.trays), rowsOf(parts.flatMap((part) => part.trays.map(({ tray }) => tray))))
      ? []
      : ['rows are not there once each']),
    ...(same(
      [...content.bars],
      parts.flatMap((part) => part.bars.map(({ id }) => id)),
    )
      ? []
      : ['bars are not in the order of play']),
    ...(same(content.notes.map((note) => note.key).sort(), notes.sort())
      ? []
      : ['notes are not there once each']),
    ...parts.flatMap(({ metrics: { size } }) => (size >= 7.5 && size <= 11 ? [] : [`type of ${size} pt`])),
  ];
}

/** Lines of two nets meet one edge of a bar well apart. */
function nearEnds({ metrics, bars, lines }: PlannedPart): string[] {
  return bars.flatMap(({ id, x }) => {
    const ends = lines.flatMap(({ net, from, to, points }) => {
      const spot = from === id ? points[0] : to === id ? points.at(-1) : undefined;
      const isBeside =
        spot && (Math.abs(spot.x - x) < SLACK || Math.abs(spot.x - x - metrics.barWidth) < SLACK);
      return isBeside ? [{ net, ...spot }] : [];
    });
    return ends.flatMap((a, i) =>
      ends
        .slice(i + 1)
        .filter((b) => a.net !== b.net && a.x === b.x && Math.abs(a.y - b.y) < ENDS_APART - 2 * SLACK)
        .map((b) => `${a.net} and ${b.net} meet bar ${id} ${Math.abs(a.y - b.y).toFixed(1)} apart`),
    );
  });
}

/** Rescue lines of a part stand in one column, in the order of play. */
function noteFaults(content: MapContent, { notes }: PlannedPart): string[] {
  const order = new Map(content.notes.map(({ key }, i) => [key, i]));
  const down = [...notes].sort((a, b) => a.y - b.y);
  return [
    ...(new Set(notes.map(({ x }) => x)).size > 1 ? ['notes stand in several columns'] : []),
    ...down.slice(1).flatMap(({ note }, i) => {
      const above = down[i]?.note.key ?? '';
      const isAfter = (order.get(note.key) ?? 0) > (order.get(above) ?? 0);
      return isAfter ? [] : [`note ${note.key} stands below note ${above}`];
    }),
  ];
}

/** Points at which lines of two nets cross. */
export function crossingsOf(part: PlannedPart): number {
  const segments = segmentsOf(part.lines, 0);
  const points = new Set<string>();
  for (const a of segments.filter(isLevel)) {
    for (const b of segments) {
      if (isLevel(b) || a.net === b.net) continue;
      if (b.x1 > a.x1 + SLACK && b.x1 < a.x2 - SLACK && a.y1 > b.y1 + SLACK && a.y1 < b.y2 - SLACK) {
        points.add(`${b.x1} ${a.y1}`);
      }
    }
  }
  return points.size;
}

/** All that is wrong with a plan, in words; nothing when it is right. */
export function faultsOf(content: MapContent, plan: MapPlan, frame: Frame): string[] {
  return [
    ...plan.pages.flatMap((page, i) => pageFaults(content, plan, page, i, frame)),
    ...plan.pages.flatMap((page) =>
      page.parts.flatMap((part) => [
        ...endFaults(content, plan, part),
        ...nearEnds(part),
        ...noteFaults(content, part),
      ]),
    ),
    ...plan.pages.flatMap((page) =>
      page.parts.flatMap((part) => {
        const most = page.parts.length > 1 ? 4 : 8;
        return crossingsOf(part) <= most ? [] : [`${crossingsOf(part)} lines cross`];
      }),
    ),
    ...linkFaults(content, plan),
    ...presenceFaults(content, plan),
  ];
}
