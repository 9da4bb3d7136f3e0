/** The engine's rows: each analysis alone, and all of them together. */
import { longestChain } from '../../src/engine/chain.ts';
import { dragOf } from '../../src/engine/drag.ts';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { flowOf } from '../../src/engine/flow.ts';
import { measure } from '../../src/engine/measures.ts';
import { mustDoSteps } from '../../src/engine/must-do.ts';
import { compile } from '../../src/engine/network.ts';
import { orderOfPlay } from '../../src/engine/order-of-play.ts';
import { reach } from '../../src/engine/reach.ts';
import { tiedSteps } from '../../src/engine/ties.ts';
import { timesOf } from '../../src/engine/times.ts';
import { WhatIf } from '../../src/engine/what-if.ts';
import type { Game } from '../../src/game/model.ts';
import type { Row } from './table.ts';

export const ENGINE_ROWS: readonly Row[] = [
  { name: 'compile', task: (game) => () => compile(game) },
  { name: 'reach', task: onNetwork((network) => reach(network)) },
  { name: 'times', task: onNetwork((network) => timesOf(flowOf(network))) },
  {
    name: 'drag and ties',
    task: onNetwork((network, { flow, times, shortest }) => {
      const whatIf = new WhatIf(flow, times);
      const drag = dragOf(network, flow, whatIf, shortest);
      return tiedSteps(network, flow, whatIf, shortest, drag);
    }),
  },
  { name: 'must-do', task: onNetwork((network, { flow }) => mustDoSteps(network, flow)) },
  { name: 'longest chain', task: onNetwork((network, { flow }) => longestChain(network, flow)) },
  { name: 'order of play', task: onNetwork((network, { flow, times }) => orderOfPlay(network, flow, times)) },
  { name: 'all measures after an edit', task: (game) => () => measure(compile(game)) },
  { name: 'fewest', task: onNetwork((network, { measures }) => fewestSteps(network, measures)) },
];

function prepare(game: Game) {
  const network = compile(game);
  const flow = flowOf(network);
  const times = timesOf(flow);
  const measures = measure(network);
  return { network, flow, times, measures, shortest: measures.shortest };
}

type Prepared = ReturnType<typeof prepare>;

function onNetwork(run: (network: Prepared['network'], prepared: Prepared) => unknown): Row['task'] {
  return (game) => {
    const prepared = prepare(game);
    return () => run(prepared.network, prepared);
  };
}
