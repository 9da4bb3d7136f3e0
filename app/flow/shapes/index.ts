/** The shapes as node types of the canvas. A shape is drawn anew when its card changes, never because it moved. */
import { createElement, memo } from 'react';
import type { NodeProps } from 'reactflow';
import type { Card, CardNode, NodeType } from '../card.ts';
import { Box } from './Box.tsx';
import { Place } from './Place.tsx';
import { Plate } from './Plate.tsx';
import { Puzzle } from './Puzzle.tsx';
import { Thing } from './Thing.tsx';

/** The canvas hands over absolute positions as well; a shape does not need them, so they do not count as a change. */
function shape(Drawing: (card: Card) => React.ReactNode) {
  return memo(
    ({ data }: NodeProps<CardNode>) => createElement(Drawing, data),
    (before, after) => before.data === after.data,
  );
}

export const nodeTypes: Readonly<Record<NodeType, ReturnType<typeof shape>>> = {
  place: shape(Place),
  container: shape(Box),
  fastener: shape(Plate),
  puzzle: shape(Puzzle),
  thing: shape(Thing),
};
