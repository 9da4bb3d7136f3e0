/** How a code is typed, as the form says it beside the field; the trouble with what was typed: lock-codes.ts. */
import type { LockType } from '../fasteners/index.ts';

/** Undefined where what to type is plain. */
const HINTS: Readonly<Partial<Record<LockType, string>>> = {
  direction: 'Press the arrows, or type up, down, left, right or U, D, L, R.',
  dial: 'Numbers with a space between them: 32 14 25. The arrows show which way the dial is turned, as a rule.',
  picture: 'Names with a space between them: FOX SUN BELL.',
};

const byType = new Map<string, string>(Object.entries(HINTS));

export function codeHint(type: string): string | undefined {
  return byType.get(type);
}

export const CODE = {
  add: (symbol: string) => `Add ${symbol}`,
  turns: { right: 'right to', left: 'left to' },
  draw: 'Draw a good code',
  drawHint: 'The answers that give it change with it.',
  instead: 'Words that it can show',
};
