/** A place that pupils may come upon though nothing has led them there: what it would skip. */

import { fastenerType } from '../fasteners/index.ts';
import { isDirections, writtenCode } from '../game/codes.ts';
import type { Edit } from '../game/edits/edit.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Fresh, Rule } from './finding.ts';
import type { Proposal } from './proposal.ts';
import { defineRule } from './rule.ts';

export interface FoundByChance {
  readonly place: NodeId;
  readonly skips: readonly NodeId[];
  readonly minutesSkipped: number;
}

export const foundByChance: Rule<'foundByChance', FoundByChance> = defineRule({
  code: 'foundByChance',
  find(context) {
    return [...context.guesses().places].flatMap(([node, { skips, minutesSkipped }]) => {
      if (skips.length === 0) return [];
      const place = context.idOf(node);
      return [
        {
          code: 'foundByChance' as const,
          level: 'look' as const,
          nodes: [place],
          links: [],
          values: { place, skips: skips.map(context.idOf), minutesSkipped },
        },
      ];
    });
  },
  mends: (context, { values }, fresh) => lockedAway(context, values.place, fresh),
});

/** What lies there goes into a box, and what led there opens it. */
function* lockedAway(
  { game, linksTo, linksFrom, network }: Context,
  place: NodeId,
  fresh: Fresh,
): Generator<Proposal> {
  const things = [...game.nodes.values()]
    .filter((node) => 'in' in node && node.in === place)
    .map(({ id }) => id)
    .sort();
  if (things.length === 0) return;
  for (const { from } of linksTo(place)) {
    const answer = writtenCode(game, from);
    if (!answer || !network.index.has(from)) continue;
    // It would open the other lock as well.
    if (linksFrom(from).some(({ to }) => game.nodes.get(to)?.kind === 'fastener')) continue;
    const type = typeFor(answer.normalised);
    const code = answer.typed;
    const box = { id: fresh.newId(), kind: 'container' as const, name: fresh.nameOf('container'), in: place };
    const lock = { id: fresh.newId(), kind: 'fastener' as const, name: '', on: box.id, type, code };
    const edits: Edit[] = [
      {
        type: 'add',
        nodes: [box, lock],
        links: [{ id: fresh.newId(), from, to: lock.id }],
        positions: [],
      },
      { type: 'place', ids: things, holder: box.id, before: null },
    ];
    yield { code: 'lockAway', values: { place, source: from, code }, edits };
  }
}

/** The plainest lock that takes the code. */
function typeFor(code: string): string {
  if (/^[0-9]+$/.test(code)) return 'number';
  if (isDirections(code)) return 'direction';
  const word = fastenerType('word');
  return word.misfits(word.symbols(code)).length === 0 ? 'word' : 'typed';
}
