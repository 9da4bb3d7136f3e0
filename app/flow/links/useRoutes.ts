/**
 * The ways of the arrows. Where very many have to be found at once, a worker finds them, and until it has, each arrow runs
 * straight from thing to thing; where no worker runs, it stays so until few are left to be found.
 */
import { useEffect, useMemo, useRef } from 'react';
import { create } from 'zustand';
import type { GameLink, LinkId } from '../../../src/game/model.ts';
import type { MapLayout, Route } from '../../../src/map/layout.ts';
import { shownAs } from '../../../src/map/layout.ts';
import { receiveRoutes, type SentRoutes } from '../../../src/map/route/sent.ts';
import { routes as routesOf, unrouted } from '../../../src/map/route.ts';
import { type Helper, startHelper } from '../../parts/helper.ts';
import { useTidying } from '../../store/tidying.ts';
import { matRects } from '../geometry.ts';
import { elbow } from './elbow.ts';
import script from './routes.worker.ts?worker&url';

export type Routes = ReadonlyMap<LinkId, Route>;

export interface RoutesQuestion {
  readonly layout: MapLayout;
  readonly links: readonly GameLink[];
}

/** A few hundred take about a tenth of a second, and the time grows faster than their number. */
const FOUND_ON_THE_PAGE = 400;

const useFound = create<{ readonly routes: Routes | undefined }>()(() => ({ routes: undefined }));

let helper: Helper<RoutesQuestion, SentRoutes | undefined> | undefined;
let isAsked = false;

function start(): typeof helper {
  const started = startHelper<RoutesQuestion, SentRoutes | undefined>(script);
  if (!started) return undefined;
  started.hear = (sent) => {
    isAsked = false;
    if (sent) useFound.setState({ routes: receiveRoutes(sent) });
  };
  // The next layout starts another.
  started.lost = () => {
    isAsked = false;
    helper = undefined;
  };
  return started;
}

/**
 * One question at a time: what is found for a layout that is gone still holds for all that has not moved since.
 * @param known what has been found when this is asked
 */
function ask(question: RoutesQuestion, known: Routes | undefined): void {
  if (isAsked || known !== useFound.getState().routes) return;
  helper ??= start();
  if (!helper) return;
  isAsked = true;
  helper.put(question);
}

/** Each arrow by itself, whatever stands in its way. */
function straight(layout: MapLayout, links: Iterable<GameLink>): Routes {
  const rects = matRects(layout);
  const found = new Map<LinkId, Route>();
  for (const { id, from, to } of links) {
    const [a, b] = [shownAs(layout, from), shownAs(layout, to)];
    const start = a === undefined ? undefined : rects.get(a);
    const end = b === undefined || b === a ? undefined : rects.get(b);
    if (start && end) found.set(id, elbow(start, end));
  }
  return found;
}

const NO_ROUTES: Routes = new Map();

export function useRoutes(layout: MapLayout, links: ReadonlyMap<LinkId, GameLink>): Routes {
  const tidied = useTidying((state) => state.routes);
  const found = useFound((state) => state.routes);
  const seen = useRef({ tidied, found });
  const last = useRef(NO_ROUTES);
  const routes = useMemo(() => {
    const fresh = [
      tidied === seen.current.tidied ? undefined : tidied,
      found === seen.current.found ? undefined : found,
    ];
    seen.current = { tidied, found };
    const before = fresh.find((sent) => sent !== undefined) ?? last.current;
    last.current = before;
    if (links.size > FOUND_ON_THE_PAGE && unrouted(layout, links.values(), before) > FOUND_ON_THE_PAGE) {
      return undefined;
    }
    last.current = routesOf(layout, links.values(), before);
    return last.current;
  }, [layout, links, tidied, found]);
  useEffect(() => {
    // Once more when what has been found is for a layout that is gone.
    if (!routes) ask({ layout, links: [...links.values()] }, found);
  }, [routes, layout, links, found]);
  return useMemo(() => routes ?? straight(layout, links.values()), [routes, layout, links]);
}
