/** What a lock opens with, as a line drawing in the colour of its text. */

import { isKnownType, type LockType } from '../../../src/fasteners/index.ts';

const DRAWINGS: Readonly<Record<LockType, string>> = {
  key: 'M4.5 7.5h9v6h-9zM6.3 7.5V5a2.7 2.7 0 0 1 5.4 0v2.5M9 10v1.4',
  number: 'M2.5 4.5h4v9h-4zM7 4.5h4v9H7zM11.5 4.5h4v9h-4zM4.5 7.5v3M9 7.5v3M13.5 7.5v3',
  word: 'M2.5 4.5h6.2v9H2.5zM9.3 4.5h6.2v9H9.3zM4.3 11.3l1.3-4 1.3 4M4.8 10h1.6M11.3 7v4.2h1.2a1 1 0 0 0 0-2.1h-1.2 1a1 1 0 0 0 0-2.1z',
  direction: 'M9 2.5v13M2.5 9h13M7 4.5l2-2 2 2M7 13.5l2 2 2-2M4.5 7l-2 2 2 2M13.5 7l2 2-2 2',
  dial: 'M9 3.3a5.7 5.7 0 1 1 0 11.4a5.7 5.7 0 0 1 0-11.4zM9 9l2.3-2.3M9 1.6v1.7M14.7 9h1.7M1.6 9h1.7',
  picture: 'M2.5 4h13v10h-13zM2.5 12l3.4-3.6 2.8 2.8 2-2 4.8 4.4M12 6.4a1 1 0 1 1 0 .1',
  typed: 'M2.5 5h13v8h-13zM5 7.7h.1M8 7.7h.1M11 7.7h.1M13.2 7.7h.1M5 10.5h8',
  latch: 'M3 6.5h7v5H3zM10 9h3.5M13.5 6v6M5.2 9h2.4',
};

/** A type that this version does not know: a plain shackle. */
const OTHER = 'M4.5 8h9v5.5h-9zM6.3 8V5.5a2.7 2.7 0 0 1 5.4 0V8';

export function LockSign({ type }: { type: string | undefined }) {
  return (
    <svg className="flow-sign" viewBox="0 0 18 18" aria-hidden="true">
      <path d={type !== undefined && isKnownType(type) ? DRAWINGS[type] : OTHER} />
    </svg>
  );
}
