/** npm run bench: how long everything takes, on games of three sizes, beside general-purpose libraries on the same questions. */
import loadHighs from 'highs';
import { ENGINE_ROWS } from './engine-rows.ts';
import { FINDING_ROWS } from './finding-rows.ts';
import { lessonGame } from './games.ts';
import { solverRows } from './solver-rows.ts';
import { tableOf } from './table.ts';

const games = [30, 300, 3000].map((size) => lessonGame(size));
for (const line of tableOf(games, [...ENGINE_ROWS, ...FINDING_ROWS, ...solverRows(await loadHighs())]))
  console.log(line);
