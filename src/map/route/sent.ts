/** Routes found in one thread and used in another: sent with what was found out on the way, so that they need not be found again. */
import type { LinkId } from '../../game/model.ts';
import type { Route } from '../layout.ts';
import { type Memory, memoryOf, remember } from './known.ts';

/** Plain data, for a message between threads. */
export type SentRoutes = Memory;

/** Undefined for routes that `routes` did not give. */
export function sendRoutes(routes: ReadonlyMap<LinkId, Route>): SentRoutes | undefined {
  return memoryOf(routes);
}

/** Routes to be given to `routes` as those of the call before. */
export function receiveRoutes(sent: SentRoutes): ReadonlyMap<LinkId, Route> {
  const received = new Map(Array.from(sent.links, ([id, { route }]) => [id, route]));
  remember(received, sent);
  return received;
}
