/**
 * Where the bars under the chart lie and which of them say their names: bars in as many lanes as there are, no two over each other
 * while there is room; each name at the right end of its own bar, or at the left where there is no room, and always there.
 */
export interface Bar {
  /** Pixels from the left edge of the chart. */
  readonly from: number;
  readonly to: number;
  /** The square on it. */
  readonly at: number;
  /** Width of its name. */
  readonly name: number;
}

export interface NamePlace {
  readonly left: number;
  readonly right: number;
}

/** Half a square, and the space between a bar and its name. */
const SQUARE = 6;
const GAP = 5;
/** From a name to what else is in its lane: so much more than to its own bar that nobody takes it for the other's. */
const APART = 16;
/** A name may reach so far beyond the right end of the chart. */
const BEYOND = 14;

/** What a bar takes with its square. */
function extent({ from, to, at }: Bar): NamePlace {
  return { left: Math.min(from, at - SQUARE), right: Math.max(to, at + SQUARE) };
}

/** Right of its bar and left of it, as far as it stays on the chart. */
export function placesOf(bar: Bar, width: number): NamePlace[] {
  const { left, right } = extent(bar);
  const places = [
    { left: right + GAP, right: right + GAP + bar.name },
    { left: left - GAP - bar.name, right: left - GAP },
  ];
  return places.filter((place) => place.left >= 0 && place.right <= width + BEYOND);
}

const meet = (a: NamePlace, b: NamePlace, gap: number) => a.left < b.right + gap && b.left < a.right + gap;

/** What a bar takes with its name, on either side. */
function wholesOf(bar: Bar, width: number): NamePlace[] {
  const body = extent(bar);
  return placesOf(bar, width).map((name) => ({
    left: Math.min(body.left, name.left),
    right: Math.max(body.right, name.right),
  }));
}

/** The lane of each bar, from 0. */
export function lanesOf(bars: readonly Bar[], lanes: number, width: number): number[] {
  const taken: NamePlace[][] = Array.from({ length: lanes }, () => []);
  const laneOf = bars.map(() => 0);
  const left = (i: number) => Math.min(bars[i]?.from ?? 0, bars[i]?.at ?? 0);
  // From the left, which takes the fewest lanes.
  for (const i of [...bars.keys()].sort((a, b) => left(a) - left(b) || a - b)) {
    const bar = bars[i];
    if (!bar) continue;
    const body = extent(bar);
    const free = [...wholesOf(bar, width), body].flatMap((wanted) => {
      const lane = taken.findIndex((one) => one.every((other) => !meet(other, wanted, APART)));
      return lane < 0 ? [] : [{ lane, wanted }];
    });
    const { lane, wanted } = free[0] ?? { lane: leastMet(taken, body), wanted: body };
    taken[lane]?.push(wanted);
    laneOf[i] = lane;
  }
  return laneOf;
}

/** Where it lies over the least of what is there. */
function leastMet(taken: readonly (readonly NamePlace[])[], { left, right }: NamePlace): number {
  const met = taken.map((lane) =>
    lane.reduce(
      (sum, other) => sum + Math.max(0, Math.min(right, other.right) - Math.max(left, other.left)),
      0,
    ),
  );
  return met.indexOf(Math.min(...met));
}

/** Where each name stands, or undefined where there is no room for it. */
export function namesOf(
  bars: readonly Bar[],
  laneOf: readonly number[],
  width: number,
): (NamePlace | undefined)[] {
  const names = bars.map((): NamePlace | undefined => undefined);
  bars.forEach((bar, i) => {
    names[i] = placesOf(bar, width).find((place) =>
      bars.every((other, j) => {
        if (j === i || laneOf[j] !== laneOf[i]) return true;
        const name = names[j];
        return !meet(extent(other), place, APART) && !(name && meet(name, place, APART));
      }),
    );
  });
  return names;
}
