/** Where the time goes: two readings of simulated lessons, and the chain that decides the end. */
import { bottleneckOf } from '../../src/engine/simulation/bottleneck.ts';
import type { Figures } from '../../src/engine/simulation/figures.ts';
import type { NodeId } from '../../src/game/model.ts';
import { HEAT } from '../../src/words/canvas.ts';
import { figuresWithCosts, type SimulationState } from '../engine/simulation.ts';
import type { Reading } from '../store/view.ts';
import type { Heat } from './card.ts';
import { scaleEnd } from './scale.ts';

/** What one reading shows. */
export interface HeatShown {
  readonly figures: Figures;
  /** Of the game before the last change. */
  readonly isOld: boolean;
  /** Minutes at the right end of the scale; undefined when no step has any, but for what is there for fun. */
  readonly end: number | undefined;
  /** The step with most of them. */
  readonly most: number | undefined;
  readonly heat: ReadonlyMap<NodeId, Heat>;
}

/** Of less nothing is shown: three seconds. */
const LEAST = 0.05;
/** Old figures keep to the pale end of the scale. */
const PALE = 1 / 3;

/** Undefined: nothing of it is known yet. */
export function heatOf(simulation: SimulationState, reading: Reading): HeatShown | undefined {
  const shown = reading === 'cost' ? figuresWithCosts(simulation) : simulation.figures && simulation;
  if (!shown?.figures) return undefined;
  const { figures, isOld } = shown;
  const values = reading === 'cost' ? figures.costs?.minutes : figures.simulated.idleWhile;
  if (!values) return undefined;
  const { clock } = figures;
  const most = bottleneckOf(clock, values, LEAST);
  const end = most === undefined ? undefined : scaleEnd(values[most] ?? 0);
  const heat = new Map<NodeId, Heat>();
  clock.network.ids.forEach((id, i) => {
    const value = values[i] ?? 0;
    if (value < LEAST) return;
    // What is there for fun has its figure, and stays at the pale end.
    const share = end === undefined || clock.forFun[i] === 1 ? 0 : value / end;
    heat.set(id, { share: share * (isOld ? PALE : 1), text: HEAT.minutes(value) });
  });
  return { figures, isOld, end, most, heat };
}

/** The steps that decide the end, and for each thing on the way to it what follows there. */
export interface ChainShown {
  readonly steps: ReadonlySet<NodeId>;
  readonly next: ReadonlyMap<NodeId, NodeId>;
}

export function chainOf({ figures }: SimulationState): ChainShown | undefined {
  if (!figures) return undefined;
  const { ids, isStep } = figures.clock.network;
  const nodes = Array.from(figures.chain);
  const next = new Map(nodes.slice(1).map((node, i) => [ids[nodes[i] ?? 0] ?? '', ids[node] ?? '']));
  return { steps: new Set(nodes.filter((node) => isStep[node] === 1).map((node) => ids[node] ?? '')), next };
}
