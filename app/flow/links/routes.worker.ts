/** Finds the ways of very many arrows. */

import { sendRoutes } from '../../../src/map/route/sent.ts';
import { routes } from '../../../src/map/route.ts';
import { HERE } from '../../parts/here.ts';
import type { RoutesQuestion } from './useRoutes.ts';

self.onmessage = ({ data: { layout, links } }: MessageEvent<RoutesQuestion>) => {
  self.postMessage(sendRoutes(routes(layout, links)));
};

self.postMessage(HERE);
