/** What the command line says of each file. */
import type { Fewest } from '../engine/measures.ts';
import type { Assessment } from '../findings/assess.ts';
import type { Finding } from '../findings/finding.ts';
import type { TimedFinding } from '../findings/timed/timed-finding.ts';
import { findingSentence } from './findings/index.ts';
import { timedSentence } from './findings/timed.ts';
import { plain, visible } from './sentence.ts';
import { type Timed, verdictOf } from './verdict.ts';

export const CHECK_USAGE =
  'npm run -s check -- [--json] [--kit FILE] FILE…\nSays of each game file whether it can be won, and what stops it or is worth a look; with --json as one list. With --kit it also says what is short in that kit (JSON or CSV); with --json also which of its things goes where.';

export function unknownOption(option: string): string {
  return `There is no option ${option}.`;
}

/** Why a file could not be opened, by the code of the system. */
export function openProblem(code: string | undefined): string {
  switch (code) {
    case 'ENOENT':
      return 'There is no such file.';
    case 'EISDIR':
      return 'This is a folder, not a file.';
    case 'EACCES':
    case 'EPERM':
      return 'This file may not be read.';
    default:
      return 'This file cannot be read.';
  }
}

/** The program itself failed on a game; its own words help whoever mends it. */
export function checkProblem(message: string): string {
  return `This game could not be checked. That is a fault of Latchmap: ${message}`;
}

export interface ToldFinding {
  readonly finding: Finding | TimedFinding;
  readonly message: string;
}

/** All findings, those from simulated lessons last. */
export function toldFindings({ game, findings }: Assessment, timed: Timed): ToldFinding[] {
  return [
    ...findings.map((finding) => ({ finding, message: visible(plain(findingSentence(game, finding))) })),
    ...timed.findings.map((finding) => ({ finding, message: visible(plain(timedSentence(game, finding))) })),
  ];
}

/** A short verdict, then a line for each finding. */
export function reportLines(
  file: string,
  assessment: Assessment,
  fewest: Fewest | undefined,
  timed: Timed,
): string[] {
  const { first, second, today = [] } = verdictOf(assessment, fewest, timed);
  const title = assessment.game.head.title?.trim() ?? '';
  return [
    visible(title === '' ? file : `${file}: ${title}`),
    [first, second, today]
      .map(plain)
      .filter((text) => text !== '')
      .join(' '),
    ...toldFindings(assessment, timed).map(({ finding, message }) => {
      const level = finding.level === 'stops' ? 'Stops the game' : 'Worth a look';
      return `- ${level}: ${message}`;
    }),
  ];
}
