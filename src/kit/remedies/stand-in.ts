/**
 * No real lock: the fastener becomes a latch that the teacher checks. What leads to it is needed as before; pupils show the teacher what would have
 * opened it. A box with nothing else on it need be no more than an envelope, which the teacher hands over. A tool is shown or lent.
 */
import { isLeftOut } from '../../engine/left-out.ts';
import { saidCode } from '../../game/codes.ts';
import type { Edit } from '../../game/edits/edit.ts';
import type { Game, NodeId, NodeOf } from '../../game/model.ts';
import { lentNote, standInNote } from '../../words/kit-legend.ts';
import { hangs } from '../needs.ts';
import type { RemedyWith } from './remedy.ts';

function asLatch(game: Game, { id, note }: NodeOf<'fastener'>): Edit {
  const told = standInNote(saidCode(game, id));
  return {
    type: 'setFields',
    id,
    fields: {
      type: 'latch',
      checked: true,
      hardware: undefined,
      note: note === undefined || note.trim() === '' ? told : `${note}\n${told}`,
    },
  };
}

function locksOn(game: Game, container: NodeId): NodeOf<'fastener'>[] {
  const locks: NodeOf<'fastener'>[] = [];
  for (const node of game.nodes.values()) {
    if (node.kind === 'fastener' && node.on === container && !isLeftOut(game, node.id)) locks.push(node);
  }
  return locks.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** For one lock. */
export function lockStandIn(game: Game, lock: NodeOf<'fastener'>): RemedyWith<'standIn'> {
  return {
    code: 'standIn',
    values: { fasteners: [lock.id], container: lock.on, box: false },
    edits: [asLatch(game, lock)],
  };
}

/** For a box, with all that is on it: an envelope. One without anything on it is handed over by a latch of its own. */
export function boxStandIn(game: Game, container: NodeId, newId: () => string): RemedyWith<'standIn'> {
  const locks = locksOn(game, container);
  const latch: NodeOf<'fastener'> = {
    id: newId(),
    kind: 'fastener',
    name: '',
    on: container,
    type: 'latch',
    checked: true,
    note: standInNote(undefined),
  };
  return {
    code: 'standIn',
    values: { fasteners: locks.map(({ id }) => id), container, box: true },
    edits:
      locks.length > 0
        ? locks.map((lock) => asLatch(game, lock))
        : [{ type: 'add', nodes: [latch], links: [], positions: [] }],
  };
}

/** For a tool. */
export function lend(game: Game, tool: NodeId): RemedyWith<'lend'> {
  const note = game.nodes.get(tool)?.note?.trim() ?? '';
  const told = lentNote();
  return {
    code: 'lend',
    values: { tool },
    edits: [
      {
        type: 'setFields',
        id: tool,
        fields: { checked: true, note: note === '' ? told : `${note}\n${told}` },
      },
    ],
  };
}

/** Locks on a box that needs a hasp, each of which may give way. */
export function haspLocks(game: Game, container: NodeId): NodeOf<'fastener'>[] {
  return locksOn(game, container).filter(({ type = '' }) => hangs(type));
}
