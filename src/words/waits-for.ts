/** How one thing needs another, in the same words on the map, on the lists and on the screen. */
import type { Kind } from '../game/model.ts';

/** Before what a lock, place or thing waits for, by the kinds of both. `isHandedOver`: it is what the puzzle hands over. */
export function waitsFor(kind: Kind, source: Kind, isHandedOver: boolean): string {
  if (isHandedOver) return 'given after';
  switch (kind) {
    case 'fastener':
    case 'puzzle':
      return source === 'tool' ? 'with' : 'from';
    case 'place':
      return 'found after';
    case 'clue':
      return source === 'puzzle' ? 'read after' : 'read with';
    case 'tool':
      return source === 'puzzle' ? 'used after' : 'used with';
    case 'key':
    case 'container':
    case 'prize':
      return 'after';
  }
}
