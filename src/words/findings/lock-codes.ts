/** Findings about what a lock can be set to, and what is tried first on it. */
import type { WeakReason } from '../../fasteners/index.ts';
import type { FindingWith } from '../../findings/finding.ts';
import { misfitsClause } from '../lock-codes.ts';
import { capital, type Say, sentence } from '../say.ts';
import { codeInWords } from '../sentence.ts';
import { soPrizes, type Told } from './told.ts';

export function codeDoesNotFit({ values }: FindingWith<'codeDoesNotFit'>, say: Say): Told {
  const { fastener, code, type, misfits, prizes } = values;
  const isKnown = misfits.some(({ assumed }) => !assumed);
  const why = `: ${misfitsClause(misfits, type)}.`;
  return {
    is: capital(
      sentence(
        say.name(fastener),
        isKnown ? ' cannot be set to ' : ' is to be set to ',
        { code: codeInWords(code) },
        why,
      ),
    ),
    so: isKnown ? soPrizes(say, prizes) : ['See whether yours can be set so.'],
  };
}

const WHY: Readonly<Record<WeakReason, string>> = {
  factorySetting: 'the setting such locks are sold with',
  allAlike: 'the same at every position',
  run: 'a run',
  year: 'a year of this century',
  repeated: 'the same part over again',
};

export function weakCode({ values }: FindingWith<'weakCode'>, say: Say): Told {
  const { fastener, code, reason, sources } = values;
  return {
    is: capital(
      sentence(say.name(fastener), ' is set to ', { code: codeInWords(code) }, `, ${WHY[reason]}.`),
    ),
    so: sentence(
      'Such a code is tried before others.',
      sources.length > 0 ? ' A new one has to follow from what pupils work out.' : '',
    ),
  };
}
