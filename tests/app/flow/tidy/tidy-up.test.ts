/** Tidying where no worker runs: on the page, in slices. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { command, situation } from '../../../../app/commands/registry.ts';
import { letGo, useDrag } from '../../../../app/flow/drag/held.ts';
import { placeUnplaced, tidyUp } from '../../../../app/flow/tidy/tidy-up.ts';
import { startPlacing } from '../../../../app/flow/tidy/unplaced.ts';
import { useGame } from '../../../../app/store/game.ts';
import { currentLayout } from '../../../../app/store/layout.ts';
import { type TidyingState, useTidying } from '../../../../app/store/tidying.ts';
import { useView } from '../../../../app/store/view.ts';
import { hasUnplaced, type NodeId, type Point } from '../../../../src/game/model.ts';
import { covered } from '../../../../src/map/outline.ts';
import { randomGame } from '../../../random-game.ts';
import { gameOf, LINKS, NODES, openGame, past, theGame } from '../../open-game.ts';

/** Everything on top of each other. */
const SCRAMBLED = new Map<NodeId, Point>([
  ['sill', { x: 40, y: 0 }],
  ['sum', { x: 60, y: 20 }],
]);

const MORE = [
  ...NODES,
  { id: 'desk', kind: 'place', name: 'Desk' } as const,
  { id: 'riddle', kind: 'puzzle', name: 'Riddle', answer: '9' } as const,
];

function scramble(extra: readonly [NodeId, Point][] = []): void {
  openGame({ ...gameOf(NODES, LINKS), positions: new Map([...SCRAMBLED, ...extra]) });
}

/** The moment at which it becomes so, before anything further is worked out. */
function until(is: (state: TidyingState) => boolean): Promise<void> {
  return new Promise((resolve) => {
    if (is(useTidying.getState())) return resolve();
    const stop = useTidying.subscribe((state) => {
      if (!is(state)) return;
      stop();
      resolve();
    });
  });
}

const finished = () => until(({ work }) => work === undefined);
const shown = () => until((state) => state.shown !== undefined);

beforeEach(() => {
  vi.stubGlobal('Worker', undefined);
  scramble();
});
afterEach(() => {
  useTidying.getState().stop?.();
  letGo();
  vi.unstubAllGlobals();
});

describe('asked for', () => {
  test('it is one edit, nothing covers anything, and one undo takes all back', async () => {
    const before = theGame();
    expect(covered(currentLayout())).not.toEqual([]);
    tidyUp();
    expect(useTidying.getState().work).toBe('asked');
    await finished();
    expect(past()).toBe(1);
    expect(covered(currentLayout())).toEqual([]);
    expect(theGame().nodes).toBe(before.nodes);
    useGame.getState().undo();
    expect(theGame().positions).toEqual(before.positions);
  });

  test('what is found first is shown, and is not yet in the game', async () => {
    const before = theGame();
    tidyUp();
    await shown();
    expect(theGame()).toBe(before);
    expect(covered(currentLayout())).toEqual([]);
    await finished();
    expect(useTidying.getState().shown).toBeUndefined();
  });

  test('an edit ends it, and nothing of it is in the game', async () => {
    tidyUp();
    await shown();
    useGame.getState().apply([{ type: 'rename', id: 'sum', name: 'Add the columns' }]);
    expect(useTidying.getState()).toMatchObject({ work: undefined, shown: undefined });
    await new Promise((rest) => setTimeout(rest, 50));
    expect(theGame().positions).toEqual(SCRAMBLED);
    expect(past()).toBe(1);
  });

  test('a hand that takes hold of something ends it', async () => {
    tidyUp();
    await shown();
    useDrag.setState({ held: { roots: ['sum'], moving: new Set(['sum']), positions: new Map() } });
    expect(useTidying.getState().work).toBeUndefined();
    expect(past()).toBe(0);
  });

  test('what is tidied already is told, until something else is done', async () => {
    tidyUp();
    await finished();
    tidyUp();
    await finished();
    expect(past()).toBe(1);
    expect(useTidying.getState().tidyAlready).toBe(theGame());
    tidyUp();
    expect(useTidying.getState().tidyAlready).toBeUndefined();
  });

  test('what is pinned stays, and keeps its pin', async () => {
    const pinned = { x: 60, y: 20, pinned: true };
    scramble([['sum', pinned]]);
    tidyUp();
    await finished();
    expect(theGame().positions.get('sum')).toEqual(pinned);
    expect(covered(currentLayout())).toEqual([]);
  });

  test('of a selection, what is not selected stays', async () => {
    const positions = new Map<NodeId, Point>([
      ...SCRAMBLED,
      ['desk', { x: 900, y: 700 }],
      ['riddle', { x: 910, y: 705 }],
    ]);
    openGame({ ...gameOf(MORE, LINKS), positions });
    tidyUp(new Set(['desk', 'riddle']));
    await finished();
    for (const [id, at] of SCRAMBLED) expect(theGame().positions.get(id)).toEqual(at);
    expect(theGame().positions.get('desk')).not.toEqual(positions.get('desk'));
  });

  test('a box that is opened meanwhile begins it anew', async () => {
    tidyUp();
    const { stop } = useTidying.getState();
    useView.getState().setOpened('tin', true);
    expect(useTidying.getState().stop).not.toBe(stop);
    await finished();
    expect(past()).toBe(1);
  });
});

describe('the command', () => {
  test('says what it is about, stops what is under way, and is not offered where the game is only read', async () => {
    const tidy = command('tidy');
    expect(tidy.label(situation())).toBe('Tidy up');
    useView.getState().select(['sill', 'sum']);
    expect(tidy.label(situation())).toBe('Tidy up the selection');
    tidy.run();
    await until(({ work }) => work === 'asked');
    expect(tidy.label(situation())).toBe('Stop tidying');
    tidy.run();
    expect(useTidying.getState().work).toBeUndefined();
    tidy.run();
    await until(({ work }) => work === 'asked');
    command('escape').run();
    expect(useTidying.getState().work).toBeUndefined();
    expect(useView.getState().nodes.size).toBe(2);
    expect(past()).toBe(0);
    useGame.getState().setReadOnly(true);
    expect(tidy.when(situation())).toBe(false);
  });
});

describe('a game that came without positions', () => {
  test('gets them by no edit', async () => {
    openGame(gameOf(NODES, LINKS));
    placeUnplaced();
    expect(useTidying.getState().work).toBe('opening');
    await finished();
    expect(hasUnplaced(theGame())).toBe(false);
    expect(useGame.getState().history).toEqual({ past: [], future: [] });
  });

  test('is not moved from under a hand, but when it is let go', async () => {
    openGame(gameOf(NODES, LINKS));
    useDrag.setState({ held: { roots: ['sum'], moving: new Set(['sum']), positions: new Map() } });
    placeUnplaced();
    await new Promise((rest) => setTimeout(rest, 50));
    expect(hasUnplaced(theGame())).toBe(true);
    letGo();
    await finished();
    expect(hasUnplaced(theGame())).toBe(false);
  });

  test('begins by itself when it is too large to be arranged on reading; what has a position then keeps it', async () => {
    startPlacing();
    const large = randomGame(5, 160);
    openGame({ ...large, positions: new Map() });
    await until(({ work }) => work === 'opening');
    await finished();
    expect(hasUnplaced(theGame())).toBe(false);
    expect(past()).toBe(0);
    expect(covered(currentLayout())).toEqual([]);

    const [first = ''] = [...theGame().nodes.values()]
      .filter(({ kind }) => kind === 'place')
      .map(({ id }) => id);
    const positions = new Map(theGame().positions);
    positions.delete(first);
    openGame({ ...theGame(), positions });
    await until(({ work }) => work === 'opening');
    await finished();
    expect(hasUnplaced(theGame())).toBe(false);
    for (const [id, at] of positions) expect(theGame().positions.get(id)).toEqual(at);
  });
});
