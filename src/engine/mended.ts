/**
 * The game with its plain faults mended: every fastener that nothing opens is opened by nothing, and every need that is larger than
 * its links asks for all of them. What is still not reached then waits in a ring. Cost: linear.
 */
import type { Network } from './network.ts';

export function withFaultsMended(network: Network): Network {
  const { events, closed, size } = network;
  const k = events.k.map((wanted, event) =>
    event < size && closed[event] === 1
      ? 0
      : Math.min(wanted, (events.some.starts[event + 1] ?? 0) - (events.some.starts[event] ?? 0)),
  );
  return { ...network, events: { ...events, k } };
}
