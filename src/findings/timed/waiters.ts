/** How many pupils of a team wait while a step is being worked, on average; 0 for what is no step. */
import type { Timing } from './timed-finding.ts';

export function waitersWhile({ clock, simulated }: Timing, step: number): number {
  // In runs that do without the step nobody waits for it either, so that the figure is rather too small than too large.
  const minutes = clock.network.minutes[step] ?? 0;
  if (minutes <= 0) return 0;
  return Math.min(simulated.team, (simulated.idleWhile[step] ?? 0) / minutes);
}
