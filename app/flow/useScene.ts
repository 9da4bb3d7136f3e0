/** Everything that the map is drawn from: game, layout, routes, what the analysis says, and how it is looked at. */
import { useMemo, useRef } from 'react';
import type { LinkId, NodeId } from '../../src/game/model.ts';
import type { Route } from '../../src/map/layout.ts';
import { useSimulation } from '../engine/simulation.ts';
import { useAssessmentWhenThere, useJudging } from '../judged/judged.ts';
import { useGame } from '../store/game.ts';
import { useLayout } from '../store/layout.ts';
import { useView } from '../store/view.ts';
import type { Look } from './card.ts';
import type { Scene } from './cards.ts';
import { type ChainShown, chainOf, type HeatShown, heatOf } from './heat.ts';
import { useRoutes } from './links/useRoutes.ts';

export interface CanvasScene extends Scene {
  readonly routes: ReadonlyMap<LinkId, Route>;
  readonly stopping: ReadonlySet<LinkId>;
  /** Where the time goes, while that is shown and known. */
  readonly heat: HeatShown | undefined;
  readonly chain: ChainShown | undefined;
}

const NO_LOOKS: ReadonlyMap<NodeId, Look> = new Map();
const NOTHING: ReadonlySet<string> = new Set();

export function useScene(): CanvasScene {
  const game = useGame((state) => state.game);
  const selected = useView((state) => state.nodes);
  const lifted = useView((state) => state.lifted);
  const moments = useView((state) => state.moments);
  const heatOn = useView((state) => state.heat);
  const reading = useView((state) => state.reading);
  const chainOn = useView((state) => state.heat && state.chain);
  const simulation = useSimulation();
  const layout = useLayout();
  const judging = useJudging();
  const assessment = useAssessmentWhenThere();

  const heat = useMemo(
    () => (heatOn ? heatOf(simulation, reading) : undefined),
    [heatOn, simulation, reading],
  );
  const chain = useMemo(() => (chainOn ? chainOf(simulation) : undefined), [chainOn, simulation]);
  const fallen = useMemo(
    () => (judging && assessment ? judging.fallenWith(assessment, lifted) : NOTHING),
    [judging, assessment, lifted],
  );
  const last = useRef(NO_LOOKS);
  const always = useMemo(() => {
    if (!judging || !assessment) return NO_LOOKS;
    const shown = { assessment, heat: heat?.heat, fallen, chain: chain?.steps };
    last.current = judging.looksOf(shown, last.current);
    return last.current;
  }, [judging, assessment, heat, fallen, chain]);
  // What is lifted comes before the minute that is shown.
  const at = fallen.size === 0 ? moments : undefined;
  const looks = useMemo(() => (at && judging ? judging.looksAt(always, at) : always), [judging, always, at]);
  const stopping = useMemo(
    () => (judging && assessment ? judging.stoppingLinks(assessment) : NOTHING),
    [judging, assessment],
  );
  const routes = useRoutes(layout, game.links);
  return { game, layout, looks, selected, lifted, routes, stopping, heat, chain };
}
