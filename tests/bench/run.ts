/**
 * npm run bench: how long everything takes, on games of three sizes, beside general-purpose libraries on the same questions; then
 * how long printed and tidied maps take. With --maps the latter alone.
 */
import loadHighs from 'highs';
import { arrangementTable } from './arrangement-rows.ts';
import { ENGINE_ROWS } from './engine-rows.ts';
import { FINDING_ROWS } from './finding-rows.ts';
import { lessonGame } from './games.ts';
import { solverRows } from './solver-rows.ts';
import { tableOf } from './table.ts';

if (!process.argv.includes('--maps')) {
  const games = [30, 300, 3000].map((size) => lessonGame(size));
  const rows = [...ENGINE_ROWS, ...FINDING_ROWS, ...solverRows(await loadHighs())];
  for (const line of tableOf(games, rows)) console.log(line);
  console.log('');
}
for (const line of arrangementTable()) console.log(line);
