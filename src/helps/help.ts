/**
 * Single changes that may help a lesson along: their codes and values, as proposals. A kind of change is one file in this folder and one line in
 * its index. A kind only says what could be tried; whether it may be done is seen in sound.ts, what it does in trial.ts.
 */
import type { Assessment } from '../findings/assess.ts';
import type { ChangeWith } from '../findings/proposal.ts';
import type { NodeId } from '../game/model.ts';

/** What a change says of itself, by its code. The wording stands in src/words/helps.ts. */
export interface HelpValues {
  /** All three estimates of a step go down: by a minute, or, where it is likely to take less than two, to their half. */
  readonly shorten: { readonly step: NodeId; readonly by: 'minute' | 'half' };
  /** All three estimates of a step go up by a minute. */
  readonly lengthen: { readonly step: NodeId };
  /** One more of a thing that the teams share, and so that many. */
  readonly shareMore: { readonly thing: NodeId; readonly shared: number };
  /** A puzzle asks for one thing fewer than lead to it. */
  readonly askForFewer: { readonly puzzle: NodeId; readonly need: number; readonly of: number };
  /** A step is not used, nor is what then leads nowhere. */
  readonly leaveOut: { readonly step: NodeId; readonly others: readonly NodeId[] };
  /** A clue, tool or key lies in a place that is searched earlier. */
  readonly putEarlier: { readonly thing: NodeId; readonly holder: NodeId };
  readonly setTeams: { readonly teams: number; readonly before: number };
  /** A box stands beside the locked box that it was in; `holder` undefined: on the tables. */
  readonly takeOut: { readonly box: NodeId; readonly from: NodeId; readonly holder: NodeId | undefined };
  /** A lock that shares a box with others hangs on another one. */
  readonly rehang: { readonly lock: NodeId; readonly from: NodeId; readonly box: NodeId };
}

export type HelpCode = keyof HelpValues;
export type HelpWith<Code extends HelpCode> = ChangeWith<HelpValues, Code>;
export type Help = HelpWith<HelpCode>;

export interface HelpKind<Code extends HelpCode> {
  readonly code: Code;
  /** In an order that depends on the game alone; only of a game that can be won. */
  readonly tries: (assessment: Assessment) => readonly HelpWith<Code>[];
}

/** The things that a change is about, what is changed first; none where it is the lesson. */
export function nodesOf({ code, values }: Help): readonly NodeId[] {
  switch (code) {
    case 'shorten':
    case 'lengthen':
      return [values.step];
    case 'leaveOut':
      return [values.step, ...values.others];
    case 'shareMore':
      return [values.thing];
    case 'askForFewer':
      return [values.puzzle];
    case 'putEarlier':
      return [values.thing, values.holder];
    case 'takeOut':
      return [values.box, values.from];
    case 'rehang':
      return [values.lock, values.box];
    case 'setTeams':
      return [];
  }
}
