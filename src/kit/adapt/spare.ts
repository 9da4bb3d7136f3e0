/**
 * What can be left out, so that fewer boxes and locks are wanted: each tried on the game, together with what then leads nowhere, and offered only where the game can
 * still be won, every code stays right, and there is nothing new to be said of it. Cost: an assessment for each box, lock and puzzle.
 */

import type { Assessment } from '../../findings/assess.ts';
import type { GameNode, NodeId } from '../../game/model.ts';
import { leftOutWith } from '../../helps/leave-out.ts';
import { adaptedUnremarked } from './sound.ts';

export interface Spare {
  /** What is left out, the one that it is about first, and then what would lead nowhere without it. */
  readonly nodes: readonly NodeId[];
  /** fun: there for the joy of opening; herring: leads nowhere on purpose; notNeeded: the prize is reached without it; shorter: a step less that the game can do without. */
  readonly why: 'fun' | 'herring' | 'notNeeded' | 'shorter';
  /** Of the shortest time, that the game loses. */
  readonly minutes: number;
  readonly steps: number;
}

/** So many at most, of which so many that cost the game something that pupils must do. */
const MOST = 8;
const MOST_SHORTER = 3;

function whyOf({ context, network, measures }: Assessment, node: GameNode): Spare['why'] {
  if (node.kind === 'fastener' && node.forFun === true) return 'fun';
  if (node.decoy === true) return 'herring';
  const index = network.index.get(node.id) ?? -1;
  if (measures.reached[index] !== 1) return 'notNeeded';
  const left = context.without(index);
  return Array.from(network.prizes).every((prize) => left[prize] === 1) ? 'notNeeded' : 'shorter';
}

const CANDIDATES: readonly GameNode['kind'][] = ['fastener', 'container', 'puzzle'];
const ORDER: readonly Spare['why'][] = ['fun', 'herring', 'notNeeded', 'shorter'];

/**
 * What costs least first: the fun, red herrings, what is not needed, and a few steps that are. Empty for a game that cannot be won.
 * Undefined between two that are tried, so that a page can draw.
 */
export function* sparesTried(assessment: Assessment): Generator<undefined, readonly Spare[]> {
  const { game, network, measures, canBeWon } = assessment;
  if (!canBeWon) return [];
  const spares: Spare[] = [];
  const told = new Set<string>();
  for (const id of network.ids) {
    const node = game.nodes.get(id);
    if (!node || !(CANDIDATES.includes(node.kind) || node.decoy === true)) continue;
    yield;
    const others = leftOutWith(assessment, id);
    if (!others) continue;
    const nodes = [id, ...others];
    const same = [...nodes].sort().join(' ');
    if (told.has(same)) continue;
    const after = adaptedUnremarked(assessment, [{ type: 'leaveOut', ids: nodes, leftOut: true }]);
    if (!after?.canBeWon) continue;
    told.add(same);
    spares.push({
      nodes,
      why: whyOf(assessment, node),
      minutes: Math.max(0, measures.shortest - after.measures.shortest),
      steps: measures.steps - after.measures.steps,
    });
  }
  spares.sort((a, b) => ORDER.indexOf(a.why) - ORDER.indexOf(b.why));
  const shorter = spares.filter(({ why }) => why === 'shorter').slice(0, MOST_SHORTER);
  return [...spares.filter(({ why }) => why !== 'shorter'), ...shorter].slice(0, MOST);
}

/** The same at once. */
export function sparesOf(assessment: Assessment): readonly Spare[] {
  const tried = sparesTried(assessment);
  let next = tried.next();
  while (!next.done) next = tried.next();
  return next.value;
}
