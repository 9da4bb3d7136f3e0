/**
 * Must-do: the reached steps without which (never reached, everything else as it was) a prize falls.
 * Method: all scenarios at once in the bits of words, see falls.ts. Cost: events times steps / 32.
 */
import { falling } from './falls.ts';
import type { Flow } from './flow.ts';
import type { Network } from './network.ts';

/** By node: 1 where it cannot be skipped. All 0 when the game is not solvable. */
export function mustDoSteps(network: Network, flow: Flow): Uint8Array {
  const mustDo = new Uint8Array(network.size);
  if (!flow.solvable) return mustDo;
  const steps = reachedSteps(network, flow);
  const fall = falling(
    flow,
    steps.map((step) => flow.position[step] ?? 0),
  );
  for (let scenario = 0; scenario < steps.length; scenario++) {
    for (let i = 0; i < flow.prizes.length; i++) {
      if (fall.falls(scenario, flow.prizes[i] ?? 0)) mustDo[steps[scenario] ?? 0] = 1;
    }
  }
  return mustDo;
}

/** Node indices, ascending. */
export function reachedSteps(network: Network, flow: Flow): Int32Array {
  const steps: number[] = [];
  for (let node = 0; node < network.size; node++) {
    if (network.isStep[node] === 1 && (flow.position[node] ?? -1) >= 0) steps.push(node);
  }
  return Int32Array.from(steps);
}
