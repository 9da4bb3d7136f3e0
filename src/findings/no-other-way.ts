/**
 * What asks something of a pupil without another way for one who cannot. Only where the game says what it asks: a game that says nothing
 * is left in peace. What a lock of its type always asks has its usual other way (src/words/lock-types.ts).
 */
import { fastenerType } from '../fasteners/index.ts';
import type { GameNode, NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { defineRule } from './rule.ts';

export interface NoOtherWay {
  readonly node: NodeId;
  /** As the document says them: abilities, or words that this version does not know. */
  readonly asks: readonly string[];
}

function uncovered(node: GameNode): readonly string[] {
  const { asks = [], otherWay = '' } = node;
  if (otherWay.trim() !== '') return [];
  const usual: readonly string[] = node.kind === 'fastener' ? fastenerType(node.type).asks : [];
  return [...new Set(asks)].filter((ask) => !usual.includes(ask));
}

export const noOtherWay: Rule<'noOtherWay', NoOtherWay> = defineRule({
  code: 'noOtherWay',
  find: ({ game, network }) =>
    network.ids.flatMap((id) => {
      const node = game.nodes.get(id);
      const asks = node ? uncovered(node) : [];
      if (asks.length === 0) return [];
      return [{ code: 'noOtherWay', level: 'look', nodes: [id], links: [], values: { node: id, asks } }];
    }),
});
