/** Where a thing may lie, or a lock may hang: every legal holder, in the order of the room, with its depth. */
import {
  childrenOf,
  type Game,
  type GameNode,
  isHolder,
  type NodeId,
  parentOf,
  withContents,
} from '../../../src/game/model.ts';
import { captionOf, handedOver } from '../../../src/map/caption.ts';
import type { Caption } from '../../../src/map/layout.ts';
import { kindName, withArticle } from '../../../src/words/kinds.ts';
import { sayer } from '../../../src/words/say.ts';
import { plain } from '../../../src/words/sentence.ts';
import type { Choice } from '../Picker.tsx';

/** For choosing: its name, or its kind where it has none; a lock as it is called everywhere. */
export function shownName(game: Game, node: GameNode): string {
  if (node.kind === 'fastener') return plain(sayer(game).title(node.id));
  return node.name.trim() === '' ? withArticle(kindName(node.kind)) : node.name;
}

const byName = (a: GameNode, b: GameNode) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1);

/** Holders that fit, outer before inner. Nothing lies in itself or in what it holds. */
export function holderChoices(
  game: Game,
  moved: Iterable<NodeId>,
  fits: (holder: GameNode) => boolean,
  current: NodeId | undefined,
): Choice[] {
  const within = withContents(game, moved);
  const children = childrenOf(game);
  const choices: Choice[] = [];
  const visit = (node: GameNode, depth: number) => {
    if (within.has(node.id) || !isHolder(node)) return;
    if (fits(node))
      choices.push({ id: node.id, name: shownName(game, node), depth, current: node.id === current });
    for (const child of [...(children.get(node.id) ?? [])].sort(byName)) visit(child, depth + 1);
  };
  const outermost = [...game.nodes.values()].filter((node) => parentOf(node) === undefined);
  for (const kind of ['place', 'container'] as const) {
    for (const node of outermost.filter((each) => each.kind === kind).sort(byName)) visit(node, 0);
  }
  return choices;
}

/** How pupils come by a thing that nothing holds. */
export function withoutHolder(game: Game, node: GameNode): Caption {
  return captionOf(node, handedOver(game).has(node.id)) ?? 'hand';
}
