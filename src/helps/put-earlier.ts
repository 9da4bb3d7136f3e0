/** A clue, tool or key lies in a hiding place that is searched before what holds it now: in the first of all, or in the last before that. */
import { isLonger } from '../engine/compare.ts';
import { KINDS } from '../game/model.ts';
import type { HelpKind } from './help.ts';

const PLACE = KINDS.indexOf('place');

export const putEarlier: HelpKind<'putEarlier'> = {
  code: 'putEarlier',
  tries({ game, network, measures }) {
    const finish = (node: number) => measures.finish[node] ?? 0;
    const places = [...network.ids.keys()]
      .filter((node) => network.kinds[node] === PLACE && measures.reached[node] === 1)
      .filter((node) => game.nodes.get(network.ids[node] ?? '')?.decoy !== true)
      .sort((a, b) => finish(a) - finish(b) || a - b);
    return network.ids.flatMap((thing, i) => {
      const node = game.nodes.get(thing);
      const holder = network.parent[i] ?? -1;
      const mayMove = node?.kind === 'clue' || node?.kind === 'tool' || node?.kind === 'key';
      if (!mayMove || holder < 0 || node.decoy === true || measures.reached[i] !== 1) return [];
      const earlier = places.filter((place) => isLonger(finish(holder), finish(place)));
      return [...new Set([...earlier.slice(0, 1), ...earlier.slice(-1)])].map((place) => {
        const id = network.ids[place] ?? '';
        return {
          code: 'putEarlier',
          values: { thing, holder: id },
          edits: [{ type: 'place', ids: [thing], holder: id, before: null }],
        };
      });
    });
  },
};
