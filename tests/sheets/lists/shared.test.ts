/** What there is fewer of than teams, on paper. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/findings/assess.ts';
import type { NodeId } from '../../../src/game/model.ts';
import { copiesOf } from '../../../src/sheets/copies.ts';
import { listOf } from '../../../src/sheets/lists/index.ts';
import { paperOf } from '../../../src/sheets/paper.ts';
import { INTRO, thingText } from '../../../src/words/lists.ts';
import { plain } from '../../../src/words/sentence.ts';
import { gameOf } from '../../game-of.ts';
import { ALL_ON } from '../all-on.ts';

/** Four teams. */
const game = gameOf(
  [
    { id: 'shelf', kind: 'place', shared: 1 },
    { id: 'lamp', kind: 'tool', in: 'shelf', shared: 1 },
    { id: 'lens', kind: 'tool', in: 'shelf', shared: 4 },
    { id: 'page', kind: 'clue', in: 'shelf' },
    { id: 'chest', kind: 'container', shared: 2 },
    { id: 'wheels', kind: 'fastener', on: 'chest', type: 'number', code: '472' },
    { id: 'tin', kind: 'container', in: 'chest' },
    { id: 'badge', kind: 'prize', in: 'tin' },
    { id: 'sums', kind: 'puzzle', answer: '472' },
  ],
  ['page>sums', 'lamp>sums', 'lens>sums', 'sums>wheels'],
);
const assessment = assess(game);

/** Boxes to tick beside it, over all pages of a list. */
function ticksBeside(name: 'hidden' | 'contents', id: NodeId): number {
  const frame = { assessment, options: ALL_ON, paper: paperOf('A4', 'portrait') };
  const marks = listOf(name, frame).flatMap((page) => page.marks);
  return marks.filter((mark) => mark.mark === 'area' && mark.role === 'tick' && mark.of === id).length;
}

describe('what there is fewer of than teams', () => {
  it('is counted as it says; what lies in a box or hangs on it follows the box, what lies in a place does not', () => {
    expect([...game.nodes.keys()].map((id) => [id, copiesOf(game, id)])).toEqual([
      ['shelf', 1],
      ['lamp', 1],
      ['lens', undefined],
      ['page', undefined],
      ['chest', 2],
      ['wheels', 2],
      ['tin', 2],
      ['badge', 2],
      ['sums', undefined],
    ]);
  });

  it('has as many boxes to tick', () => {
    expect(['lamp', 'lens', 'page', 'chest'].map((id) => ticksBeside('hidden', id))).toEqual([1, 4, 4, 2]);
    expect(['tin', 'badge', 'wheels'].map((id) => ticksBeside('contents', id))).toEqual([2, 2, 2]);
  });

  it('says so', () => {
    expect(thingText(assessment, 'lamp')).toBe('tool, one for all teams');
    expect(thingText(assessment, 'chest')).toBe('box, two for all teams');
    expect(thingText(assessment, 'lens')).toBe('tool');
    expect(plain(INTRO.hidden(4, 'each', true, false))).toContain(
      '4 sets: each thing is there 4 times, fewer where it says so, with a tick for each set.',
    );
  });
});
