/** Signs as line drawings on a square of 18 by 18, stroked and not filled. */
import { isKnownType, type LockType } from '../fasteners/index.ts';
import type { Kind } from '../game/model.ts';

export type SignName =
  | Exclude<Kind, 'place' | 'container' | 'fastener' | 'puzzle'>
  | LockType
  | 'otherLock'
  /** Arrows of a code; the letter stands beside each. */
  | 'up'
  | 'down'
  | 'left'
  | 'right'
  /** Before the number of a step that a thing is used in, told and not drawn. */
  | 'leadsTo';

export function lockSign(type: string | undefined): SignName {
  if (type === undefined || !isKnownType(type)) return 'otherLock';
  return type;
}
