import { expect, test } from 'vitest';
import { crossings, linesFor } from '../../src/spine/inversions.ts';
import { seededRandom } from '../random-game.ts';

test('counts each pair of lines whose ends are in opposite order', () => {
  const random = seededRandom(3);
  for (let round = 0; round < 200; round++) {
    const size = Math.floor(20 * random());
    const ends = Array.from(
      { length: size },
      () => [Math.floor(8 * random()), Math.floor(8 * random())] as const,
    );
    const lines = linesFor(size);
    for (const [near, far] of ends) {
      lines.near[lines.count] = near;
      lines.far[lines.count] = far;
      lines.count++;
    }
    let expected = 0;
    for (const [i, a] of ends.entries()) {
      for (const b of ends.slice(i + 1)) if ((a[0] - b[0]) * (a[1] - b[1]) < 0) expected++;
    }
    expect(crossings(lines)).toBe(expected);
  }
});
