/** One thing more to share, up to one for each team. */
import { lessonOf, sharedOf } from '../game/defaults.ts';
import type { HelpKind } from './help.ts';

export const shareMore: HelpKind<'shareMore'> = {
  code: 'shareMore',
  tries({ game, network }) {
    const { teams } = lessonOf(game);
    return network.ids.flatMap((id) => {
      const node = game.nodes.get(id);
      const shared = node && sharedOf(node);
      if (shared === undefined || shared >= teams) return [];
      const more = shared + 1;
      return [
        {
          code: 'shareMore',
          values: { thing: id, shared: more },
          edits: [{ type: 'setFields', id, fields: { shared: more } }],
        },
      ];
    });
  },
};
