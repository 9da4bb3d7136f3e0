/** Laws that hold of every game, on random ones: rings, choices, things left out, ids that trip up objects. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../src/findings/assess.ts';
import { prizesOn } from '../../src/findings/blame.ts';
import { identityOf } from '../../src/findings/finding.ts';
import { prizesLost } from '../../src/findings/level.ts';
import { proposalsFor } from '../../src/findings/propose.ts';
import { applyEdits } from '../../src/game/edits/index.ts';
import type { Game } from '../../src/game/model.ts';
import { stopsTheGame } from '../engine/naive-stops.ts';
import { gameArbitrary } from '../random-game.ts';
import { edited, freshIds } from './small-games.ts';

const runs = (numRuns: number) => ({ seed: 20240611, numRuns });

function stopping({ findings }: Assessment): string[] {
  return findings.filter(({ level }) => level === 'stops').map(identityOf);
}

/** Nodes, links and positions in another order of the same maps. */
function reordered(game: Game): Game {
  return {
    ...game,
    nodes: new Map([...game.nodes].reverse()),
    links: new Map([...game.links].reverse()),
    positions: new Map([...game.positions].reverse()),
  };
}

describe('findings of any game', () => {
  it('say that it can be won exactly when it is solvable and nothing stops it, and stop whatever is not solvable', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        const assessment = assess(game);
        const stops = stopping(assessment);
        expect(assessment.canBeWon).toBe(assessment.measures.solvable && stops.length === 0);
        if (!assessment.measures.solvable) expect(stops.length).toBeGreaterThan(0);
      }),
      runs(300),
    );
  });

  it('name every prize that is never reached in one that stops the game', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        const { findings, network, measures } = assess(game);
        const named = new Set<string>();
        for (const { level, values } of findings) {
          if (level !== 'stops') continue;
          if ('prizes' in values) for (const prize of values.prizes) named.add(prize);
          if ('prize' in values) named.add(values.prize);
        }
        for (const prize of network.prizes) {
          if (measures.reached[prize] !== 1) expect(named).toContain(network.ids[prize]);
        }
      }),
      runs(300),
    );
  });

  it('speak of nodes and links that exist, each once, what stops first', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        const { findings } = assess(game);
        for (const { nodes, links } of findings) {
          for (const id of nodes) expect(game.nodes.has(id)).toBe(true);
          for (const id of links) expect(game.links.has(id)).toBe(true);
          expect(new Set(nodes).size).toBe(nodes.length);
        }
        const identities = findings.map(identityOf);
        expect(new Set(identities).size).toBe(identities.length);
        const levels = findings.map(({ level }) => level);
        expect(levels).toEqual([...levels].sort().reverse());
      }),
      runs(300),
    );
  });

  it('do not depend on the order of nodes and links', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        expect(assess(reordered(game)).findings).toEqual(assess(game).findings);
      }),
      runs(200),
    );
  });

  it('have their level by the rule of the engine', () => {
    fc.assert(
      fc.property(gameArbitrary({ prizes: 2 }), (game) => {
        const { context, network, measures } = assess(game);
        const roots = context.roots().flatMap((root) => (root.cause === 'ring' ? [] : [root.node]));
        const codes = context.codes().flatMap(({ node, state }) => (state === 'wrong' ? [node] : []));
        for (const node of [...roots, ...codes]) {
          expect(prizesLost(context, [node]).length > 0).toBe(stopsTheGame(network, node));
        }
        const unreached = [...network.ids.keys()].filter((node) => measures.reached[node] !== 1);
        const blamed = prizesOn(network, measures.reached, unreached);
        for (const [i, node] of unreached.entries()) {
          expect((blamed[i]?.length ?? 0) > 0).toBe(stopsTheGame(network, node));
        }
      }),
      runs(300),
    );
  });
});

describe('proposals for any game', () => {
  it('settle their finding, stop the game in no new way, and can be undone', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 12 }), (game) => {
        const before = assess(game);
        for (const finding of before.findings) {
          for (const proposal of proposalsFor(before, finding, freshIds())) {
            expect(applyEdits(game, proposal.edits).ok).toBe(true);
            const after = assess(edited(game, proposal.edits));
            expect(after.findings.map(identityOf)).not.toContain(identityOf(finding));
            expect(stopping(before)).toEqual(expect.arrayContaining(stopping(after)));
            if (before.canBeWon) expect(after.canBeWon).toBe(true);
          }
        }
      }),
      runs(60),
    );
  });
});
