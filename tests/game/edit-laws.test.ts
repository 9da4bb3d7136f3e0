import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyPatchesTo } from '../../src/game/edits/index.ts';
import { sameJson } from '../../src/game/json.ts';
import type { Game, GameNode, Point } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { sameContent, writeGame } from '../../src/game/write.ts';
import { countingIds, gesturesArbitrary, play } from '../random-edits.ts';
import { gameArbitrary } from '../random-game.ts';

const provenance = { id: 'g', revision: 3 };

function textOf(game: Game): string {
  return writeGame({ provenance, game });
}

/** A field that this version does not know, at every level. */
function withUnknownFields(game: Game): Game {
  const nodes = new Map<string, GameNode>();
  const positions = new Map<string, Point>();
  for (const node of game.nodes.values()) {
    const estimate = { low: 1, likely: 2, high: 3, later: node.id };
    nodes.set(node.id, { ...node, minutes: estimate, later: node.id });
    positions.set(node.id, { x: 1, y: 2, later: node.id });
  }
  const links = new Map([...game.links].map(([id, link]) => [id, { ...link, later: id }]));
  const head = {
    ...game.head,
    later: 'head',
    lesson: { pupils: 5, later: 'lesson' },
    objectives: [{ id: 'o', text: 'Reads a map', later: 'objective' }],
  };
  return { head, nodes, links, positions };
}

const session = [gameArbitrary({ size: 14 }), gesturesArbitrary] as const;
const options = { seed: 41, numRuns: 150 };

describe('any sequence of edits', () => {
  test('is undone to the identical document, and redone to the identical result', () => {
    fc.assert(
      fc.property(...session, (game, gestures) => {
        const steps = play(game, gestures);
        let now = steps.at(-1)?.game ?? game;
        for (const step of steps.toReversed()) {
          now = applyPatchesTo(now, step.inverse);
          expect(now).toEqual(step.before);
        }
        expect(textOf(now)).toBe(textOf(game));
        for (const step of steps) {
          now = applyPatchesTo(now, step.patches);
          expect(now).toEqual(step.game);
        }
      }),
      options,
    );
  });

  test('never makes a document that the reader refuses, and the file gives the same document back', () => {
    fc.assert(
      fc.property(...session, (game, gestures) => {
        for (const step of play(game, gestures)) {
          const result = readGame(textOf(step.game), { newId: () => 'unused' });
          expect(result).toMatchObject({ ok: true, document: { provenance } });
          expect(result.ok && result.document.game).toEqual(step.game);
        }
      }),
      options,
    );
  });

  test('leaves what it does not change the same objects', () => {
    fc.assert(
      fc.property(...session, (game, gestures) => {
        for (const { before, game: after, patches } of play(game, gestures)) {
          for (const part of ['nodes', 'links', 'positions'] as const) {
            let changed = false;
            for (const [id, value] of after[part]) {
              const old = before[part].get(id);
              if (old !== undefined && sameJson(old, value)) expect(value).toBe(old);
              else changed = true;
            }
            if (!changed && before[part].size === after[part].size) expect(after[part]).toBe(before[part]);
          }
          if (sameContent(before, after)) expect(patches).toEqual([]);
        }
      }),
      options,
    );
  });

  test('changes nothing in the document that it was given', () => {
    fc.assert(
      fc.property(...session, (game, gestures) => {
        const text = textOf(game);
        play(game, gestures);
        expect(textOf(game)).toBe(text);
      }),
      options,
    );
  });

  test('keeps fields that this version does not know', () => {
    const later = (value: object | undefined) => (value && 'later' in value ? value.later : undefined);
    fc.assert(
      fc.property(...session, (plain, gestures) => {
        const game = withUnknownFields(plain);
        /** Taken out and put back in one gesture, a thing has a new position, so each gesture is one edit here. */
        const single = gestures.map(({ edits }) => ({ edits: edits.slice(0, 1) }));
        for (const { before, game: after } of play(game, single)) {
          for (const [id, node] of after.nodes) {
            const old = before.nodes.get(id);
            expect(later(node)).toBe(old ? later(old) : later(node));
            if (old?.minutes && node.minutes) expect(later(node.minutes)).toBe(later(old.minutes));
            const point = after.positions.get(id);
            const oldPoint = before.positions.get(id);
            if (point && oldPoint) expect(later(point)).toBe(later(oldPoint));
          }
          for (const [id, link] of after.links) {
            if (before.links.has(id)) expect(later(link)).toBe(later(before.links.get(id)));
          }
          expect(later(after.head)).toBe('head');
          if (after.head.lesson && before.head.lesson) {
            expect(later(after.head.lesson)).toBe(later(before.head.lesson));
          }
        }
      }),
      options,
    );
  });

  test('meets every reason for a refusal', () => {
    const reasons = new Set<string>();
    fc.assert(
      fc.property(...session, (game, gestures) => {
        play(game, gestures, (reason) => reasons.add(reason));
      }),
      options,
    );
    expect([...reasons].sort()).toEqual([
      'badValue',
      'cannotHold',
      'insideItself',
      'link',
      'needsContainer',
      'notOnMat',
      'taken',
      'unknown',
    ]);
  });
});

test('export then import is the identity on random games', () => {
  fc.assert(
    fc.property(gameArbitrary({ size: 30 }), (plain) => {
      const game = withUnknownFields(plain);
      const result = readGame(textOf(game), { newId: countingIds() });
      expect(result.ok && result.document).toEqual({ provenance, game });
      expect(result.ok && writeGame(result.document)).toBe(textOf(game));
    }),
    { seed: 42, numRuns: 100 },
  );
});
