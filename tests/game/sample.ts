/** A small legal file for tests, and ways to change it. */
import type { Game } from '../../src/game/model.ts';
import { type ReadResult, readGame } from '../../src/game/read.ts';

/** A node or link, right or wrong. */
export interface Member {
  id?: unknown;
  [field: string]: unknown;
}

/** A shelf with a box in a box, each with a lock; a key and a clue; a puzzle that gives a code; a prize. */
export function sampleFile() {
  return {
    format: 'latchmap',
    version: 1,
    id: 'sample',
    revision: 4,
    title: 'The tea caddy',
    nodes: [
      { id: 'shelf', kind: 'place', name: 'Shelf', at: { x: 40, y: 80 } },
      { id: 'chest', kind: 'container', name: 'Chest', in: 'shelf', at: { x: 0, y: 0 } },
      { id: 'tin', kind: 'container', name: 'Tin', in: 'chest', at: { x: 0, y: 0 } },
      { id: 'wheels', kind: 'fastener', name: 'Wheels', on: 'chest', type: 'number', code: '472' },
      { id: 'padlock', kind: 'fastener', name: 'Brass', on: 'tin', type: 'key' },
      { id: 'brass', kind: 'key', name: 'Brass', in: 'chest', at: { x: 0, y: 1 } },
      { id: 'note', kind: 'clue', name: 'Note', in: 'shelf', at: { x: 0, y: 1 } },
      { id: 'sum', kind: 'puzzle', name: 'Sum', answer: '472', at: { x: 300, y: 80 } },
      { id: 'gold', kind: 'prize', name: 'Gold', in: 'tin' },
    ] as Member[],
    links: [
      { id: 'l1', from: 'note', to: 'sum' },
      { id: 'l2', from: 'sum', to: 'wheels' },
      { id: 'l3', from: 'brass', to: 'padlock' },
    ] as Member[],
  };
}

export function read(file: unknown): ReadResult {
  return readGame(typeof file === 'string' ? file : JSON.stringify(file), { newId: () => 'given' });
}

export function sampleGame(): Game {
  const result = read(sampleFile());
  if (!result.ok) throw new Error('The sample is not legal.');
  return result.document.game;
}
