/** Signs as line drawings on a square of 18 by 18, stroked and not filled. */
import { isKnownType, type LockType } from '../fasteners/index.ts';
import type { Kind } from '../game/model.ts';

export type SignName =
  | Exclude<Kind, 'place' | 'container' | 'fastener' | 'puzzle'>
  /** Of locks by what opens them; a key lock has a sign of its own beside that of a key. */
  | Exclude<LockType, 'key'>
  | 'keyLock'
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
  return type === 'key' ? 'keyLock' : type;
}

/** Path data; round ends and corners, and strokes of SIGN_STROKE on the same square. */
export const SIGN_PATHS: Readonly<Record<SignName, string>> = {
  clue: 'M4.5 2.5h6l3.5 3.5v9.5h-9.5zM10.5 2.5v3.5h3.5',
  key: 'M3 9l3.5-4h9v8h-9zM6.5 8.9h.1',
  keyLock: 'M4.5 7.5h9v6h-9zM6.3 7.5V5a2.7 2.7 0 0 1 5.4 0v2.5M9 10v1.4',
  tool: 'M6.5 5.5h5a3.5 3.5 0 0 1 0 7h-5a3.5 3.5 0 0 1 0-7z',
  prize: 'M3 4.5h12l-2.5 4.5 2.5 4.5h-12z',
  number: 'M2.5 4.5h4v9h-4zM7 4.5h4v9H7zM11.5 4.5h4v9h-4zM4.5 7.5v3M9 7.5v3M13.5 7.5v3',
  word: 'M2.5 4.5h6.2v9H2.5zM9.3 4.5h6.2v9H9.3zM4.3 11.3l1.3-4 1.3 4M4.8 10h1.6M11.3 7v4.2h1.2a1 1 0 0 0 0-2.1h-1.2 1a1 1 0 0 0 0-2.1z',
  direction: 'M9 2.5v13M2.5 9h13M7 4.5l2-2 2 2M7 13.5l2 2 2-2M4.5 7l-2 2 2 2M13.5 7l2 2-2 2',
  dial: 'M9 3.3a5.7 5.7 0 1 1 0 11.4a5.7 5.7 0 0 1 0-11.4zM9 9l2.3-2.3M9 1.6v1.7M14.7 9h1.7M1.6 9h1.7',
  picture: 'M2.5 4h13v10h-13zM2.5 12l3.4-3.6 2.8 2.8 2-2 4.8 4.4M12 6.4a1 1 0 1 1 0 .1',
  typed: 'M2.5 5h13v8h-13zM5 7.7h.1M8 7.7h.1M11 7.7h.1M13.2 7.7h.1M5 10.5h8',
  latch: 'M3 6.5h7v5H3zM10 9h3.5M13.5 6v6M5.2 9h2.4',
  /** A plain shackle. */
  otherLock: 'M4.5 8h9v5.5h-9zM6.3 8V5.5a2.7 2.7 0 0 1 5.4 0V8',
  up: 'M9 15v-12M4.5 7.5l4.5-4.5 4.5 4.5',
  down: 'M9 3v12M4.5 10.5l4.5 4.5 4.5-4.5',
  left: 'M15 9h-12M7.5 4.5l-4.5 4.5 4.5 4.5',
  right: 'M3 9h12M10.5 4.5l4.5 4.5-4.5 4.5',
  leadsTo: 'M3 9h12M10.5 4.5l4.5 4.5-4.5 4.5',
};

export const SIGN_STROKE = 1.5;
