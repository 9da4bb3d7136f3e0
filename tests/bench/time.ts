/** Measuring, for the bench alone: nothing that passes or fails depends on a clock. */

/** The median of several runs, in milliseconds, after some that let the compiler warm up. Short tasks are repeated within a run. */
export function medianOf(task: () => unknown, runs = 15): number {
  const once = elapsed(task, 1);
  const repeats = Math.max(1, Math.min(200, Math.floor(4 / Math.max(once, 0.001))));
  for (let warm = 0; warm < 3 && once < 500; warm++) elapsed(task, repeats);
  const count = once > 500 ? 3 : runs;
  const times = Array.from({ length: count }, () => elapsed(task, repeats)).sort((a, b) => a - b);
  return times[count >> 1] ?? 0;
}

function elapsed(task: () => unknown, repeats: number): number {
  const start = performance.now();
  for (let i = 0; i < repeats; i++) task();
  return (performance.now() - start) / repeats;
}
