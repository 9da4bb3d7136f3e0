/**
 * The cautions beside what is published. Each source is named with what it says of the matter in our words, and how that is known:
 * 'read' in the text of the rule as published; 'scope read' in the summary that the publisher gives; 'from memory' where neither was at hand.
 * What has no source is common practice.
 */
import { describe, expect, it } from 'vitest';
import { CAUTIONS, type CautionId, HAZARDS } from '../../src/cautions/index.ts';
import { cautionSources, cautionText, NO_SOURCE } from '../../src/words/cautions.ts';

interface Published {
  readonly number: string;
  readonly says: string;
  readonly known: 'read' | 'scope read' | 'from memory';
  /** Words of the caution that rest on it. */
  readonly told: readonly string[];
}

const PUBLISHED: Readonly<Record<CautionId, readonly Published[]>> = {
  egress: [
    {
      number: 'NFPA 101',
      says: 'Life Safety Code. 7.1.10: ways out are kept free of obstructions at all times. 7.2.1.5: a lock on a door in a way out asks for no key, tool or special knowledge from inside.',
      known: 'from memory',
      told: ['ever locked or blocked', 'without a key, a tool or a code'],
    },
    {
      number: 'NFPA 10',
      says: 'Standard for Portable Fire Extinguishers, chapter 6: they are neither obstructed nor hidden from view.',
      known: 'from memory',
      told: ['Extinguishers', 'free and in view'],
    },
  ],
  hiding: [],
  lightsOff: [
    {
      number: 'NFPA 101',
      says: 'Life Safety Code, section 7.8, illumination of means of egress: lit as long as people need the way. That pupils trip and that flashes harm some is common practice, no source.',
      known: 'from memory',
      told: ['Ways out stay lit as long as anybody is in the room'],
    },
  ],
  uvLight: [
    {
      number: 'IEC 62471',
      says: 'Photobiological safety of lamps and lamp systems, 2006: an exempt group and risk groups 1 (low), 2 (moderate) and 3 (high), by what they do to eyes and skin.',
      known: 'from memory',
      told: ['risk group', 'exempt and group 1 are the lowest', 'eyes'],
    },
    {
      number: 'IEC 62471-6',
      says: 'Part 6, 2022: the same for lamps made to give ultraviolet, with what their maker has to tell the user and how they are labelled.',
      known: 'scope read',
      told: ['the maker states it'],
    },
  ],
  buttonCells: [
    {
      number: '16 CFR part 1263',
      says: 'Safety Standard for Button Cell or Coin Batteries and Consumer Products Containing Such Batteries, 88 FR 65274 (21 September 2023): against swallowing by children of six and younger; takes UL 4200A over.',
      known: 'read',
      told: ['swallowed'],
    },
    {
      number: 'UL 4200A',
      says: 'Products Incorporating Button Batteries or Coin Cell Batteries, 2023: the compartment opens with a tool, or by at least two separate movements at once; what they prevent is internal burns.',
      known: 'scope read',
      told: ['with a tool, or with two movements at once', 'burn a child from inside'],
    },
  ],
  magnets: [
    {
      number: '16 CFR part 1262',
      says: 'Safety Standard for Magnets, 1262.1 and 1262.2(a): against death or injury by swallowing; hazardous is a magnet that fits the small-parts cylinder of 16 CFR 1501.4 and has a flux index of 50 kG² mm² or more.',
      known: 'read',
      told: ['can kill', 'small enough to swallow', 'from a flux index of 50 kG² mm²'],
    },
    {
      number: 'ASTM F963',
      says: 'Consumer Safety Specification for Toy Safety, 8.25: how the flux index is measured, as 16 CFR 1262.4 cites it.',
      known: 'read',
      told: ['flux index'],
    },
  ],
  food: [
    {
      number: 'Public Law 108-282, title II',
      says: 'Food Allergen Labeling and Consumer Protection Act of 2004: eight major allergens are named on labels; the FASTER Act of 2021 adds sesame as the ninth.',
      known: 'scope read',
      told: ['allergies', 'nine in the United States'],
    },
    {
      number: 'Regulation (EU) No 1169/2011',
      says: 'Annex II: fourteen substances that cause allergies or intolerances are named.',
      known: 'scope read',
      told: ['fourteen in the European Union'],
    },
  ],
};

describe('the sources of cautions', () => {
  it.each(CAUTIONS.map(({ id, sources }) => [id, sources] as const))(
    'are those published: %s',
    (id, sources) => {
      expect(sources.map(({ number }) => number)).toEqual(PUBLISHED[id].map(({ number }) => number));
      for (const { name, number, section } of sources) {
        expect(name).not.toBe('');
        expect(cautionSources(id)).toContain(number);
        if (section !== undefined) expect(cautionSources(id)).toContain(section);
      }
    },
  );

  it.each(CAUTIONS.map(({ id }) => id))('say what is told: %s', (id) => {
    for (const { told, says } of PUBLISHED[id]) {
      for (const words of told) expect(cautionText(id)).toContain(words);
      // Cited, not quoted: no run of eight words is the same.
      expect(sharedRun(says, cautionText(id))).toBeLessThan(8);
    }
  });

  it('are there for everything that can be stated of a thing', () => {
    for (const hazard of HAZARDS) expect(PUBLISHED[hazard]).not.toEqual([]);
  });

  it('are said to be missing where there are none', () => {
    expect(cautionSources('hiding')).toBe(NO_SOURCE);
  });
});

/** The most words that follow one another in both. */
function sharedRun(a: string, b: string): number {
  const words = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  const [left, right] = [words(a), words(b)];
  let most = 0;
  for (const [i] of left.entries()) {
    for (const [j] of right.entries()) {
      let run = 0;
      while (left[i + run] !== undefined && left[i + run] === right[j + run]) run += 1;
      most = Math.max(most, run);
    }
  }
  return most;
}
