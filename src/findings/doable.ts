/** How far a game gets: the steps that can be done when every lock whose wrong code stops the game stays shut. */
import { reach } from '../engine/reach.ts';
import type { Assessment } from './assess.ts';

export interface Doable {
  readonly steps: number;
  /** All steps that are used, reached or not. */
  readonly of: number;
}

export function doableSteps({ network, measures, findings }: Assessment): Doable {
  const never = new Uint8Array(network.events.count);
  let isHeld = false;
  for (const { level, nodes } of findings) {
    const node = level === 'stops' ? network.index.get(nodes[0] ?? '') : undefined;
    if (node === undefined || network.prizes.includes(node)) continue;
    never[node] = 1;
    isHeld ||= measures.reached[node] === 1;
  }
  const reached = isHeld ? reach(network, { never }) : measures.reached;
  let steps = 0;
  let all = 0;
  for (let node = 0; node < network.size; node++) {
    if (network.isStep[node] !== 1) continue;
    all += 1;
    if (reached[node] === 1) steps += 1;
  }
  return { steps, of: all };
}
