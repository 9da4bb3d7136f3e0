/**
 * Says of each game file whether it can be won: npm run -s check -- [--json] [--kit FILE] FILE…
 * With --kit it also says what is short in that kit; with --json also which of its things goes where.
 * With --help it says how it is called. Exit code 0: all can be won and nothing stops them; 1: something stops a game; 2: a file could not be read or worked out (the reason is on the
 * error stream, the other files are reported all the same).
 */
import { readFileSync } from 'node:fs';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { type Report, reportFrom } from '../../src/engine/report.ts';
import { plainFigures } from '../../src/engine/simulation/in-report.ts';
import { hasWordLock } from '../../src/fasteners/word-list/index.ts';
import { assess } from '../../src/findings/assess.ts';
import type { Level } from '../../src/findings/finding.ts';
import { timedFindings } from '../../src/findings/timed/index.ts';
import type { Game, NodeId } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import type { Kit } from '../../src/kit/model.ts';
import { readKit } from '../../src/kit/read.ts';
import { type KitReport, kitReport } from '../../src/kit/report.ts';
import { kitNoteText, kitProblemLines } from '../../src/words/kit-problems.ts';
import { fittingLines } from '../../src/words/kit-report.ts';
import { noteText, problemLines } from '../../src/words/problems.ts';
import {
  CHECK_USAGE,
  checkProblem,
  openProblem,
  reportLines,
  toldFindings,
  unknownOption,
} from '../../src/words/report.ts';
import { visible } from '../../src/words/sentence.ts';
import { NOT_SIMULATED } from '../../src/words/verdict.ts';
import { loadWordList } from './word-list.ts';

interface FileReport extends Report {
  readonly file: string;
  readonly kit?: KitReport;
  readonly findings: readonly {
    readonly code: string;
    readonly level: Level;
    readonly nodes: readonly NodeId[];
    readonly message: string;
  }[];
}

interface Checked {
  readonly report: FileReport;
  readonly lines: readonly string[];
  readonly canBeWon: boolean;
}

function systemCode(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
}

function complain(file: string, lines: readonly string[]) {
  for (const line of lines) console.error(visible(`${file}: ${line}`));
}

/** Undefined when it cannot be read; then the error stream says why. */
function textOf(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    complain(file, [openProblem(systemCode(error))]);
    return undefined;
  }
}

/** The same. */
function openKit(file: string): Kit | undefined {
  const text = textOf(file);
  if (text === undefined) return undefined;
  let ids = 0;
  const result = readKit(text, { newId: () => `new ${++ids}` });
  if (!result.ok) {
    complain(file, kitProblemLines(result.problems, result.more));
    return undefined;
  }
  complain(file, result.notes.map(kitNoteText));
  return result.kit;
}

/** The same. */
function open(file: string): Game | undefined {
  const text = textOf(file);
  if (text === undefined) return undefined;
  // Nothing is stored, so that a game without an id of its own needs none.
  const result = readGame(text, { newId: () => file });
  if (!result.ok) {
    complain(file, problemLines(result.problems, result.more));
    return undefined;
  }
  complain(file, result.notes.filter(({ code }) => code !== 'unknownType').map(noteText));
  return result.document.game;
}

/** Undefined when it cannot be worked out; one file must not cost the answers to the others. */
function tryCheck(file: string, game: Game, kit: Kit | undefined): Checked | undefined {
  try {
    return check(file, game, kit);
  } catch (error) {
    complain(file, [checkProblem(error instanceof Error ? error.message : String(error))]);
    return undefined;
  }
}

function check(file: string, game: Game, kit: Kit | undefined): Checked {
  const fitting = kit && fitKit(game, kit);
  const assessment = assess(game, hasWordLock(game) ? loadWordList() : undefined);
  const { network, measures, canBeWon } = assessment;
  const fewest = measures.solvable ? fewestSteps(network, measures) : undefined;
  const figures = measures.solvable ? plainFigures(game, network) : undefined;
  // A lesson in which a wrong code stops the game ends nowhere, whatever its figures say.
  const timed =
    canBeWon && figures ? { simulated: figures.simulated, findings: timedFindings(figures) } : NOT_SIMULATED;
  const told = toldFindings(assessment, timed);
  return {
    report: {
      file,
      ...reportFrom(game, network, measures, assessment.context.guesses(), fewest, figures),
      ...(fitting && { kit: kitReport(fitting) }),
      findings: told.map(({ finding: { code, level, nodes }, message }) => ({ code, level, nodes, message })),
    },
    lines: [
      ...reportLines(file, assessment, fewest, timed),
      ...(fitting ? fittingLines(game, fitting).map(visible) : []),
    ],
    canBeWon,
  };
}

const HELP: ReadonlySet<string> = new Set(['--help', '-h']);

interface Asked {
  readonly options: readonly string[];
  readonly files: readonly string[];
  /** The kit's file; '' where none is named after --kit. */
  readonly kit: string | undefined;
}

function asked(args: readonly string[]): Asked {
  const at = args.indexOf('--kit');
  const rest = at < 0 ? args : [...args.slice(0, at), ...args.slice(at + 2)];
  return {
    options: rest.filter((arg) => arg.startsWith('-')),
    files: rest.filter((arg) => !arg.startsWith('-')),
    kit: at < 0 ? undefined : (args[at + 1] ?? ''),
  };
}

function run(args: readonly string[]): number {
  const { options, files, kit: kitFile } = asked(args);
  if (options.some((option) => HELP.has(option))) {
    console.log(CHECK_USAGE);
    return 0;
  }
  const unknown = options.find((option) => option !== '--json');
  if (unknown !== undefined || files.length === 0 || kitFile === '') {
    if (unknown !== undefined) console.error(unknownOption(unknown));
    console.error(CHECK_USAGE);
    return 2;
  }
  const kit = kitFile === undefined ? undefined : openKit(kitFile);
  const games = files.map((file) => ({ file, game: open(file) }));
  const checked = games.flatMap(({ file, game }) => (game && tryCheck(file, game, kit)) ?? []);
  if (options.includes('--json')) {
    console.log(
      JSON.stringify(
        checked.map(({ report }) => report),
        undefined,
        2,
      ),
    );
  } else if (checked.length > 0) {
    console.log(checked.map(({ lines }) => lines.join('\n')).join('\n\n'));
  }
  if (checked.length < files.length || (kitFile !== undefined && !kit)) return 2;
  return checked.every(({ canBeWon }) => canBeWon) ? 0 : 1;
}

process.exitCode = run(process.argv.slice(2));
