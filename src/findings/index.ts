/** The findings, in the order in which they are told. Adding one means adding a file and a line here. */
import { codeDisagrees } from './code-disagrees.ts';
import { codeDoesNotFit } from './code-does-not-fit.ts';
import { codeUnknown } from './code-unknown.ts';
import type { Context } from './context.ts';
import { easilyGuessed } from './easily-guessed.ts';
import type { Finding } from './finding.ts';
import { foundByChance } from './found-by-chance.ts';
import { givenAway } from './given-away.ts';
import { handOver } from './hand-over.ts';
import { keyOpensSeveral } from './key-opens-several.ts';
import { leadsNowhere } from './leads-nowhere.ts';
import { moreTeamsThanPupils } from './more-teams-than-pupils.ts';
import { needTooLarge } from './need-too-large.ts';
import { neverReached } from './never-reached.ts';
import { noMinutes } from './no-minutes.ts';
import { noOtherWay } from './no-other-way.ts';
import { noPrize } from './no-prize.ts';
import { nothingOpens } from './nothing-opens.ts';
import { opensAnother } from './opens-another.ts';
import { parts } from './parts.ts';
import { prizeGivenAway } from './prize-given-away.ts';
import { prizeOutOfReach } from './prize-out-of-reach.ts';
import { ring } from './ring.ts';
import { sameCode } from './same-code.ts';
import { sourcesDisagree } from './sources-disagree.ts';
import { unknownType } from './unknown-type.ts';
import { weakCode } from './weak-code.ts';

export const RULES = [
  noPrize,
  prizeGivenAway,
  ring,
  nothingOpens,
  needTooLarge,
  prizeOutOfReach,
  codeDisagrees,
  sourcesDisagree,
  parts,
  codeDoesNotFit,
  givenAway,
  handOver,
  sameCode,
  opensAnother,
  keyOpensSeveral,
  easilyGuessed,
  foundByChance,
  codeUnknown,
  weakCode,
  leadsNowhere,
  unknownType,
  neverReached,
  noOtherWay,
  noMinutes,
  moreTeamsThanPupils,
] as const;

/** All findings of a game: what stops it first, each group in the order of the rules. */
export function findingsOf(context: Context): Finding[] {
  const findings: Finding[] = RULES.flatMap((rule): readonly Finding[] => rule.find(context));
  return [
    ...findings.filter(({ level }) => level === 'stops'),
    ...findings.filter(({ level }) => level === 'look'),
  ];
}
