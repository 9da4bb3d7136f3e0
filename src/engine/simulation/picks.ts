import type { PickOne } from '../../fasteners/index.ts';
import { drawKey } from './draw-key.ts';
import { philox } from './philox.ts';

/** Uniform picks that depend on the text alone: the same game is always offered the same. */
export function picksFor(text: string): PickOne {
  const [key0, key1] = drawKey(text);
  const words = new Uint32Array(4);
  let drawn = 0;
  return (count) => {
    if (drawn % 4 === 0) philox(drawn, 0, 0, 0, key0, key1, words);
    const word = words[drawn % 4] ?? 0;
    drawn += 1;
    return Math.floor((word / 2 ** 32) * count);
  };
}
