/** Moving a thing draws nothing anew but what moved, and asks the analysis nothing. */
import { act, cleanup, render } from '@testing-library/react';
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { follow, onNodeDragStart, onNodeDragStop } from '../../../app/flow/drag/nodeDrag.ts';
import { onPointerLeave, useHover } from '../../../app/flow/pointing.ts';
import { useMounted } from '../../../app/flow/viewport.ts';
import { JUDGING } from '../../../app/judged/judged.ts';
import { currentAssessment } from '../../../app/store/assessment.ts';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import type { NodeId } from '../../../src/game/model.ts';
import { gameOf, LINKS, NODES, openGame, past } from '../open-game.ts';

const drawn = vi.hoisted(() => new Map<string, number>());

/** The real shape, with a tally of which card was drawn. */
function tallied<Props extends { node: { id: string } }>(Shape: (props: Props) => React.JSX.Element) {
  return (props: Props) => {
    drawn.set(props.node.id, (drawn.get(props.node.id) ?? 0) + 1);
    return Shape(props);
  };
}

vi.mock(import('../../../app/flow/shapes/Place.tsx'), async (real) => {
  const shapes = await real();
  return { ...shapes, Place: tallied(shapes.Place) };
});
vi.mock(import('../../../app/flow/shapes/Box.tsx'), async (real) => ({ Box: tallied((await real()).Box) }));
vi.mock(import('../../../app/flow/shapes/Plate.tsx'), async (real) => ({
  Plate: tallied((await real()).Plate),
}));
vi.mock(import('../../../app/flow/shapes/Thing.tsx'), async (real) => ({
  Thing: tallied((await real()).Thing),
}));
vi.mock(import('../../../app/flow/shapes/Puzzle.tsx'), async (real) => ({
  Puzzle: tallied((await real()).Puzzle),
}));

const { FlowCanvas } = await import('../../../app/flow/FlowCanvas.tsx');

beforeAll(async () => void (await JUDGING.load()));
beforeEach(async () => {
  const positions = new Map([
    ['sill', { x: 0, y: 0 }],
    ['sum', { x: 500, y: 0 }],
  ]);
  openGame({ ...gameOf(NODES, LINKS), positions });
  render(<FlowCanvas />);
  await vi.waitFor(() => expect(useMounted.getState().instance?.getNodes()).toHaveLength(6));
  drawn.clear();
});
afterEach(cleanup);

function grab(id: NodeId) {
  const node = useMounted.getState().instance?.getNode(id);
  if (!node) throw new Error(`${id} is not on the canvas`);
  return node;
}

const pointer = () => new MouseEvent('mousemove', { clientX: 900, clientY: 900 });

test('every thing is drawn', () => {
  expect(document.querySelectorAll('.react-flow__node')).toHaveLength(useGame.getState().game.nodes.size);
});

test('dragging a full tray draws no shape anew; letting it go draws the tray alone; the analysis is not asked', () => {
  const before = currentAssessment();
  const tray = grab('sill');
  act(() => onNodeDragStart(pointer(), tray, [tray]));
  for (let x = 10; x <= 60; x += 10) {
    act(() => follow([{ id: 'sill', type: 'position', position: { x, y: 5 }, dragging: true }]));
  }
  expect([...drawn]).toEqual([]);
  act(() => onNodeDragStop(pointer(), tray, [{ ...tray, position: { x: 60, y: 5 } }]));
  expect([...drawn]).toEqual([['sill', 1]]);
  expect(useGame.getState().game.positions.get('sill')).toEqual({ x: 60, y: 5 });
  expect(past()).toBe(1);
  expect(currentAssessment()).toBe(before);
});

test('selecting draws no shape anew', () => {
  act(() => useView.getState().select(['note']));
  expect([...drawn]).toEqual([]);
});

test('renaming draws what shows the name', () => {
  act(() => useGame.getState().apply([{ type: 'rename', id: 'note', name: 'Letter' }]));
  expect([...drawn.keys()]).toEqual(['note']);
});

test('the dot of what the pointer was at goes with Escape, and when the pointer leaves the map', async () => {
  const dots = () => document.querySelectorAll('.flow-dot').length;
  act(() => useHover.setState({ node: 'note' }));
  expect(dots()).toBe(1);
  act(() => void window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' })));
  expect(dots()).toBe(0);
  act(() => useHover.setState({ node: 'note' }));
  act(() => onPointerLeave());
  expect(dots()).toBe(0);
});
