/** Everything that the map is drawn from: game, layout, routes, what the analysis says, and how it is looked at. */
import { useMemo, useRef } from 'react';
import type { LinkId, NodeId } from '../../src/game/model.ts';
import type { Route } from '../../src/map/layout.ts';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { useLayout } from '../store/layout.ts';
import { useView } from '../store/view.ts';
import type { Look } from './card.ts';
import type { Scene } from './cards.ts';
import { useRoutes } from './links/useRoutes.ts';
import { fallenWith, heatEndOf, heatOf, looksOf, stoppingLinks } from './looks.ts';

export interface CanvasScene extends Scene {
  readonly routes: ReadonlyMap<LinkId, Route>;
  readonly stopping: ReadonlySet<LinkId>;
  /** Minutes at the right end of the time overlay; undefined when there is nothing to show. */
  readonly heatEnd: number | undefined;
}

const NO_LOOKS: ReadonlyMap<NodeId, Look> = new Map();

export function useScene(): CanvasScene {
  const game = useGame((state) => state.game);
  const selected = useView((state) => state.nodes);
  const lifted = useView((state) => state.lifted);
  const moments = useView((state) => state.moments);
  const heatOn = useView((state) => state.heat);
  const layout = useLayout();
  const assessment = useAssessment();

  const heat = useMemo(() => (heatOn ? heatOf(assessment) : undefined), [heatOn, assessment]);
  const fallen = useMemo(() => fallenWith(assessment, lifted), [assessment, lifted]);
  const last = useRef(NO_LOOKS);
  const looks = useMemo(() => {
    last.current = looksOf({ assessment, heat, fallen, moments }, last.current);
    return last.current;
  }, [assessment, heat, fallen, moments]);
  const stopping = useMemo(() => stoppingLinks(assessment), [assessment]);
  const heatEnd = useMemo(() => heatEndOf(assessment), [assessment]);
  const routes = useRoutes(layout, game.links);
  return { game, layout, looks, selected, lifted, routes, stopping, heatEnd };
}
