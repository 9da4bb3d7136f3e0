import { describe, expect, it } from 'vitest';
import { flowAsLinked } from '../../../src/engine/flow.ts';
import { ShortCuts, withShortCut } from '../../../src/engine/guess/short-cut.ts';
import { measure } from '../../../src/engine/measures.ts';
import { compile } from '../../../src/engine/network.ts';
import type { Game } from '../../../src/game/model.ts';
import { fixed, gameOf } from '../../game-of.ts';
import { randomGame, seededRandom } from '../../random-game.ts';
import { naiveShortCut } from './naive-guess.ts';

function cutsOf(game: Game) {
  const network = compile(game);
  const measures = measure(network);
  const cuts = new ShortCuts(network, measures);
  const index = (id: string) => network.index.get(id) ?? -1;
  return { network, measures, cuts, index };
}

/** The first prize lies in the box that is opened last, so that much is needed. */
function withFarPrize(game: Game): Game {
  const { network, measures } = cutsOf(game);
  const boxes = [...network.ids.keys()].filter(
    (node) => game.nodes.get(network.ids[node] ?? '')?.kind === 'container' && measures.reached[node] === 1,
  );
  boxes.sort((a, b) => (measures.finish[b] ?? 0) - (measures.finish[a] ?? 0));
  const prize = [...game.nodes.values()].find((node) => node.kind === 'prize');
  const box = network.ids[boxes[0] ?? -1];
  if (prize === undefined || box === undefined) return game;
  return { ...game, nodes: new Map(game.nodes).set(prize.id, { ...prize, in: box }) };
}

describe('short cuts', () => {
  const chest = gameOf(
    [
      { id: 'shelf', kind: 'place', ...fixed(2) },
      { id: 'note', kind: 'clue', in: 'shelf' },
      { id: 'sums', kind: 'puzzle', answer: '4', ...fixed(5) },
      { id: 'moon', kind: 'puzzle', answer: '7', ...fixed(6) },
      { id: 'box', kind: 'container' },
      { id: 'lock', kind: 'fastener', on: 'box', type: 'number', code: '47', ...fixed(1) },
      { id: 'prize', kind: 'prize', in: 'box' },
    ],
    ['note>sums', 'note>moon', 'sums>lock', 'moon>lock'],
  );

  it('skip what only the lock needed, and never the lock', () => {
    const { network, cuts, index } = cutsOf(chest);
    const names = (nodes: readonly number[]) => nodes.map((node) => network.ids[node]);
    const atOnce = cuts.of(index('lock'), [], 3);
    expect(names(atOnce.skips)).toEqual(['moon', 'shelf', 'sums']);
    expect(atOnce).toMatchObject({ at: 0, minutesSkipped: 13, shortest: 3, saved: 6 });
    const withSums = cuts.of(index('lock'), [index('sums')], 0.5);
    expect(names(withSums.skips)).toEqual(['moon']);
    expect(withSums).toMatchObject({ at: 7, minutesSkipped: 6, shortest: 7.5, saved: 1.5 });
    expect(cuts.solvedAt(index('lock'), withSums)).toBe(7 + 6 + 1);
  });

  it('save nothing where solving is sooner', () => {
    const { cuts, index } = cutsOf(chest);
    expect(cuts.of(index('lock'), [], 40)).toMatchObject({ saved: 0, shortest: 9, minutesSkipped: 13 });
    expect(cuts.of(index('lock'), [], Infinity)).toMatchObject({ saved: 0, shortest: 9, minutesSkipped: 13 });
  });

  it('agree with the changed document, recompiled in so many words', () => {
    let skipping = 0;
    let saving = 0;
    let ringed = 0;
    for (let seed = 1; seed <= 450; seed++) {
      const game = withFarPrize(
        randomGame(seed, 12 + (seed % 12), { rings: seed % 3 !== 0, prizes: 1 + (seed % 3) }),
      );
      if (!measure(compile(game)).solvable && seed % 20 !== 0) continue;
      const random = seededRandom(seed);
      const { network, measures, cuts } = cutsOf(game);
      for (const [node, id] of network.ids.entries()) {
        const kind = game.nodes.get(id)?.kind;
        if (kind !== 'fastener' && kind !== 'place') continue;
        if (kind === 'place' && random() < 0.5) continue;
        if (measures.reached[node] !== 1 && random() < 0.7) continue;
        const given = [
          ...network.needs.items.subarray(network.needs.starts[node], network.needs.starts[node + 1]),
        ].filter((need) => measures.reached[need] === 1 && random() < 0.5);
        const minutes = Math.floor(random() * 40) / 8;
        const cut = cuts.of(node, given, minutes);
        const naive = naiveShortCut(
          game,
          id,
          given.map((other) => network.ids[other] ?? ''),
          minutes,
        );
        const where = `seed ${seed}, ${id} given ${given.map((other) => network.ids[other])}, ${minutes} minutes`;
        expect(
          cut.skips.map((step) => network.ids[step]),
          where,
        ).toEqual([...naive.skips].sort());
        expect(cut.at, where).toBeCloseTo(naive.at, 9);
        expect(cut.minutesSkipped, where).toBeCloseTo(naive.minutesSkipped, 9);
        expect(cut.saved, where).toBeCloseTo(naive.saved, 6);
        expect(cuts.solvedAt(node, cut), where).toBeCloseTo(naive.solvedAt, 6);
        if (cut.skips.length > 0) skipping++;
        if (cut.skips.length > 0 && flowAsLinked(network).rings) ringed++;
        if (cut.saved > 0) saving++;
      }
    }
    expect(skipping).toBeGreaterThan(30);
    expect(saving).toBeGreaterThan(60);
    expect(ringed).toBeGreaterThan(3);
  });

  it('are asked again without a trace of what was asked before', () => {
    const game = randomGame(7, 40, { rings: false });
    const first = cutsOf(game);
    const all = (asked: ReturnType<typeof cutsOf>) =>
      [...asked.network.ids.keys()].map((node) => asked.cuts.of(node, [], 1));
    const once = all(first);
    expect(all(first)).toEqual(once);
    expect(all(cutsOf(game)).reverse()).toEqual([...once].reverse());
  });

  it('leave the network as it was', () => {
    const { network } = cutsOf(chest);
    const before = structuredClone(network.events);
    withShortCut(network, 3, [0], 1);
    expect(network.events).toEqual(before);
  });
});
