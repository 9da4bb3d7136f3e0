/**
 * Where the bars under the chart lie and which of them say their names: bars in as many lanes as there are, no two over each other
 * while there is room; names where they run into nothing, those nearest to the minute shown first.
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
/** A name may reach so far beyond the right end of the chart. */
const BEYOND = 14;

/** What a bar takes with its square. */
function extent({ from, to, at }: Bar): NamePlace {
  return { left: Math.min(from, at - SQUARE), right: Math.max(to, at + SQUARE) };
}

/** Right of its bar, or left of it where the chart ends; undefined where it fits on neither side. */
function placesOf(bar: Bar, width: number): NamePlace[] {
  const { left, right } = extent(bar);
  const places = [
    { left: right + GAP, right: right + GAP + bar.name },
    { left: left - GAP - bar.name, right: left - GAP },
  ];
  return places.filter((place) => place.left >= 0 && place.right <= width + BEYOND);
}

const meet = (a: NamePlace, b: NamePlace, gap: number) => a.left < b.right + gap && b.left < a.right + gap;

/** The lane of each bar, from 0. @param bars sorted by their squares */
export function lanesOf(bars: readonly Bar[], lanes: number, width: number): number[] {
  const taken: NamePlace[][] = Array.from({ length: lanes }, () => []);
  const isFree = (lane: readonly NamePlace[], place: NamePlace) =>
    lane.every((other) => !meet(other, place, 2 * GAP));
  return bars.map((bar) => {
    const body = extent(bar);
    const [place] = placesOf(bar, width);
    const whole = place
      ? { left: Math.min(body.left, place.left), right: Math.max(body.right, place.right) }
      : body;
    const free = [whole, body].flatMap((wanted) => {
      const lane = taken.findIndex((one) => isFree(one, wanted));
      return lane < 0 ? [] : [{ lane, wanted }];
    });
    const { lane, wanted } = free[0] ?? { lane: leastMet(taken, body), wanted: body };
    taken[lane]?.push(wanted);
    return lane;
  });
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

/**
 * Where each name stands, or undefined where there is no room for it now.
 * @param now pixels from the left edge: the nearest come first
 */
export function namesOf(
  bars: readonly Bar[],
  laneOf: readonly number[],
  width: number,
  now: number,
): (NamePlace | undefined)[] {
  const names = bars.map((): NamePlace | undefined => undefined);
  const order = [...bars.keys()].sort((a, b) => distance(bars[a], now) - distance(bars[b], now) || a - b);
  for (const i of order) {
    const bar = bars[i];
    if (!bar) continue;
    names[i] = placesOf(bar, width).find((place) =>
      bars.every((other, j) => {
        if (j === i || laneOf[j] !== laneOf[i]) return true;
        const name = names[j];
        return !meet(extent(other), place, GAP) && !(name && meet(name, place, GAP));
      }),
    );
  }
  return names;
}

const distance = (bar: Bar | undefined, now: number) => (bar ? Math.abs(bar.at - now) : 0);
