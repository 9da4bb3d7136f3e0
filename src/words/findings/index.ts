/** The sentences of all findings. */
import type { Finding } from '../../findings/finding.ts';
import type { Game } from '../../game/model.ts';
import { type Say, sayer, sentence } from '../say.ts';
import type { Sentence } from '../sentence.ts';
import { noOtherWay } from './abilities.ts';
import { needTooLarge, neverReached, nothingOpens, prizeOutOfReach, ring } from './blocked.ts';
import { codeDisagrees, codeUnknown, parts, sourcesDisagree, unknownType } from './codes.ts';
import { easilyGuessed, foundByChance, keyOpensSeveral, opensAnother, sameCode } from './guess.ts';
import { moreTeamsThanPupils, noMinutes } from './lesson.ts';
import { codeDoesNotFit, weakCode } from './lock-codes.ts';
import { givenAway, handOver, leadsNowhere, noPrize, prizeGivenAway } from './surplus.ts';
import type { Told } from './told.ts';

function tell(finding: Finding, say: Say): Told {
  switch (finding.code) {
    case 'noPrize':
      return noPrize(finding, say);
    case 'prizeGivenAway':
      return prizeGivenAway(finding, say);
    case 'ring':
      return ring(finding, say);
    case 'nothingOpens':
      return nothingOpens(finding, say);
    case 'needTooLarge':
      return needTooLarge(finding, say);
    case 'prizeOutOfReach':
      return prizeOutOfReach(finding, say);
    case 'codeDisagrees':
      return codeDisagrees(finding, say);
    case 'sourcesDisagree':
      return sourcesDisagree(finding, say);
    case 'codeDoesNotFit':
      return codeDoesNotFit(finding, say);
    case 'weakCode':
      return weakCode(finding, say);
    case 'parts':
      return parts(finding, say);
    case 'givenAway':
      return givenAway(finding, say);
    case 'handOver':
      return handOver(finding, say);
    case 'sameCode':
      return sameCode(finding, say);
    case 'opensAnother':
      return opensAnother(finding, say);
    case 'keyOpensSeveral':
      return keyOpensSeveral(finding, say);
    case 'easilyGuessed':
      return easilyGuessed(finding, say);
    case 'foundByChance':
      return foundByChance(finding, say);
    case 'codeUnknown':
      return codeUnknown(finding, say);
    case 'leadsNowhere':
      return leadsNowhere(finding, say);
    case 'unknownType':
      return unknownType(finding, say);
    case 'neverReached':
      return neverReached(finding, say);
    case 'noOtherWay':
      return noOtherWay(finding, say);
    case 'noMinutes':
      return noMinutes();
    case 'moreTeamsThanPupils':
      return moreTeamsThanPupils(finding);
  }
}

/** What is, in one sentence: for the verdict. */
export function findingHeadline(game: Game, finding: Finding): Sentence {
  return tell(finding, sayer(game)).is;
}

/** What is, and why it matters. */
export function findingSentence(game: Game, finding: Finding): Sentence {
  const { is, so } = tell(finding, sayer(game));
  return sentence(is, ' ', so);
}
