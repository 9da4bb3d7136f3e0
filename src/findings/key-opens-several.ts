/** A key that opens more than one lock: who has it for the first has it for all. */
import type { Edit } from '../game/edits/edit.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Fresh, Rule } from './finding.ts';
import type { Proposal } from './proposal.ts';
import { defineRule } from './rule.ts';

export interface KeyOpensSeveral {
  readonly key: NodeId;
  /** In the order in which they open. */
  readonly fasteners: readonly NodeId[];
}

export const keyOpensSeveral: Rule<'keyOpensSeveral', KeyOpensSeveral> = defineRule({
  code: 'keyOpensSeveral',
  find(context) {
    const { network, measures, idOf } = context;
    return [...network.ids.keys()].flatMap((node) => {
      if (context.kindOf(node) !== 'key') return [];
      const key = idOf(node);
      const locks = context
        .linksFrom(key)
        .map(({ to }) => network.index.get(to) ?? -1)
        .filter((lock) => lock >= 0 && context.kindOf(lock) === 'fastener')
        .sort((a, b) => (measures.finish[a] ?? 0) - (measures.finish[b] ?? 0) || a - b);
      if (locks.length < 2) return [];
      const fasteners = locks.map(idOf);
      return [
        {
          code: 'keyOpensSeveral' as const,
          level: 'look' as const,
          nodes: [key, ...fasteners],
          links: [],
          values: { key, fasteners },
        },
      ];
    });
  },
  mends: (context, { values }, fresh) => ownKeys(context, values, fresh),
});

/** In pixels; the next card is clear of it. */
const BESIDE = 120;

/** All locks but the first get a key of their own, had where and when the one is: nothing is sooner or later for it. */
function* ownKeys(context: Context, { key, fasteners }: KeyOpensSeveral, fresh: Fresh): Generator<Proposal> {
  const node = context.game.nodes.get(key);
  if (node?.kind !== 'key') return;
  const others = fasteners.slice(1);
  const beside = context.game.positions.get(key);
  const edits = others.flatMap((fastener, i): Edit[] => {
    const spot = beside && { x: beside.x, y: beside.y + BESIDE * (i + 1) };
    const { text: _, note: __, ...rest } = node;
    const own = { ...rest, id: fresh.newId(), name: fresh.nameOf('key') };
    const handed = context.linksTo(key).map((link) => ({ ...link, id: fresh.newId(), to: own.id }));
    const links = [...handed, { id: fresh.newId(), from: own.id, to: fastener }];
    const old = context.linksFrom(key).filter(({ to }) => to === fastener);
    return [
      { type: 'unlink', ids: old.map(({ id }) => id) },
      { type: 'add', nodes: [own], links, positions: spot && own.in === undefined ? [[own.id, spot]] : [] },
    ];
  });
  yield { code: 'ownKeys', values: { key, fasteners: others }, edits };
}
