/** How large words are set as the map grows smaller, and when trays say what they hold instead. */
import { expect, test } from 'vitest';
import { foldedBelow, levelAt } from '../../../app/flow/levels.ts';
import { growth, lineCount, PITCH } from '../../../app/flow/small.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView } from '../../../src/map/layout.ts';
import { randomGame } from '../../random-game.ts';

test('as low as nine tenths of the names can be read at 9 px, and no lower than half size', () => {
  expect(foldedBelow([])).toBe(0.6);
  expect(foldedBelow([13.5])).toBe(0.6);
  expect(foldedBelow([22, 22])).toBe(0.5);
  expect(foldedBelow([16, 16])).toBe(9 / 16);
  expect(foldedBelow([13.5, ...Array<number>(19).fill(16)])).toBe(9 / 16);
  expect(foldedBelow([13.5, 13.5, 16, 16])).toBe(0.6);
});

test('full, then names, then shapes', () => {
  expect([0.6, 0.57, 0.55, 0.49, 0.47].map((zoom) => levelAt(zoom, 9 / 16))).toEqual([
    'full',
    'full',
    'names',
    'names',
    'shapes',
  ]);
});

test('words grow no further than the card is high, and never below full size', () => {
  for (let seed = 0; seed < 20; seed++) {
    const { slots } = layOut(randomGame(seed, 30), plainView);
    for (const slot of slots.values()) {
      const { name, code } = growth(slot);
      expect(Math.min(name, code)).toBeGreaterThanOrEqual(13.5);
      if (slot.kind === 'place' || slot.kind === 'container') continue;
      expect(Math.max(name, code, 13.5)).toBeLessThanOrEqual(
        Math.max(13.5, slot.height / (lineCount(slot) * PITCH)),
      );
    }
  }
});
