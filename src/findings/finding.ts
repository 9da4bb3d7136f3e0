/**
 * What the engine has to say about a game, as codes and values. The sentences stand in src/words/.
 * A kind of finding is one file in this folder (a Rule) and one line in its index; the type of all findings follows from the index.
 */
import type { Kind, LinkId, NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { RULES } from './index.ts';
import type { Proposal } from './proposal.ts';

/** 'stops': with that node never reached a prize falls, or there is no prize to win; else 'look', worth a look. See level.ts. */
export type Level = 'stops' | 'look';

/** Values for a sentence: names are looked up by id when it is worded, so that renaming needs no new analysis. */
export type Values = object;

export interface FindingOf<Code extends string, V extends Values> {
  readonly code: Code;
  readonly level: Level;
  /** Those concerned, the culprit first. With the code they tell one finding of a game from another. */
  readonly nodes: readonly NodeId[];
  readonly links: readonly LinkId[];
  readonly values: V;
}

/** What a mend needs to make something new. */
export interface Fresh {
  /** An id never used before. */
  readonly newId: () => string;
  /** What a new thing of this kind is called at first. */
  readonly nameOf: (kind: Kind) => string;
}

/** One kind of finding. */
export interface Rule<Code extends string, V extends Values> {
  readonly code: Code;
  /** Runs after every edit. Its findings come in an order that depends on the game alone. */
  readonly find: (context: Context) => readonly FindingOf<Code, V>[];
  /** Changes that might settle one of its findings, the most sensible first. Asked only when they are to be shown; propose.ts tries each. */
  readonly mends: (context: Context, finding: FindingOf<string, Values>, fresh: Fresh) => Iterable<Proposal>;
}

export type AnyRule = (typeof RULES)[number];
export type FindingCode = AnyRule['code'];

/** Any finding; `code` tells which values it carries. */
export type Finding = ReturnType<AnyRule['find']>[number];
export type FindingWith<Code extends FindingCode> = Extract<Finding, { readonly code: Code }>;

/** Tells whether two findings, of a game before and after a change, are the same. */
export function identityOf(finding: FindingOf<string, Values>): string {
  return JSON.stringify([finding.code, ...finding.nodes]);
}
