/** What was wrong with a file of a kit, and what was noticed in one that was read. */
import type { CellFault, KitNote, KitProblem, KitWhere } from '../kit/problem.ts';
import { list } from './numbers.ts';
import { brief, expectedWords, foundWords, quoted } from './problems.ts';

/** 'Thing 3 (“red”)', 'The file'. */
function subject(where: KitWhere): string {
  if (where.part === 'file') return 'The file';
  const noun = where.part === 'item' ? 'Thing' : 'Place';
  return `${noun} ${where.number}${where.label === undefined ? '' : ` (${quoted(where.label)})`}`;
}

function field(where: KitWhere): string {
  return where.field === undefined ? '' : ` ‘${brief(where.field)}’`;
}

function cellWords(line: number, column: string, value: string, wrong: CellFault): string {
  const where = `Line ${line}, ${column}:`;
  const is = quoted(value.trim());
  switch (wrong.fault) {
    case 'missing':
      return `${where} this is empty, and has to be there.`;
    case 'notANumber':
      return `${where} ${is} is no number.`;
    case 'notWhole':
      return `${where} ${is} is no whole number.`;
    case 'below':
      return `${where} ${is} is too small: it should be ${wrong.limit} or more.`;
    case 'notAbove':
      return `${where} ${is} is too small: it should be above ${wrong.limit}.`;
    case 'above':
      return `${where} ${is} is too large: it should be ${wrong.limit.toLocaleString('en')} or less.`;
    case 'notAmong':
      return `${where} ${is} is not known. Write ${list(wrong.options, 'or')}.`;
    case 'notWheels':
      return `${where} ${is} is no row of wheels. Write, for instance, 4 × 0123456789.`;
  }
}

/** One clear sentence on what is wrong and where. */
export function kitProblemText(problem: KitProblem): string {
  switch (problem.code) {
    case 'tooLarge':
      return `This file is too large to be a kit: it has ${Math.ceil(problem.length / 1e6)} million signs, and a kit has at most ${problem.limit / 1e6} million.`;
    case 'empty':
      return 'This file is empty.';
    case 'notJson':
      return 'This is no kit, or only a part of one: it cannot be read as JSON.';
    case 'otherJson':
      return 'This is JSON, but no kit.';
    case 'game':
      return 'This is a game and no kit. Open it as a game.';
    case 'newerVersion':
      return `This kit was saved by a newer Latchmap (version ${problem.version} of the file; this one reads up to ${problem.known}). Open it there.`;
    case 'tooDeep':
      return `This is no kit: its parts are nested more than ${problem.limit} deep.`;
    case 'tooMany':
      return `This file has ${problem.count} ${problem.part === 'item' ? 'things' : 'places'}, and a kit has at most ${problem.limit}.`;
    case 'notFinite':
      return `${subject(problem.where)}:${field(problem.where)} is larger than any number can be.`;
    case 'shape': {
      const { where, expected, found } = problem;
      const of = `${subject(where)}:${field(where)}`;
      return found.is === 'missing'
        ? `${of} is missing. It should be ${expectedWords(expected)}.`
        : `${of} should be ${expectedWords(expected)}, and is ${foundWords(found, expected)}.`;
    }
    case 'idTwice':
      return `${subject(problem.where)}: another one in the file has its id, ${brief(problem.id)}.`;
    case 'columnMissing': {
      const found = problem.found.filter((name) => name !== '').map(quoted);
      const have = found.length === 0 ? 'The first line has none' : `The first line says ${list(found)}`;
      return `A table needs a column headed ${list(problem.columns.map(quoted), 'or')}. ${have}.`;
    }
    case 'columnTwice':
      return `Two columns are headed ${quoted(problem.column)}, or with words that mean the same.`;
    case 'lineTwice':
      return `Line ${problem.line}: another line has its id, ${brief(problem.id)}.`;
    case 'moreCells':
      return `Line ${problem.line} has ${problem.cells} cells, and there are ${problem.columns} columns. A text with a comma or another separator in it belongs in quotation marks.`;
    case 'openQuote':
      return `Line ${problem.line}: a quotation mark is opened and never closed.`;
    case 'cell':
      return cellWords(problem.line, problem.column, problem.value, problem.wrong);
  }
}

/** All that was wrong, a line each; those beyond what is listed are counted. */
export function kitProblemLines(problems: readonly KitProblem[], more: number): string[] {
  const lines = problems.map(kitProblemText);
  return more === 0 ? lines : [...lines, `And ${more} more like these.`];
}

export function kitNoteText(note: KitNote): string {
  switch (note.code) {
    case 'keysDropped':
      return 'Fields named ‘__proto__’ were left away, because they could mislead programs.';
    case 'unknownType':
      return `This version does not know the lock type ${quoted(note.type)}. It is kept.`;
    case 'columnsIgnored':
      return note.columns.length === 1
        ? `The column ${quoted(note.columns[0] ?? '')} means nothing here and was left away.`
        : `The columns ${list(note.columns.map(quoted))} mean nothing here and were left away.`;
    case 'countAssumed':
      return 'The table does not say how many there are: each line counts as one.';
  }
}
