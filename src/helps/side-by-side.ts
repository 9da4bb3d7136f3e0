/** Two boxes that can be worked at once: one is taken out of the locked one around it, or a lock is hung from a box with several on another. */
import { fastenerType } from '../fasteners/index.ts';
import { KINDS, type NodeId } from '../game/model.ts';
import type { HelpKind } from './help.ts';

const CONTAINER = KINDS.indexOf('container');

/** Boxes on which a lock is tried, those with the fewest locks first. */
const BOXES_TRIED = 3;

export const takeOut: HelpKind<'takeOut'> = {
  code: 'takeOut',
  tries: ({ network }) =>
    network.ids.flatMap((box, i) => {
      const from = network.parent[i] ?? -1;
      if (network.kinds[i] !== CONTAINER || network.kinds[from] !== CONTAINER) return [];
      if (network.fasteners.starts[from] === network.fasteners.starts[from + 1]) return [];
      const holder = network.ids[network.parent[from] ?? -1];
      return [
        {
          code: 'takeOut',
          values: { box, from: network.ids[from] ?? '', holder },
          edits: [{ type: 'place', ids: [box], holder: holder ?? null, before: null }],
        },
      ];
    }),
};

export const rehang: HelpKind<'rehang'> = {
  code: 'rehang',
  tries({ game, network, measures }) {
    const isLatch = (id: NodeId) => {
      const node = game.nodes.get(id);
      return node?.kind === 'fastener' && fastenerType(node.type).opensWith === 'nothing';
    };
    const locksOn = (box: number) =>
      (network.fasteners.starts[box + 1] ?? 0) - (network.fasteners.starts[box] ?? 0);
    const boxes = [...network.ids.keys()]
      .filter((node) => network.kinds[node] === CONTAINER && measures.reached[node] === 1)
      .sort((a, b) => locksOn(a) - locksOn(b) || a - b);
    return boxes.flatMap((from) => {
      if (locksOn(from) < 2) return [];
      const { starts, items } = network.fasteners;
      const others = boxes.filter((box) => box !== from).slice(0, BOXES_TRIED);
      const locks = Array.from(
        items.subarray(starts[from], starts[from + 1]),
        (lock) => network.ids[lock] ?? '',
      );
      return locks.flatMap((lock) =>
        (isLatch(lock) ? [] : others).map((other) => {
          const box = network.ids[other] ?? '';
          return {
            code: 'rehang' as const,
            values: { lock, from: network.ids[from] ?? '', box },
            edits: [{ type: 'fasten' as const, ids: [lock], on: box, before: null }],
          };
        }),
      );
    });
  },
};
