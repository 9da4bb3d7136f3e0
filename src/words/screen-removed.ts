/** What a removal did besides taking away what was selected: locks go with their box, and what lay in it lies elsewhere. */
import { type Game, type GameNode, parentOf } from '../game/model.ts';
import { captionOf, handedOver } from '../map/caption.ts';
import { ownCaption } from './canvas.ts';
import { count } from './numbers.ts';
import { sayer, sentence } from './say.ts';
import { type Part, plain, type Sentence } from './sentence.ts';

/** Empty when nothing that stays was moved by it. */
export function removedSentence(before: Game, after: Game): Sentence {
  const moved = [...after.nodes.values()].filter((node) => {
    const old = before.nodes.get(node.id);
    return old !== undefined && parentOf(old) !== parentOf(node);
  });
  if (moved.length === 0) return [];
  return sentence(whatIsGone(before, after), ' ', ...whereTheRestLies(after, moved));
}

function whatIsGone(before: Game, after: Game): Sentence {
  const gone = [...before.nodes.values()].filter(({ id }) => !after.nodes.has(id));
  const named = gone.filter((node) => node.kind !== 'fastener' || after.nodes.has(node.on));
  const locks = gone.length - named.length;
  const names = sayer(before).names(named.map(({ id }) => id));
  const whose = named.length === 1 ? 'its' : 'their';
  const withLocks = locks === 0 ? '' : locks === 1 ? ` and ${whose} lock` : ` and ${whose} ${locks} locks`;
  return sentence(names, withLocks, gone.length === 1 ? ' is gone.' : ' are gone.');
}

/** Where a thing is now, as the clause about it goes on. */
function whereabouts(after: Game, node: GameNode, one: boolean): Sentence {
  const holder = parentOf(node);
  const is = one ? 'is' : 'are';
  if (holder !== undefined)
    return sentence(one ? ' now lies in ' : ' now lie in ', sayer(after).name(holder));
  const caption = captionOf(node, handedOver(after).has(node.id));
  return caption === undefined ? [] : [` ${is} now ${ownCaption(caption)}`];
}

/** One clause for all that lies alike. */
function whereTheRestLies(after: Game, moved: readonly GameNode[]): (Part | Sentence)[] {
  const alike = new Map<string, GameNode[]>();
  for (const node of moved) {
    const key = parentOf(node) ?? plain(whereabouts(after, node, true));
    alike.set(key, [...(alike.get(key) ?? []), node]);
  }
  return [...alike.values()].flatMap((nodes, i) => {
    const [first] = nodes;
    const ids = nodes.map(({ id }) => id);
    const what = nodes.length > 3 ? [count(nodes.length, 'thing')] : sayer(after).names(ids);
    const where = first ? whereabouts(after, first, nodes.length === 1) : [];
    return [i === 0 ? '' : '; ', what, where, i === alike.size - 1 ? '.' : ''];
  });
}
