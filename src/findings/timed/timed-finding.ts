/**
 * Findings that come from simulated lessons. They arrive later than the edit, so they have a registry of their own; a kind is one file in
 * this folder and one line in its index, as for the others. All are worth a look: a lesson that runs late can still be won.
 */
import type { Figures } from '../../engine/simulation/figures.ts';
import type { FindingOf } from '../finding.ts';
import type { TIMED_RULES } from './index.ts';

/** What of the figures the rules look at. */
export type Timing = Pick<Figures, 'clock' | 'simulated' | 'costs'>;

export interface TimedRule<Code extends string, V extends object> {
  readonly code: Code;
  /** Its findings come in an order that depends on the figures alone; nothing as long as what it needs of them has not been worked out. */
  readonly find: (timing: Timing) => readonly FindingOf<Code, V>[];
}

export type AnyTimedRule = (typeof TIMED_RULES)[number];
export type TimedCode = AnyTimedRule['code'];
export type TimedFinding = ReturnType<AnyTimedRule['find']>[number];
export type TimedFindingWith<Code extends TimedCode> = Extract<TimedFinding, { readonly code: Code }>;
