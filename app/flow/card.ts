/** What is drawn for one node: the data of its node on the canvas. */
import type { Node } from 'reactflow';
import type { NodeState } from '../../src/engine/simulation/moment.ts';
import type { GameNode } from '../../src/game/model.ts';
import type { Slot } from '../../src/map/layout.ts';
import type { Growth, SmallWords } from './small.ts';

/** Where the time goes, on one step. */
export interface Heat {
  /** 0 to 1 along the scale. */
  readonly share: number;
  /** What its tab says. */
  readonly text: string;
}

/** How a thing stands at one minute of a lesson. */
export interface Moment {
  readonly state: NodeState;
  /** The same in words. */
  readonly text: string;
}

/** `keptShut`: cannot be opened either, but no prize hangs on it. `wrongCode`: what pupils find out does not open it, and a prize hangs on that. */
export type LockState = 'cannotOpen' | 'keptShut' | 'wrongCode' | 'staysShut';

/** What the analysis says of one node, as far as it is drawn. */
export interface Look {
  /** In the order of play, from 1; 0 for none. */
  readonly number: number;
  readonly state: LockState | undefined;
  /** Lies wrong and so stops the game. */
  readonly culprit: boolean;
  /** Falls with what is lifted. */
  readonly pale: boolean;
  /** Undefined while the overlay is off, and for what adds nothing. */
  readonly heat: Heat | undefined;
  /** Decides the end, while that is shown. */
  readonly inChain: boolean;
  /** Undefined while no minute is shown. */
  readonly moment: Moment | undefined;
}

/** The bar along the wall that joins several locks, relative to its container. */
export interface Hasp {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Card extends Record<string, unknown> {
  readonly node: GameNode;
  readonly slot: Slot;
  readonly look: Look;
  readonly hasp: Hasp | undefined;
  /** Stays where it is when the map is tidied. */
  readonly pinned: boolean;
  readonly grow: Growth;
  /** What it says when the map is drawn small. */
  readonly small: SmallWords | undefined;
  /** Types of the locks of a folded container, drawn as signs. */
  readonly locks: readonly (string | undefined)[] | undefined;
  /** Numbers of the steps in a folded container, ascending. */
  readonly steps: readonly number[] | undefined;
}

const NODE_TYPES = ['place', 'container', 'fastener', 'puzzle', 'thing'] as const;
export type NodeType = (typeof NODE_TYPES)[number];
export type CardNode = Node<Card, NodeType>;

export function nodeTypeOf(node: GameNode): NodeType {
  switch (node.kind) {
    case 'key':
    case 'clue':
    case 'tool':
    case 'prize':
      return 'thing';
    default:
      return node.kind;
  }
}
