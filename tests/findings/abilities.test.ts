/** What asks something of a pupil needs another way, where the game says so; a game that says nothing is left in peace. */
import { describe, expect, it } from 'vitest';
import { FASTENER_TYPES } from '../../src/fasteners/index.ts';
import { assess } from '../../src/findings/assess.ts';
import { findingSentence } from '../../src/words/findings/index.ts';
import { plain } from '../../src/words/sentence.ts';
import type { NodeDraft } from '../game-of.ts';
import { codesIn, only, winnable } from './small-games.ts';

const clue = (more: object): NodeDraft => ({
  id: 'cards',
  kind: 'clue',
  name: 'Rock cards',
  decoy: true,
  ...more,
});
const lock = (type: string, more: object): NodeDraft => ({
  id: 'hook',
  kind: 'fastener',
  on: 'chest',
  type,
  ...more,
});

describe('no other way', () => {
  it('is worth a look where something is asked and nothing else will do', () => {
    const game = winnable([clue({ asks: ['fineHands', 'colour'] })]);
    const finding = only(assess(game), 'noOtherWay');
    expect(finding).toMatchObject({ level: 'look', nodes: ['cards'] });
    expect(plain(findingSentence(game, finding))).toBe(
      'The clue Rock cards asks for fine hands and telling colours, and there is no other way. A pupil who cannot do that has to stand aside.',
    );
    expect(assess(game).canBeWon).toBe(true);
  });

  it.each([
    ['nothing is said', {}],
    ['nothing is asked', { asks: [] }],
    ['another way is written down', { asks: ['colour'], otherWay: 'Each card has a shape.' }],
    ['it is not used today', { asks: ['colour'], leftOut: true }],
  ])('is not said where %s', (_, more) => {
    expect(codesIn(winnable([clue(more)]))).not.toContain('noOtherWay');
  });

  it('is said where the other way is an empty line, and of words that this version does not know', () => {
    const game = winnable([clue({ asks: ['taste', 'taste'], otherWay: '  ' })]);
    expect(only(assess(game), 'noOtherWay').values).toEqual({ node: 'cards', asks: ['taste'] });
  });

  it.each(FASTENER_TYPES.map(({ type, asks }) => [type, asks] as const))(
    'is not said of what a lock always asks: %s',
    (type, asks) => {
      expect(codesIn(winnable([lock(type, { asks: [...asks] })]))).not.toContain('noOtherWay');
      const more = only(assess(winnable([lock(type, { asks: [...asks, 'hearing'] })])), 'noOtherWay');
      expect(more.values.asks).toEqual(['hearing']);
    },
  );
});
