/** What has been found out about what is short, filed by what it is about and by the question that it answers. */
import type { Remedy, Shortage } from '../../src/kit/remedies/index.ts';
import type { RemediesAnswer, RemediesQuestion } from './remedies-work.ts';

export type Place = Pick<Shortage, 'part' | 'node'>;

export interface Found {
  readonly of: RemediesQuestion | undefined;
  /** By part and node, as far as they have been tried. */
  readonly remedies: ReadonlyMap<string, readonly Remedy[]>;
  readonly failed: boolean;
}

export const NOTHING: Found = { of: undefined, remedies: new Map(), failed: false };

const keyOf = ({ part, node }: Place) => `${part} ${node}`;

/** As far as it was found for this question: of another one it may belong to a thing, or to a game, that is gone. */
export function foundFor(found: Found, question: RemediesQuestion): Found {
  return found.of === question ? found : { ...NOTHING, of: question };
}

export function withAnswer(
  found: Found,
  question: RemediesQuestion,
  { shortage, remedies }: Pick<RemediesAnswer, 'shortage' | 'remedies'>,
): Found {
  const own = foundFor(found, question);
  return { ...own, remedies: new Map(own.remedies).set(keyOf(shortage), remedies) };
}

export function remediesIn({ remedies }: Found, place: Place): readonly Remedy[] | undefined {
  return remedies.get(keyOf(place));
}
