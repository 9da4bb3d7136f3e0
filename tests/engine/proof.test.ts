import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { EarliestProofs } from '../../src/engine/proof.ts';
import { fixed, gameOf } from '../game-of.ts';

const game = gameOf(
  [
    { id: 'bench', kind: 'place', ...fixed(1) },
    { id: 'box', kind: 'container', in: 'bench' },
    { id: 'desk', kind: 'place', ...fixed(2) },
    { id: 'hasp1', kind: 'fastener', on: 'box', type: 'word', ...fixed(1) },
    { id: 'hasp2', kind: 'fastener', on: 'box', type: 'latch', ...fixed(1) },
    { id: 'late', kind: 'place', ...fixed(9) },
    { id: 'prize', kind: 'prize', in: 'box' },
    { id: 'riddle', kind: 'puzzle', need: 1, ...fixed(4) },
  ],
  ['desk>riddle', 'late>riddle', 'riddle>hasp1'],
);
const network = compile(game);
const proofs = new EarliestProofs(network);
const at = (id: string) => network.index.get(id) ?? -1;
const idsOf = (nodes: readonly number[]) => nodes.map((node) => network.ids[node]);

describe('the reason for', () => {
  it('a box: its holder and all its fasteners, with what it waited for last', () => {
    const reason = proofs.reason(at('box'));
    expect(idsOf(reason?.because ?? [])).toEqual(['bench', 'hasp1', 'hasp2']);
    expect(idsOf(reason?.last ?? [])).toEqual(['hasp1']);
    expect(reason?.atHand).toBe(-1);
  });

  it('a fastener: the box at hand, not open, and what tells its code', () => {
    const reason = proofs.reason(at('hasp1'));
    expect(reason?.atHand).toBe(at('box'));
    expect(idsOf(reason?.because ?? [])).toEqual(['riddle']);
    expect(idsOf(reason?.last ?? [])).toEqual(['riddle']);
    expect(idsOf(proofs.atHandReason(at('box'))?.because ?? [])).toEqual(['bench']);
  });

  it('a choice: only the quicker way', () => {
    expect(idsOf(proofs.reason(at('riddle'))?.because ?? [])).toEqual(['desk']);
    expect(idsOf(proofs.steps(at('prize')))).toEqual(['bench', 'desk', 'hasp1', 'hasp2', 'riddle']);
  });

  it('what is not reached: none', () => {
    const shut = compile(
      gameOf([
        { id: 'b', kind: 'container' },
        { id: 'f', kind: 'fastener', on: 'b' },
      ]),
    );
    expect(new EarliestProofs(shut).reason(0)).toBeUndefined();
    expect(new EarliestProofs(shut).atHandReason(0)?.because).toEqual([]);
  });
});

describe('side by side', () => {
  it('are steps of which neither waits for the other', () => {
    expect(idsOf(proofs.sideBySide(at('bench')))).toEqual(['desk', 'late', 'riddle']);
    expect(idsOf(proofs.sideBySide(at('hasp1')))).toEqual(['hasp2', 'late']);
    expect(proofs.sideBySide(at('box'))).toEqual([]);
  });
});
