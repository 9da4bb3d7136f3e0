/** Games and bad files for the browser tests, invented here. */
import { readFileSync } from 'node:fs';

export const example = (slug: string): string => readFileSync(`public/games/${slug}.latchmap.json`, 'utf8');

interface PlainNode {
  readonly id: string;
  readonly kind: string;
  name: string;
  readonly [field: string]: unknown;
}

/** A hiding place with a clue, a tin with a number lock, and in it the prize. */
export const SMALL = {
  format: 'latchmap',
  version: 1,
  id: 'smallgame1',
  revision: 3,
  title: 'The tea tin',
  nodes: [
    { id: 'shelf', kind: 'place', name: 'Shelf', at: { x: 0, y: 0 } },
    { id: 'note', kind: 'clue', name: 'Torn note', in: 'shelf' },
    { id: 'sum', kind: 'puzzle', name: 'Add the leaves', answer: '417', at: { x: 320, y: 0 } },
    { id: 'tin', kind: 'container', name: 'Tea tin', at: { x: 640, y: 0 } },
    { id: 'lock', kind: 'fastener', name: 'Tin lock', on: 'tin', type: 'number', code: '417' },
    { id: 'prize', kind: 'prize', name: 'Biscuits', in: 'tin' },
  ] as PlainNode[],
  links: [
    { id: 'l1', from: 'note', to: 'sum' },
    { id: 'l2', from: 'sum', to: 'lock' },
  ],
};

type Change = (game: Record<string, unknown> & typeof SMALL) => unknown;

/** The small game with something done to it. */
export function changed(change: Change): string {
  const game = structuredClone(SMALL);
  change(game);
  return JSON.stringify(game);
}

export interface BadFile {
  readonly what: string;
  readonly text: string;
  /** Words that the answer has to hold, so that a teacher knows what and where. */
  readonly says: RegExp;
}

export const BAD_FILES: readonly BadFile[] = [
  { what: 'no JSON', text: 'PK\u0003\u0004 not a game', says: /JSON|game/ },
  { what: 'nothing at all', text: '', says: /empty/ },
  { what: 'another JSON', text: '{"name":"a shopping list","items":[1,2,3]}', says: /game/ },
  {
    what: 'a newer version',
    text: changed((game) => Object.assign(game, { version: 2 })),
    says: /version|newer/,
  },
  {
    what: 'a link to nowhere',
    text: changed((game) => game.links.push({ id: 'l3', from: 'note', to: 'gone' })),
    says: /gone/,
  },
  {
    what: 'two nodes of one id',
    text: changed((game) => game.nodes.push({ id: 'note', kind: 'clue', name: 'Second note' })),
    says: /Second note/,
  },
  {
    what: 'a ring of holders',
    text: changed((game) =>
      game.nodes.push(
        { id: 'a', kind: 'container', name: 'Outer bag', in: 'b' },
        { id: 'b', kind: 'container', name: 'Inner bag', in: 'a' },
      ),
    ),
    says: /Outer bag.*Inner bag|Inner bag.*Outer bag/,
  },
  { what: 'a NaN', text: changed(() => undefined).replace('"x":320', '"x":NaN'), says: /game|JSON/ },
  {
    what: 'a number beyond all',
    text: changed(() => undefined).replace('"x":320', '"x":1e999'),
    says: /Add the leaves/,
  },
  {
    what: 'nested without end',
    text: `${'['.repeat(100_000)}${']'.repeat(100_000)}`,
    says: /./,
  },
  {
    what: 'estimates out of order',
    text: changed((game) => Object.assign(game.nodes[2] ?? {}, { minutes: { low: 9, likely: 5, high: 7 } })),
    says: /Add the leaves/,
  },
];
