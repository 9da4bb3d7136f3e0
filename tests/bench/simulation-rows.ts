/** The simulation: from the first, coarse answer to what each step costs; and the same runs on objects and lists. */
import { compile } from '../../src/engine/network.ts';
import { Batch } from '../../src/engine/simulation/batch.ts';
import { type Clock, clockOf } from '../../src/engine/simulation/clock.ts';
import { costsOf } from '../../src/engine/simulation/costs.ts';
import { paceOf } from '../../src/engine/simulation/pace.ts';
import { PLAIN } from '../../src/engine/simulation/rules.ts';
import { whatHelps } from '../../src/helps/what-helps.ts';
import { plainGame, simulatePlainly } from '../reference/plain-simulation.ts';
import { quantileChance, seededChance } from '../reference/seeded-chance.ts';
import type { Row } from './table.ts';

const RUNS = 2000;
const COARSE = 200;

export const SIMULATION_ROWS: readonly Row[] = [
  { name: `simulation, first answer: ${COARSE} runs`, task: onClock((clock) => simulate(clock, COARSE)) },
  { name: `simulation, ${RUNS} runs`, task: onClock((clock) => simulate(clock, RUNS)) },
  {
    name: `what each step costs, ${RUNS} runs`,
    mostNodes: 60,
    task: onClock((clock) => [...costsOf(clock)]),
  },
  {
    name: `what helps most, listed from ${RUNS} runs`,
    mostNodes: 300,
    task: (game) => () => [...whatHelps(game)],
  },
  {
    name: `the pace of locks and what can be given away, ${RUNS} runs`,
    mostNodes: 300,
    task: onClock((clock) => [...paceOf(clock)]),
  },
  {
    name: `on objects and lists, ${RUNS} runs`,
    beside: `simulation, ${RUNS} runs`,
    mostNodes: 60,
    task: (game) => {
      const plain = plainGame(game);
      return () => simulatePlainly(plain, seededChance(1), RUNS);
    },
  },
  {
    name: `on objects and lists, each quantile by a library, ${RUNS} runs`,
    beside: `simulation, ${RUNS} runs`,
    mostNodes: 60,
    task: (game) => {
      const plain = plainGame(game);
      return () => simulatePlainly(plain, quantileChance(1), RUNS);
    },
  },
];

function simulate(clock: Clock, runs: number) {
  const batch = new Batch(clock, PLAIN);
  batch.run(runs);
  return batch.result();
}

function onClock(run: (clock: Clock) => unknown): Row['task'] {
  return (game) => {
    const clock = clockOf(game, compile(game));
    return () => run(clock);
  };
}
