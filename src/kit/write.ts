/** From a kit to the text of its file: the same text for the same kit. */
import type { Kit } from './model.ts';

export function writeKit(kit: Kit): string {
  const { format, version, items, places, ...rest } = kit;
  return `${JSON.stringify({ format, version, ...rest, items, places }, null, 2)}\n`;
}
