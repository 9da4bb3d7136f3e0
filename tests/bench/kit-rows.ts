/** Which lock goes where: a cupboard of forty locks for six teams, and the same assignments put to general-purpose libraries. */
import type { Highs } from 'highs';
import { munkres } from 'munkres';
import type { Game } from '../../src/game/model.ts';
import { NEVER, SHORT } from '../../src/kit/fit/costs.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import type { Problem } from '../../src/kit/fit/supply.ts';
import { emptyKit, type Kit, type KitItem } from '../../src/kit/model.ts';
import { needsOf } from '../../src/kit/needs.ts';
import { tableOf as costsOf, leastByHighs } from '../reference/assignment-program.ts';
import type { Row } from './table.ts';

const LOCKS = 40;
const TEAMS = 6;

/** Forty locks of the types that the game asks for, in items of two and of three, every third with keys alike. */
function cupboardFor(game: Game): Kit {
  const types = [...new Set(needsOf(game, TEAMS).locks.map(({ type }) => type))].sort();
  const items: KitItem[] = [];
  for (let left = LOCKS; left > 0; ) {
    const i = items.length;
    const count = Math.min(left, 2 + (i % 2));
    const type = types[i % types.length] ?? 'key';
    items.push({
      id: `i${i}`,
      label: '',
      count,
      what: 'lock',
      type,
      ...(i % 3 === 0 && { keyedAlike: 'red' }),
    });
    left -= count;
  }
  return { ...emptyKit, items };
}

function problemsIn(game: Game): Problem[] {
  const problems: Problem[] = [];
  fitKit(game, cupboardFor(game), { teams: TEAMS, solved: (problem) => problems.push(problem) });
  return problems.filter(({ rows }) => rows.length > 0);
}

export function kitRows(highs: Highs): readonly Row[] {
  const fitRow = 'forty locks for six teams';
  return [
    {
      name: fitRow,
      task: (game) => {
        const kit = cupboardFor(game);
        return () => fitKit(game, kit, { teams: TEAMS });
      },
    },
    {
      name: 'the same after a small change',
      beside: fitRow,
      task: (game) => {
        const kit = cupboardFor(game);
        const previous = fitKit(game, kit, { teams: TEAMS });
        return () => fitKit(game, kit, { teams: TEAMS, previous });
      },
    },
    {
      name: 'munkres: the same assignments, costs known',
      beside: fitRow,
      mostNodes: 300,
      task: (game) => {
        const tables = problemsIn(game).map((problem) =>
          costsOf(problem).map((row) => row.map((cost) => Math.min(cost, 100 * SHORT))),
        );
        return () => tables.map((table) => munkres(table));
      },
    },
    {
      name: 'linear programme: the same assignments, costs known',
      beside: fitRow,
      mostNodes: 300,
      task: (game) => {
        const tables = problemsIn(game).map(costsOf);
        return () => tables.map((table) => leastByHighs(highs, table, NEVER));
      },
    },
  ];
}
