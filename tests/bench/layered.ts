/** Printed pages beside a general layered layout of the same games, as one table: npm run -s layered */
import type { Game } from '../../src/game/model.ts';
import { gameOf, SLUGS } from '../games/example.ts';
import { randomPageGame } from '../random-page-game.ts';
import { beside, type Measured } from '../reference/beside-layered.ts';

const games: readonly (readonly [string, Game])[] = [
  ...SLUGS.map((slug) => [slug, gameOf(slug)] as const),
  ...[15, 25, 35].map((steps) => [`random, seed ${steps}`, randomPageGame(steps, { steps })] as const),
];

const one = (value: number) => String(Math.round(value * 10) / 10);
const pair = (spine: Measured, layered: Measured | undefined, of: (from: Measured) => number) =>
  `${one(of(spine))} / ${layered ? one(of(layered)) : 'not found'}`;

console.log(
  '| A4, page with a spine / layered layout | steps | links | smallest name, pt | crossings | lines on lines or walls | lines through texts or areas | told at both ends | pages |',
);
console.log('|---|---|---|---|---|---|---|---|---|');
for (const [name, game] of games) {
  const { steps, links, spine, layered } = await beside(game, 120);
  const cells = [
    steps,
    links,
    ...[
      (from: Measured) => from.names,
      (from: Measured) => from.crossings,
      (from: Measured) => from.onEachOther,
      (from: Measured) => from.through,
      (from: Measured) => from.told,
      (from: Measured) => from.pages,
    ].map((of) => pair(spine, layered, of)),
  ];
  console.log(`| ${name} | ${cells.join(' | ')} |`);
}
