/**
 * A change that settles something: a code, values for its sentence, and the edits, applied and undone as one.
 * A fix, a remedy, a suggestion and an adaptation are all of this form.
 */
import type { LockType } from '../fasteners/index.ts';
import type { Edit } from '../game/edits/edit.ts';
import type { NodeId } from '../game/model.ts';

/** What a proposal says of itself, by its code. The wording stands in src/words/proposals.ts. */
export interface ProposalValues {
  /** Put a thing into a place or container. */
  readonly putIn: { readonly thing: NodeId; readonly holder: NodeId };
  /** Put a thing into the pupils' hands from the start. */
  readonly putInHand: { readonly thing: NodeId };
  /** Set the code of a fastener to what its links give. */
  readonly setCode: { readonly fastener: NodeId; readonly code: string };
  /** A new code for a fastener, set on it and given by all that gave the old one. */
  readonly newCode: { readonly fastener: NodeId; readonly code: string; readonly sources: readonly NodeId[] };
  /** Another type of fastener for the same code. */
  readonly otherType: { readonly fastener: NodeId; readonly type: LockType };
  /** Set the answer of a puzzle or clue to what the fastener wants. */
  readonly setAnswer: { readonly source: NodeId; readonly answer: string };
  /** Ask for as many as there are. */
  readonly lowerNeed: { readonly node: NodeId; readonly need: number };
  /** Ask for all that is linked, and that is so many. */
  readonly needAll: { readonly node: NodeId; readonly possible: number };
  readonly markDecoy: { readonly node: NodeId };
  /** Use again what was left out. */
  readonly bringBack: { readonly nodes: readonly NodeId[] };
  readonly link: { readonly from: NodeId; readonly to: NodeId };
  readonly unlink: { readonly from: NodeId; readonly to: NodeId };
  readonly addPrize: { readonly holder: NodeId };
  /** Set a lock to a code of more symbols, with answers that give it. */
  readonly longerCode: {
    readonly fastener: NodeId;
    readonly code: string;
    readonly answers: readonly { readonly source: NodeId; readonly answer: string }[];
  };
  /** Let parts of a code lead to one puzzle, which gives them together. */
  readonly joinParts: {
    readonly fastener: NodeId;
    readonly puzzle: NodeId;
    readonly others: readonly NodeId[];
    readonly answer: string;
  };
  /** Put what lies in a place into a box there, locked with the answer that leads to it. */
  readonly lockAway: { readonly place: NodeId; readonly source: NodeId; readonly code: string };
  /** A key of its own for each of these locks. */
  readonly ownKeys: { readonly key: NodeId; readonly fasteners: readonly NodeId[] };
  /** Let a source's answer fill the whole code, not some positions of it. */
  readonly wholeAnswer: { readonly source: NodeId; readonly fastener: NodeId };
}

export type ProposalCode = keyof ProposalValues;

/** A change with one of these codes, and the values that belong to it. */
export type ChangeWith<Values, Code extends keyof Values = keyof Values> = {
  readonly [C in Code]: {
    readonly code: C;
    readonly values: Values[C];
    readonly edits: readonly Edit[];
  };
}[Code];

export type ProposalWith<Code extends ProposalCode> = ChangeWith<ProposalValues, Code>;

export type Proposal = ProposalWith<ProposalCode>;
