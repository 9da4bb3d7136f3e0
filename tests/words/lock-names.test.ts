/** A lock is called alike everywhere: by its own name where that says more than its type, its box and its key, else by type and box. */
import { expect, it } from 'vitest';
import { sayer } from '../../src/words/say.ts';
import { formTitle } from '../../src/words/screen-form.ts';
import { plain } from '../../src/words/sentence.ts';
import { gameOf } from '../game-of.ts';

const game = gameOf(
  [
    { id: 'tin', kind: 'container', name: 'Green tin' },
    { id: 'jar', kind: 'container', name: 'Jar' },
    { id: 'plain', kind: 'fastener', on: 'tin', type: 'number', name: 'Green tin lock' },
    { id: 'keyed', kind: 'fastener', on: 'tin', type: 'key', name: 'Red tag' },
    { id: 'own', kind: 'fastener', on: 'jar', type: 'key', name: 'Small brass padlock' },
    { id: 'twin', kind: 'fastener', on: 'tin', type: 'word', name: 'Old lock' },
    { id: 'twin too', kind: 'fastener', on: 'jar', type: 'word', name: 'Old lock' },
    { id: 'tag', kind: 'key', name: 'Red tag' },
  ],
  ['tag>keyed'],
);

it.each([
  ['plain', 'the number lock on Green tin', 'Number lock on Green tin'],
  ['keyed', 'the key lock on Green tin', 'Key lock on Green tin'],
  ['own', 'Small brass padlock', 'Small brass padlock'],
  ['twin', 'Old lock on Green tin', 'Old lock on Green tin'],
  ['twin too', 'Old lock on Jar', 'Old lock on Jar'],
])('%s is %s', (id, inSentence, title) => {
  const node = game.nodes.get(id);
  expect(plain(sayer(game).name(id))).toBe(inSentence);
  expect(plain(sayer(game).title(id))).toBe(title);
  expect(node && formTitle(game, node)).toBe(title);
});
