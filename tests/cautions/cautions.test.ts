/** Cautions go with what is stated, with what the words of a game suggest, and with the kind of a thing. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CAUTIONS, cautionsFor, cautionsOf, HAZARDS } from '../../src/cautions/index.ts';
import {
  CAUTION_SHEET,
  cautionSources,
  cautionText,
  cautionTitle,
  hidingCautions,
  OWN_RULES,
} from '../../src/words/cautions.ts';
import { plain } from '../../src/words/sentence.ts';
import { gameOf, type NodeDraft } from '../game-of.ts';

const README = readFileSync('README.md', 'utf8').replaceAll("'", '’');

function ofThe(draft: NodeDraft) {
  const game = gameOf([draft]);
  const node = game.nodes.get(draft.id);
  return node ? cautionsOf(node) : [];
}

const tool = (name: string, more: object = {}): NodeDraft => ({ id: 'tool', kind: 'tool', name, ...more });

describe('cautions of a thing', () => {
  it('are those of its kind', () => {
    expect(ofThe({ id: 'p', kind: 'place', name: 'Shelf' })).toEqual([{ id: 'hiding', cause: 'kind' }]);
    expect(ofThe({ id: 'b', kind: 'container', name: 'Tin' })).toEqual([{ id: 'egress', cause: 'kind' }]);
    expect(ofThe({ id: 'f', kind: 'fastener', on: 'b' })).toEqual([{ id: 'egress', cause: 'kind' }]);
    expect(ofThe({ id: 'w', kind: 'prize', name: 'Badge' })).toEqual([{ id: 'food', cause: 'kind' }]);
    expect(ofThe(tool('Hand lens'))).toEqual([]);
  });

  it.each(HAZARDS)('are what the teacher states: %s', (hazard) => {
    expect(ofThe(tool('Lens', { hazards: [hazard] }))).toEqual([{ id: hazard, cause: 'stated' }]);
  });

  it('are not what cannot be stated, or what this version does not know', () => {
    expect(ofThe(tool('Lens', { hazards: ['egress', 'constructor', 'wasps'] }))).toEqual([]);
  });

  it.each([
    ['Magnet on a string', 'magnets'],
    ['Small torch', 'buttonCells'],
    ['Black light', 'uvLight'],
    ['Chocolate coins', 'food'],
    ['Turn off the lights', 'lightsOff'],
  ])('are what its words suggest: %s', (name, id) => {
    expect(ofThe(tool(name))).toEqual([{ id, cause: 'suggested' }]);
    expect(ofThe(tool('Thing', { note: `A ${name}.` }))).toEqual([{ id, cause: 'suggested' }]);
  });

  it('are not what pupils read about, but what they are told to do', () => {
    expect(ofThe(tool('Table', { text: 'Which of these does a magnet pull?' }))).toEqual([]);
    expect(ofThe(tool('Slip', { text: 'Turn off the lights and look again.' }))).toEqual([
      { id: 'lightsOff', cause: 'suggested' },
    ]);
  });

  it('are both of an ultraviolet lamp, whose cells are small', () => {
    expect(ofThe(tool('UV lamp')).map(({ id }) => id)).toEqual(['uvLight', 'buttonCells']);
  });

  it('see a way out in the name of a place, not in its note', () => {
    expect(ofThe({ id: 'p', kind: 'place', name: 'Behind the door' })[0]).toEqual({
      id: 'egress',
      cause: 'suggested',
    });
    const place = { id: 'p', kind: 'place', name: 'Shelf', note: 'Not near the door.' } as const;
    expect(ofThe(place).map(({ id }) => id)).toEqual(['hiding']);
    expect(ofThe(tool('Door plan'))).toEqual([]);
  });

  it('take no word for a part of another', () => {
    for (const name of ['Outdoors', 'Nutmeg', 'Investigate', 'Juvenile'])
      expect(ofThe(tool(name))).toEqual([]);
    expect(ofThe({ id: 'b', kind: 'container', name: 'Agate case' })[0]?.cause).toBe('kind');
  });
});

describe('cautions of a game', () => {
  it('are each told once, with what they concern by name', () => {
    const game = gameOf([
      { id: 'z', kind: 'tool', name: 'Magnet' },
      { id: 'a', kind: 'tool', name: 'Wand', hazards: ['magnets'] },
      { id: 'p', kind: 'place', name: 'Shelf' },
      { id: 'q', kind: 'place', name: 'Stairs' },
      { id: 'b', kind: 'container', name: 'Tin' },
      { id: 'f', kind: 'fastener', on: 'b' },
    ]);
    expect(cautionsFor(game)).toEqual([
      { id: 'egress', things: ['q'], kinds: ['container', 'fastener'] },
      { id: 'hiding', things: [], kinds: ['place'] },
      { id: 'magnets', things: ['z', 'a'], kinds: [] },
    ]);
  });

  it('pass over what is not used today', () => {
    const game = gameOf([
      tool('Magnet', { leftOut: true }),
      { id: 'b', kind: 'container', leftOut: true },
      { id: 'f', kind: 'fastener', on: 'b' },
    ]);
    expect(cautionsFor(game)).toEqual([]);
  });
});

describe('the words of cautions', () => {
  it('leave the last word to local codes and the school', () => {
    for (const text of [hidingCautions(), plain(CAUTION_SHEET.intro)]) {
      expect(text.endsWith(OWN_RULES)).toBe(true);
    }
  });

  it('stand word for word in the README, and no others', () => {
    const list = CAUTIONS.map(
      ({ id }) => `- **${cautionTitle(id)}.** ${cautionText(id)} (${cautionSources(id)})`,
    ).join('\n');
    const [, section = ''] = README.split('## Before you play it with children\n');
    expect(
      section
        .split('\n## ')[0]
        ?.match(/^- .*$/gmu)
        ?.join('\n'),
    ).toBe(list);
    expect(section).toContain(OWN_RULES);
  });

  it('are short main clauses', () => {
    for (const { id } of CAUTIONS) {
      for (const clause of cautionText(id).split(/(?<=[.:;]) /u)) {
        expect(clause.split(' ').length, clause).toBeLessThanOrEqual(22);
      }
    }
  });
});
