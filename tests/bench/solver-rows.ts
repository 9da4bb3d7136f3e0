/** The same questions put to the general-purpose libraries of tests/reference. */
import type { Highs } from 'highs';
import { fewestByInteger } from '../reference/integer-program.ts';
import { rulesOf } from '../reference/rules.ts';
import { SolvabilityBySat } from '../reference/satisfiability.ts';
import type { Row } from './table.ts';

/** Beyond these the question takes the library minutes. */
const MOST_NODES = { mustDo: 300, fewest: 30 };

export function solverRows(highs: Highs): readonly Row[] {
  return [
    {
      name: 'satisfiability solver: taking in the rules',
      beside: 'compile',
      task: (game) => {
        const rules = rulesOf(game);
        return () => new SolvabilityBySat(rules);
      },
    },
    {
      // Asked again, the solver remembers the answer: so each time anew, rules and all.
      name: 'satisfiability solver: rules and reach',
      beside: 'reach',
      task: (game) => {
        const rules = rulesOf(game);
        return () => new SolvabilityBySat(rules).isSolvable();
      },
    },
    {
      name: 'satisfiability solver: must-do, rules known',
      beside: 'must-do',
      mostNodes: MOST_NODES.mustDo,
      task: (game) => {
        const rules = rulesOf(game);
        const sat = new SolvabilityBySat(rules);
        return () => rules.steps.filter((step) => !sat.isSolvable(step));
      },
    },
    {
      name: 'integer programme: fewest',
      beside: 'fewest',
      mostNodes: MOST_NODES.fewest,
      task: (game) => {
        const rules = rulesOf(game);
        return () => fewestByInteger(highs, rules);
      },
    },
  ];
}
