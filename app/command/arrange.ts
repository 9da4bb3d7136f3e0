/** Gives the games in files the positions that they lack: npm run arrange -- [--all] FILE… With --all everything is arranged anew. */
import { readFileSync, writeFileSync } from 'node:fs';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import type { Point } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { placeMissing, playNumbers } from '../../src/map/place-missing.ts';

const all = process.argv.includes('--all');
for (const path of process.argv.slice(2).filter((argument) => argument !== '--all')) {
  const text = readFileSync(path, 'utf8');
  const result = readGame(text, { newId: () => '' });
  if (!result.ok) {
    console.error(`${path}: this is no game that can be read; npm run check says why.`);
    process.exitCode = 2;
    continue;
  }
  const { game } = result.document;
  const network = compile(game);
  const numbers = playNumbers(network, measure(network));
  const { positions } = placeMissing(all ? { ...game, positions: new Map() } : game, numbers);
  // Into the file as it is, so that nothing else in it changes.
  const file: { nodes: { id: string; at?: Point }[] } = JSON.parse(text);
  for (const node of file.nodes) {
    const at = positions.get(node.id);
    if (at) node.at = { x: at.x, y: at.y };
  }
  writeFileSync(path, `${JSON.stringify(file, null, 2)}\n`);
}
