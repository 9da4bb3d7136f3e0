/**
 * A puzzle that asks for all of three things or more does with one fewer. Never a lock, and never where what is left out would be missing: a key or
 * tool for the work itself, an answer or a part of one.
 */
import { codeOf } from '../game/codes.ts';
import type { HelpKind } from './help.ts';

const FEWEST = 3;

export const askForFewer: HelpKind<'askForFewer'> = {
  code: 'askForFewer',
  tries: ({ game, network, context }) =>
    network.ids.flatMap((id) => {
      const node = game.nodes.get(id);
      if (node?.kind !== 'puzzle' || (node.need ?? 'all') !== 'all') return [];
      const links = context.linksTo(id).filter(({ from }) => network.index.has(from));
      if (links.length < FEWEST) return [];
      const isNeeded = links.some(({ from, at }) => {
        const kind = game.nodes.get(from)?.kind;
        return kind === 'tool' || kind === 'key' || at !== undefined || codeOf(game, from) !== undefined;
      });
      if (isNeeded) return [];
      const need = links.length - 1;
      return [
        {
          code: 'askForFewer',
          values: { puzzle: id, need, of: links.length },
          edits: [{ type: 'setFields', id, fields: { need } }],
        },
      ];
    }),
};
