import { isKnownType } from '../fasteners/index.ts';
import type { KitItem } from './model.ts';
import type { KitNote } from './problem.ts';

/** Types of lock that this version does not know, once each. */
export function unknownTypes(items: readonly KitItem[]): KitNote[] {
  const types = items.flatMap((item) => (item.what === 'lock' && !isKnownType(item.type) ? [item.type] : []));
  return [...new Set(types)].map((type) => ({ code: 'unknownType', type }));
}
