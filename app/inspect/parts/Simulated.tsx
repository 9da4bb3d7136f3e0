/** A step in simulated lessons: when teams are done with it, who waits beside it, what it costs the lesson. */
import type { GameNode } from '../../../src/game/model.ts';
import {
  costsLesson,
  decidesEnd,
  doneBy,
  SIMULATED,
  waitingBeside,
} from '../../../src/words/simulated-step.ts';
import { figuresWithCosts, useSimulation } from '../../engine/simulation.ts';
import { Section } from '../Section.tsx';

export function Simulated({ node }: { node: GameNode }) {
  const state = useSimulation();
  const { figures } = state;
  const i = figures?.clock.network.index.get(node.id);
  if (!figures || i === undefined || figures.clock.network.isStep[i] !== 1) return null;
  const { reached, idleWhile } = figures.simulated;
  const at = (values: Float64Array) => values[i] ?? Number.POSITIVE_INFINITY;
  return (
    <Section title={SIMULATED.heading}>
      <p>{doneBy({ p10: at(reached.p10), median: at(reached.median), p90: at(reached.p90) })}</p>
      <p>{waitingBeside(idleWhile[i] ?? 0)}</p>
      <Costs node={node} />
    </Section>
  );
}

/** These take longer to work out: the last ones stand until then. */
function Costs({ node }: { node: GameNode }) {
  const known = figuresWithCosts(useSimulation());
  const i = known?.figures.clock.network.index.get(node.id);
  const costs = known?.figures.costs;
  if (!costs || i === undefined) return null;
  return (
    <>
      <p>{costsLesson(costs.minutes[i] ?? 0)}</p>
      <p>{decidesEnd(costs.decides[i] ?? 0)}</p>
      {known?.isOld && <p className="hint">{SIMULATED.old}</p>}
    </>
  );
}
