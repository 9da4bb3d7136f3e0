/** Makes a rule of what one file of this folder says: it finds, and mends what it found itself. */
import type { Context } from './context.ts';
import { type FindingOf, type Fresh, identityOf, type Rule } from './finding.ts';
import type { Proposal } from './proposal.ts';

interface Definition<Code extends string, V extends object> {
  readonly code: Code;
  readonly find: (context: Context) => readonly FindingOf<Code, V>[];
  readonly mends?: (context: Context, finding: FindingOf<Code, V>, fresh: Fresh) => Iterable<Proposal>;
}

export function defineRule<Code extends string, V extends object>(
  definition: Definition<Code, V>,
): Rule<Code, V> {
  const { code, find, mends } = definition;
  return {
    code,
    find,
    mends(context, finding, fresh) {
      const identity = identityOf(finding);
      const own = find(context).find((one) => identityOf(one) === identity);
      return (own && mends?.(context, own, fresh)) ?? [];
    },
  };
}
