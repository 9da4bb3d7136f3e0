import type { Estimate } from '../game/model.ts';

/** What is known of one type of fastener. A type is one file in this folder and one line in its index. */
export interface FastenerType {
  /** As the document says it. */
  readonly type: string;
  /** What opens it: a key, a code, nothing (a latch), or for a type that this version does not know, whatever is linked to it. */
  readonly opensWith: 'key' | 'code' | 'nothing' | 'links';
  /** Its code is a sequence of directions, drawn and typed as arrows. */
  readonly directions: boolean;
  /** Common practice, no published source. */
  readonly minutes: Estimate;
}

/** What one lock takes when it is known what to do. Common practice, no published source. */
export const USUAL_MINUTES: Estimate = { low: 0.3, likely: 0.5, high: 2 };
