/** The cautions in words: what the cited sources say of the matter, summed up, and no advice beyond it. Each gives way to local codes and the school’s own rules. The README lists the same, word for word. */
import { CAUTIONS, type CautionId, type CautionOfGame, type Hazard, ownCautions } from '../cautions/index.ts';
import type { Game, Kind, NodeId } from '../game/model.ts';
import { kindPlural } from './kinds.ts';
import { list } from './numbers.ts';
import { sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

interface Words {
  /** On a button, and above the sentences. */
  readonly title: string;
  readonly says: readonly string[];
}

const WORDS: Readonly<Record<CautionId, Words>> = {
  egress: {
    title: 'Nobody is locked in',
    says: [
      'No person is ever locked in: locks go on boxes.',
      'No door, gate, exit, corridor or stair is ever locked or blocked, and none is part of the game.',
      'Everybody can leave at any time without a key, a tool or a code.',
      'Extinguishers, alarms, first-aid boxes and signs stay free and in view, and are no part of the game.',
    ],
  },
  hiding: {
    title: 'Hiding places',
    says: [
      'Nothing lies above pupils’ head height, and nobody climbs.',
      'Nothing lies at sockets, cables, heaters, open windows, medicine or chemicals.',
      'Off limits: pupils’ bags, coats and drawers, the teacher’s desk, bins.',
      'Tell the class so before it starts.',
    ],
  },
  lightsOff: {
    title: 'Lights off',
    says: [
      'In the dark pupils trip, and flashing light can harm one who is photosensitive: let nothing flash.',
      'Ways out stay lit as long as anybody is in the room, and steps with them.',
      'Lights off darken the room for every team: for a single team, a dark box or a dark corner will do.',
    ],
  },
  uvLight: {
    title: 'UV lamp',
    says: [
      'It never shines into eyes.',
      'Lamps are rated by risk group: exempt and group 1 are the lowest.',
      'Use one of these, for short looks at paper in the teacher’s sight: see whether the maker states it.',
    ],
  },
  buttonCells: {
    title: 'Button cells',
    says: [
      'A button cell that is swallowed can burn a child from inside.',
      'Use only devices whose battery lid opens only with a tool, or with two movements at once.',
      'Count them out, and count them in.',
    ],
  },
  magnets: {
    title: 'Small magnets',
    says: [
      'Small strong magnets that are swallowed can kill: use none that are loose.',
      'One that is loose and small enough to swallow counts as hazardous from a flux index of 50 kG² mm².',
      'See whether the maker states it.',
    ],
  },
  food: {
    title: 'Food',
    says: [
      'Ask about allergies before there is any food in it, and before any plant, latex or scent.',
      'Labels name the major allergens: nine in the United States, fourteen in the European Union.',
    ],
  },
};

const IN_A_LINE: Readonly<Record<CautionId, string>> = {
  egress: 'ways out stay free',
  hiding: 'hiding place',
  lightsOff: 'lights off',
  uvLight: 'UV lamp',
  buttonCells: 'button cells',
  magnets: 'small magnets',
  food: 'food',
};

/** Behind every caution. */
export const OWN_RULES = 'Local fire and building codes and the school’s own rules come first.';

export const NO_SOURCE = 'Common practice, no source.';

export function cautionTitle(id: CautionId): string {
  return WORDS[id].title;
}

export function hazardName(hazard: Hazard): string {
  return WORDS[hazard].title;
}

/** What is to be heeded, without its sources. */
export function cautionText(id: CautionId): string {
  return WORDS[id].says.join(' ');
}

/** "Source: NFPA 101, 7.8", "Sources: UL 4200A; NFPA 101, 7.8" */
export function cautionSources(id: CautionId): string {
  const sources = CAUTIONS.find((caution) => caution.id === id)?.sources ?? [];
  if (sources.length === 0) return NO_SOURCE;
  const numbers = sources.map(({ number, section }) =>
    section === undefined ? number : `${number}, ${section}`,
  );
  return `${numbers.length === 1 ? 'Source' : 'Sources'}: ${numbers.join('; ')}`;
}

/** What all of these kinds are: "all boxes and locks". */
function everyOf(kinds: readonly Kind[]): string {
  return `all ${list(kinds.map(kindPlural))}`;
}

/** What it concerns in this game: "UV torch and Dark corner", "all boxes and locks". */
export function cautionConcerns(
  { things, kinds }: CautionOfGame,
  names: (ids: readonly NodeId[]) => Sentence,
): Sentence {
  if (kinds.length === 0) return names(things);
  return sentence(
    everyOf(kinds),
    ...(things.length > 0 ? [things.length === 1 ? '; look at ' : '; look at these: ', names(things)] : []),
  );
}

/** Beside a thing on a list: "caution: UV lamp, button cells". Empty where nothing is its own. */
export function cautionNote(game: Game, id: NodeId): string {
  const titles = ownCautions(game, id).map((caution) => IN_A_LINE[caution]);
  return titles.length === 0 ? '' : `caution: ${titles.join(', ')}`;
}

/** On a list that is printed without the sheet of cautions. */
export function hidingCautions(): string {
  return [cautionText('egress'), cautionText('hiding'), OWN_RULES].join(' ');
}

export const SEE_CAUTIONS =
  'Nobody is ever locked in, and ways out stay free: the sheet of cautions says what else is to be heeded here.';

export const CAUTION_SHEET = {
  intro: sentence('Read this before the game is set up, and once more when it is. ', { strong: OWN_RULES }),
  concerns: 'In this game:',
  none: 'There is nothing in the game yet that asks for a caution.',
} as const;
