import { fireEvent } from '@testing-library/dom';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { listenToClipboard, paste } from '../../../app/commands/clipboard.ts';
import { fragmentText, readFragment } from '../../../app/commands/fragment-text.ts';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { copyOf } from '../../../src/game/edits/copies.ts';
import { gameOf, LINKS, NODES, openGame, past, theGame } from '../open-game.ts';

beforeEach(() => openGame());

describe('a copied part as text', () => {
  const game = gameOf(NODES, LINKS);

  test('comes back as it was, without what it lay in', () => {
    const fragment = copyOf(game, ['tin', 'sum']);
    const back = readFragment(fragmentText(game, fragment));
    expect(back?.nodes.map((node) => node.id).sort()).toEqual(['lock', 'medal', 'sum', 'tin']);
    expect(back?.links).toEqual(fragment.links);
    expect(back?.nodes.find((node) => node.id === 'tin')).toEqual({
      id: 'tin',
      kind: 'container',
      name: 'Green tin',
    });
  });

  test('a lock alone comes back alone', () => {
    const back = readFragment(fragmentText(game, copyOf(game, ['lock'])));
    expect(back?.nodes.map((node) => node.id)).toEqual(['lock']);
  });

  test.each([
    '',
    'words',
    '{}',
    '[1, 2]',
    '{"format": "latchmap", "version": 9, "nodes": [], "links": []}',
    '{"format": "latchmap", "version": 1, "nodes": [{"id": "a", "kind": "spell", "name": ""}], "links": []}',
    '{"format": "latchmap", "version": 1, "nodes": [], "links": [{"id": "l", "from": "a", "to": "b"}]}',
  ])('nothing is taken from %s', (text) => {
    expect(readFragment(text)).toBeUndefined();
  });
});

describe('copy, cut and paste', () => {
  let stop: () => void;
  beforeEach(() => {
    stop = listenToClipboard();
  });
  afterEach(() => stop());

  function send(type: 'copy' | 'cut' | 'paste', text = ''): { text: string; taken: boolean } {
    const data = new DataTransfer();
    data.setData('text/plain', text);
    const event = new ClipboardEvent(type, { clipboardData: data, bubbles: true, cancelable: true });
    const taken = !fireEvent(document.body, event);
    return { text: data.getData('text/plain'), taken };
  }

  test('into the selected box, as one undo, and selected', () => {
    useView.getState().select(['note']);
    const { text, taken } = send('copy');
    expect(taken).toBe(true);
    useView.getState().select(['tin']);
    send('paste', text);
    const [copy] = useView.getState().nodes;
    expect(theGame().nodes.get(copy ?? '')).toMatchObject({ kind: 'clue', name: 'Torn note', in: 'tin' });
    expect(past()).toBe(1);
  });

  test('cut takes it away, paste brings it back under a new id', () => {
    useView.getState().select(['sum']);
    const { text } = send('cut');
    expect(theGame().nodes.has('sum')).toBe(false);
    useView.getState().select([]);
    send('paste', text);
    const sums = [...theGame().nodes.values()].filter((node) => node.name === 'Add the rows');
    expect(sums).toHaveLength(1);
    expect(sums[0]?.id).not.toBe('sum');
  });

  test('a lock without a box is refused, and the head is told why', () => {
    useView.getState().select(['lock']);
    const { text } = send('copy');
    useView.getState().select([]);
    expect(paste(text)).toBe(false);
    expect(useGame.getState().refusal?.reason).toBe('needsContainer');
  });

  test('nothing selected: the browser copies what it likes', () => {
    expect(send('copy').taken).toBe(false);
  });
});
