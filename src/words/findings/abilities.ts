/** Findings about what a thing asks of a pupil. */
import type { FindingWith } from '../../findings/finding.ts';
import { abilitiesSaid } from '../form-abilities.ts';
import { capital, type Say, sentence } from '../say.ts';
import type { Told } from './told.ts';

export function noOtherWay({ values }: FindingWith<'noOtherWay'>, say: Say): Told {
  const { node, asks } = values;
  return {
    is: capital(sentence(say.the(node), ` asks for ${abilitiesSaid(asks)}, and there is no other way.`)),
    so: ['A pupil who cannot do that has to stand aside.'],
  };
}
