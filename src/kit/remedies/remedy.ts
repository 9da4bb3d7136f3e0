/**
 * What to do about something that is short: its code, values for its sentence, and the edits of the game that are one click and one undo.
 * The words stand in src/words/kit-remedies.ts. One remedy changes the kit and not the game: `buy` puts a line on the list (see `noted`).
 */
import type { ChangeWith } from '../../findings/proposal.ts';
import type { NodeId } from '../../game/model.ts';
import { addItem, changeItem } from '../edits.ts';
import type { Fitting } from '../fit/index.ts';
import type { ItemId, Kit, KitItem, What } from '../model.ts';

/** What is short. `node`: the fastener, for a box or hasp the container, or the tool. */
export interface Shortage {
  readonly part: What;
  readonly node: NodeId;
  /** Of `copies` copies so many have none. */
  readonly missing: number;
  readonly copies: number;
}

export interface RemedyValues {
  /** A lock of another type that is there carries the same code. */
  readonly otherLock: { readonly fastener: NodeId; readonly type: string; readonly item: ItemId };
  /** A lock that is there carries another code; a legend and, where answers lead to the lock, a puzzle turn the one into the other. */
  readonly otherCode: {
    readonly fastener: NodeId;
    readonly type: string;
    readonly item: ItemId;
    readonly before: string;
    readonly code: string;
    readonly legend: NodeId;
    readonly puzzle: NodeId;
  };
  /** In place of a key, a tag with a code lies where the key lay. */
  readonly codeForKey: {
    readonly fastener: NodeId;
    readonly type: string;
    readonly item: ItemId;
    readonly code: string;
    readonly key: NodeId;
    readonly tag: NodeId;
  };
  /** Teams share it: `shared` of it for all. `minutes`: by how much half of the lessons take longer; undefined where the game cannot be won yet. */
  readonly share: {
    readonly thing: NodeId;
    readonly shared: number;
    readonly teams: number;
    readonly minutes: number | undefined;
  };
  /** Not used today, and with it what then leads nowhere. */
  readonly leaveOut: { readonly thing: NodeId; readonly others: readonly NodeId[] };
  /** No real lock: pupils show the teacher what would open it, and get what is in the box, or an envelope. */
  readonly standIn: {
    readonly fasteners: readonly NodeId[];
    readonly container: NodeId;
    readonly box: boolean;
  };
  /** A tool that the kit lacks: the teacher shows what it would show, or lends one. */
  readonly lend: { readonly tool: NodeId };
  /** Goes on the list to buy. The item is new, or one of the kit of which more are wanted. */
  readonly buy: { readonly node: NodeId; readonly item: KitItem; readonly count: number };
}

export type RemedyCode = keyof RemedyValues;
export type RemedyWith<Code extends RemedyCode> = ChangeWith<RemedyValues, Code>;
export type Remedy = RemedyWith<RemedyCode>;

/** All that is short: locks, hasps, boxes, tools, each by node as in the fitting. */
export function shortagesOf(fitting: Fitting): Shortage[] {
  const parts = [
    ['lock', fitting],
    ['hasp', fitting.hasps],
    ['box', fitting.boxes],
    ['tool', fitting.tools],
  ] as const;
  return parts.flatMap(([part, { short, assigned }]) =>
    Array.from(short, ([node, missing]) => ({
      part,
      node,
      missing,
      copies: assigned.get(node)?.length ?? missing,
    })),
  );
}

/** The kit with what a remedy to buy puts on its list; for every other remedy the kit as it is. */
export function noted(kit: Kit, remedy: Remedy): Kit {
  if (remedy.code !== 'buy') return kit;
  const { item, count } = remedy.values;
  const known = kit.items.find(({ id }) => id === item.id);
  if (!known) return addItem(kit, { ...item, toBuy: count });
  return changeItem(kit, { ...known, toBuy: Math.max(known.toBuy ?? 0, count) });
}
