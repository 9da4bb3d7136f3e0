/** The full example against the poor cupboard of the browser test: short in several ways, and settled through remedies alone. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import { codeOf } from '../../src/game/codes.ts';
import { applyEdits, applyPatchesTo } from '../../src/game/edits/index.ts';
import type { Game } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { sameContent, writeGame } from '../../src/game/write.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import { readKit } from '../../src/kit/read.ts';
import { noted, type Remedy, remediesFor, shortagesOf } from '../../src/kit/remedies/index.ts';
import { sourceOf } from '../games/example.ts';

function fresh() {
  let made = 0;
  return { newId: () => `new${++made}`, nameOf: (kind: string) => kind };
}

function example(): Game {
  const read = readGame(sourceOf('mineral-hall'), { newId: () => 'game' });
  if (!read.ok) throw new Error('the example is not a game');
  return read.document.game;
}

function poor() {
  const file = new URL('../../e2e/files/poor-cupboard.csv', import.meta.url);
  const read = readKit(readFileSync(file, 'utf8'), { newId: () => 'item' });
  if (!read.ok) throw new Error('the cupboard is not a kit');
  return read.kit;
}

/** Rounds of: look at the first shortage, take the first remedy that changes the game. */
function settled(game: Game): { readonly game: Game; readonly taken: readonly Remedy[] } {
  const kit = poor();
  const ids = fresh();
  const taken: Remedy[] = [];
  let now = game;
  for (;;) {
    const fitting = fitKit(now, kit);
    const [shortage] = shortagesOf(fitting);
    if (!shortage) return { game: now, taken };
    const remedy = remediesFor(assess(now), kit, fitting, shortage, ids).find(({ code }) => code !== 'buy');
    if (!remedy) throw new Error(`no remedy for ${shortage.part} ${shortage.node}`);
    const applied = applyEdits(now, remedy.edits);
    if (!applied.ok) throw new Error(`${remedy.code} does not apply`);
    expect(sameContent(applyPatchesTo(applied.game, applied.inverse), now)).toBe(true);
    expect(fitKit(applied.game, kit).missing).toBeLessThan(fitting.missing);
    taken.push(remedy);
    now = applied.game;
  }
}

describe('the full example against a poor cupboard', { timeout: 60_000 }, () => {
  it('is short of locks, hasps and tools', () => {
    const parts = shortagesOf(fitKit(example(), poor())).map(({ part }) => part);
    expect(new Set(parts)).toEqual(new Set(['lock', 'hasp', 'tool']));
    expect(parts.filter((part) => part === 'lock').length).toBeGreaterThan(2);
  });

  it('ends, by the first remedy each time, in a game that can be won with what is there', () => {
    const before = example();
    const { game, taken } = settled(before);
    expect(fitKit(game, poor()).missing).toBe(0);
    const after = assess(game);
    expect(after.canBeWon).toBe(true);
    for (const { state } of after.context.codes()) expect(['right', 'key', 'latch']).toContain(state);
    expect(new Set(taken.map(({ code }) => code)).size).toBeGreaterThan(2);
    // Every answer that there was is still the same.
    for (const node of before.nodes.values()) {
      if (node.kind === 'puzzle' || node.kind === 'clue')
        expect(codeOf(game, node.id)).toBe(codeOf(before, node.id));
    }
    // And it is a file that can be read again.
    const text = writeGame({ provenance: { id: 'x', revision: 0 }, game });
    expect(readGame(text, { newId: () => 'y' }).ok).toBe(true);
  });

  it('is settled in the same way each time', () => {
    expect(settled(example()).taken).toEqual(settled(example()).taken);
  });

  it('every remedy on offer is sound: won, and less is missing', () => {
    const game = example();
    const kit = poor();
    const fitting = fitKit(game, kit);
    const codes = new Set<string>();
    for (const shortage of shortagesOf(fitting)) {
      for (const remedy of remediesFor(assess(game), kit, fitting, shortage, fresh())) {
        codes.add(remedy.code);
        if (remedy.code === 'buy') {
          const line = noted(kit, remedy).items.find(({ id }) => id === remedy.values.item.id);
          expect(line?.toBuy).toBe(shortage.missing);
          continue;
        }
        const applied = applyEdits(game, remedy.edits);
        if (!applied.ok) throw new Error(`${remedy.code} does not apply`);
        expect(assess(applied.game).canBeWon).toBe(true);
        expect(assess(applied.game).findings.map(({ code }) => code)).not.toContain('leadsNowhere');
        expect(fitKit(applied.game, kit).missing).toBeLessThan(fitting.missing);
      }
    }
    expect([...codes].sort()).toEqual(['buy', 'leaveOut', 'lend', 'otherCode', 'share', 'standIn']);
  });
});
