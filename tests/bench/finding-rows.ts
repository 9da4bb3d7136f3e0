/** Findings alone, and the whole of what runs after an edit in the page. */
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { assess } from '../../src/findings/assess.ts';
import { contextOf } from '../../src/findings/context.ts';
import { findingsOf } from '../../src/findings/index.ts';
import type { Row } from './table.ts';

export const FINDING_ROWS: readonly Row[] = [
  {
    name: 'findings',
    task: (game) => {
      const network = compile(game);
      const measures = measure(network);
      return () => findingsOf(contextOf(game, network, measures));
    },
  },
  { name: 'all after an edit, with findings', task: (game) => () => assess(game) },
];
