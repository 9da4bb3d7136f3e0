/**
 * A plain restatement of src/findings/blame.ts for one node, to hold it against.
 * Whether a fault at one node stops the game: with that node never reached, a prize falls. One rule for every finding about a
 * single node, reached or not.
 * A game may have several faults, so 'a prize falls' is asked twice: in the game as it stands (a prize is reached if the node
 * is, and not if it never is), and in the game with every other fault mended, rings included (largest fixed point). Else a
 * harmless box would stop the game as soon as anything else did, or two faults one behind the other would each hide the other.
 * Cost: linear.
 */
import type { Index } from '../../src/engine/measures.ts';
import { withFaultsMended } from '../../src/engine/mended.ts';
import type { Network } from '../../src/engine/network.ts';
import { only, reach } from '../../src/engine/reach.ts';

export function stopsTheGame(network: Network, node: Index): boolean {
  const marked = only(network, node);
  const ifNever = reach(network, { never: marked });
  const ifReached = reach(network, { given: marked });
  const couldCome = largestWithout(withFaultsMended(network), node);
  return network.prizes.some(
    (prize) => (ifReached[prize] === 1 && ifNever[prize] !== 1) || couldCome[prize] !== 1,
  );
}

/** 1 for each event of the largest fixed point in which this node does not come: what does not, in the end, need it. */
function largestWithout(network: Network, node: Index): Uint8Array {
  const { count, some, k, allOf, someOf } = network.events;
  const comes = new Uint8Array(count).fill(1);
  const spare = new Int32Array(count);
  for (let event = 0; event < count; event++) {
    spare[event] = (some.starts[event + 1] ?? 0) - (some.starts[event] ?? 0) - (k[event] ?? 0);
  }
  const fallen = [node];
  comes[node] = 0;
  const fell = (event: number) => {
    if (comes[event] === 0) return;
    comes[event] = 0;
    fallen.push(event);
  };
  for (const event of fallen) {
    for (let i = allOf.starts[event] ?? 0; i < (allOf.starts[event + 1] ?? 0); i++) {
      fell(allOf.items[i] ?? 0);
    }
    for (let i = someOf.starts[event] ?? 0; i < (someOf.starts[event + 1] ?? 0); i++) {
      const waiting = someOf.items[i] ?? 0;
      const left = (spare[waiting] ?? 0) - 1;
      spare[waiting] = left;
      if (left < 0) fell(waiting);
    }
  }
  return comes;
}
