/** My kit as text, as the browser keeps it. */
import type { Kit } from '../../src/kit/model.ts';
import { kitFile } from '../../src/kit/schema.ts';

/** Undefined: the text is no kit. */
export function kitOf(text: unknown): Kit | undefined {
  if (typeof text !== 'string') return undefined;
  try {
    const reading = kitFile.safeParse(JSON.parse(text));
    return reading.success ? reading.data : undefined;
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return undefined;
  }
}

export function textOf(kit: Kit): string {
  return JSON.stringify(kit);
}
