import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readGame } from '../../../src/game/read.ts';
import { EXAMPLES } from '../../../src/words/examples.ts';

const FOLDER = 'public/games';
const ENDING = '.latchmap.json';

test('every file of the examples is offered, in its own words', () => {
  const files = readdirSync(FOLDER)
    .filter((name) => name.endsWith(ENDING))
    .map((name) => name.slice(0, -ENDING.length));
  expect(EXAMPLES.map(({ slug }) => slug).sort()).toEqual(files.sort());
  for (const { slug, title, summary } of EXAMPLES) {
    const result = readGame(readFileSync(`${FOLDER}/${slug}${ENDING}`, 'utf8'), { newId: () => 'new' });
    expect(result.ok && result.document.game.head).toMatchObject({ title, summary });
  }
});
