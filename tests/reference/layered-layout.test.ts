/** The page with a spine against the Eclipse Layout Kernel's layered layout (see layered.ts) of the example games. */
import { expect, test } from 'vitest';
import { gameOf, SLUGS } from '../games/example.ts';
import { beside } from './beside-layered.ts';

test.each(SLUGS)(
  '%s: text as large or larger, no line on another or through what it does not serve',
  async (slug) => {
    const { spine, layered } = await beside(gameOf(slug));
    expect(spine).toMatchObject({ onEachOther: 0, through: 0, pages: 1 });
    if (!layered) throw new Error('the layered layout was not found in time');
    expect(spine.names).toBeGreaterThanOrEqual(Math.min(layered.names, 9));
  },
);
