/**
 * npm run bench: how long everything takes, on games of three sizes, beside general-purpose libraries on the same questions; then
 * simulated lessons, beside the same on objects and lists; which lock goes where, beside other programs; then how long printed and
 * tidied maps take. With --engine, --guess, --simulation, --kit or --maps these alone.
 */
import loadHighs from 'highs';
import { arrangementTable } from './arrangement-rows.ts';
import { ENGINE_ROWS } from './engine-rows.ts';
import { FINDING_ROWS } from './finding-rows.ts';
import { lessonGame } from './games.ts';
import { GUESS_ROWS } from './guess-rows.ts';
import { kitRows } from './kit-rows.ts';
import { SIMULATION_ROWS } from './simulation-rows.ts';
import { solverRows } from './solver-rows.ts';
import { tableOf } from './table.ts';

const TABLES = new Map<string, () => Promise<string[]> | string[]>([
  [
    'engine',
    async () => {
      const rows = [...ENGINE_ROWS, ...FINDING_ROWS, ...solverRows(await loadHighs())];
      return tableOf(sized(30, 300, 3000), rows);
    },
  ],
  ['guess', () => tableOf(sized(60, 300, 3000), GUESS_ROWS)],
  ['simulation', () => tableOf(sized(60, 300, 3000), SIMULATION_ROWS)],
  ['kit', async () => tableOf(sized(60, 300), kitRows(await loadHighs()))],
  ['maps', arrangementTable],
]);

function sized(...sizes: readonly number[]) {
  return sizes.map((size) => lessonGame(size));
}

const asked = [...TABLES.keys()].filter((name) => process.argv.includes(`--${name}`));
for (const [name, table] of TABLES) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  for (const line of await table()) console.log(line);
  console.log('');
}
