/** What was wrong with a file, and what was noticed in one that was read. Plain text: no game is open yet that a word could lead to. */
import { LEGAL_TARGETS } from '../game/links.ts';
import type { Kind } from '../game/model.ts';
import type { Expected, Found, Named, Note, Problem, Where } from '../game/problem.ts';
import { kindName, withArticle } from './kinds.ts';

/** Longest text from a file that is repeated in a sentence. */
const LONGEST = 60;

/** Text from the file, on one line and not longer than a line. */
export function brief(text: string): string {
  const line = text.slice(0, 4 * LONGEST).replace(/[\s\p{Cc}]+/gu, ' ');
  const signs = Array.from(line);
  return signs.length > LONGEST || text.length > line.length + LONGEST
    ? `${signs.slice(0, LONGEST).join('')}…`
    : line;
}

export function quoted(text: string): string {
  return `“${brief(text)}”`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

export function listed(items: readonly string[], last: 'and' | 'or'): string {
  return items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

function isKind(text: string): text is Kind {
  return Object.hasOwn(LEGAL_TARGETS, text);
}

function nounOf(where: Exclude<Where, { part: 'file' }>): string {
  if (where.part === 'link') return 'arrow';
  return where.kind !== undefined && isKind(where.kind) ? kindName(where.kind) : 'thing';
}

/** 'Lock “Green tin”', 'Arrow l3', 'Thing 7 of the file'. */
function subject(where: Where): string {
  if (where.part === 'file') return 'The file';
  const noun = capital(nounOf(where));
  if (where.name !== undefined) return `${noun} ${quoted(where.name)}`;
  return where.id === undefined ? `${noun} ${where.number} of the file` : `${noun} ${brief(where.id)}`;
}

function field(where: Where): string {
  return where.field === undefined ? 'this' : `‘${brief(where.field)}’`;
}

function the({ kind, name }: Named): string {
  return `the ${kindName(kind)} ${quoted(name)}`;
}

export function expectedWords(expected: Expected): string {
  switch (expected.is) {
    case 'text':
      return 'text';
    case 'someText':
      return 'text that is not empty';
    case 'number':
      return 'a number';
    case 'wholeNumber':
      return 'a whole number';
    case 'trueOrFalse':
      return 'true or false';
    case 'list':
      return 'a list';
    case 'object':
      return 'a group of fields';
    case 'nothing':
      return 'nothing';
    case 'atLeast':
      return `${expected.limit} or more`;
    case 'above':
      return `more than ${expected.limit}`;
    case 'atMost':
      return `${expected.limit.toLocaleString('en')} or less`;
    case 'members':
      return `a list of at least ${expected.least}`;
    case 'oneOf':
      return listed(
        expected.values.map((value) => (typeof value === 'number' ? `the number ${value}` : quoted(value))),
        'or',
      );
    case 'either':
      return listed(expected.options.map(expectedWords), 'or');
  }
}

/** A text where a number belongs may look just like it. */
export function foundWords(found: Found, expected: Expected): string {
  const isNumber =
    expected.is === 'number' ||
    expected.is === 'wholeNumber' ||
    (expected.is === 'oneOf' && expected.values.some((value) => typeof value === 'number'));
  switch (found.is) {
    case 'missing':
      return 'missing';
    case 'list':
      return 'a list';
    case 'object':
      return 'a group of fields';
    case 'value':
      if (typeof found.value !== 'string') return String(found.value);
      return isNumber ? `the text ${quoted(found.value)}` : quoted(found.value);
  }
}

function shapeWords(where: Where, expected: Expected, found: Found): string {
  const of = where.field === undefined ? subject(where) : `${subject(where)}: ${field(where)}`;
  if (expected.is === 'nothing') {
    return `${of} must not be there: ${where.part === 'node' ? `${withArticle(nounOf(where))} has none` : 'it has no meaning'}.`;
  }
  return found.is === 'missing'
    ? `${of} is missing. It should be ${expectedWords(expected)}.`
    : `${of} should be ${expectedWords(expected)}, and is ${foundWords(found, expected)}.`;
}

function linkKindsWords(where: Where, from: Named, to: Named): string {
  const targets = LEGAL_TARGETS[from.kind].map((kind) => withArticle(kindName(kind)));
  const rule =
    targets.length === 0
      ? `no arrow leads from ${withArticle(kindName(from.kind))}`
      : `from ${withArticle(kindName(from.kind))} an arrow may lead only to ${listed(targets, 'or')}`;
  return `${subject(where)}: it leads from ${the(from)} to ${the(to)}, and ${rule}.`;
}

function ringWords(ring: readonly Named[]): string {
  const names = ring.map(({ name }) => quoted(name));
  if (names.length < 2) return `Box ${names.join('')}: it lies in itself.`;
  const chain = [...names.slice(0, 8), ...(names.length > 8 ? ['…'] : []), names[0] ?? ''];
  return `These lie in each other in a ring, so none of them lies anywhere: ${chain.join(' in ')}.`;
}

/** One clear sentence on what is wrong and where. */
export function problemText(problem: Problem): string {
  switch (problem.code) {
    case 'tooLarge':
      return `This file is too large to be a game: it has ${Math.ceil(problem.length / 1e6)} million signs, and a game has at most ${Math.floor(problem.limit / 1e6)} million.`;
    case 'notJson':
      return problem.empty
        ? 'This file is empty.'
        : 'This is no game file, or only a part of one: it cannot be read as JSON.';
    case 'otherJson':
      return 'This is JSON, but no Latchmap game.';
    case 'newerVersion':
      return `This game was saved by a newer Latchmap (version ${problem.version} of the file; this one reads up to ${problem.known}). Open it there.`;
    case 'tooDeep':
      return `This is no game file: its parts are nested more than ${problem.limit} deep.`;
    case 'tooLong':
      return `${subject(problem.where)}: ${field(problem.where)} is a list of ${problem.length} members, and no game has more than ${problem.limit} of anything.`;
    case 'notFinite':
      return `${subject(problem.where)}: ${field(problem.where)} is larger than any number can be.`;
    case 'shape':
      return shapeWords(problem.where, problem.expected, problem.found);
    case 'idTwice': {
      const { where } = problem;
      const id = where.part === 'file' ? '' : brief(where.id ?? '');
      return `${subject(where)}: it has the id ${id}, and so has number ${problem.first} in the list.`;
    }
    case 'holderMissing':
      return `${subject(problem.where)}: it lies in ${brief(problem.id)}, and there is no ${brief(problem.id)} in this file.`;
    case 'carrierMissing':
      return `${subject(problem.where)}: it hangs on ${brief(problem.id)}, and there is no ${brief(problem.id)} in this file.`;
    case 'holderHoldsNothing':
      return `${subject(problem.where)}: it lies in ${the(problem.holder)}, and only a hiding place or a box holds things.`;
    case 'carrierNoContainer':
      return `${subject(problem.where)}: it hangs on ${the(problem.holder)}, and a lock hangs only on a box.`;
    case 'holderRing':
      return ringWords(problem.ring);
    case 'endMissing':
      return `${subject(problem.where)}: it ${problem.end === 'from' ? 'comes from' : 'leads to'} ${brief(problem.id)}, and there is no ${brief(problem.id)} in this file.`;
    case 'linkToItself':
      return `${subject(problem.where)}: it leads from ${the(problem.node)} to itself.`;
    case 'linkKinds':
      return linkKindsWords(problem.where, problem.from, problem.to);
    case 'linkTwice':
      return `${subject(problem.where)}: it leads from ${the(problem.from)} to ${the(problem.to)}, and so does ${lowered(subject(problem.first))}.`;
    case 'estimates':
      return `${subject(problem.where)}: its minutes are ${problem.low}, ${problem.likely} and ${problem.high}. Low may not be above likely, nor likely above high.`;
  }
}

/** All that was wrong, a line each; those beyond what is listed are counted. */
export function problemLines(problems: readonly Problem[], more: number): string[] {
  const lines = problems.map(problemText);
  if (more === 0) return lines;
  return [...lines, more < 1000 ? `And ${more} more like these.` : 'And more than a thousand others.'];
}

export function noteText(note: Note): string {
  switch (note.code) {
    case 'keysDropped': {
      const where = lowered(subject(note.first));
      return note.count === 1
        ? `A field named ‘__proto__’ was left away, because it could mislead programs. It stood in: ${where}.`
        : `${note.count} fields named ‘__proto__’ were left away, because they could mislead programs. One stood in: ${where}.`;
    }
    case 'unknownType': {
      const names = note.nodes.slice(0, 3).map(({ name }) => quoted(name));
      const rest = note.nodes.length - names.length;
      const all = rest > 0 ? [...names, `${rest} more`] : names;
      return `This version does not know the lock type ${quoted(note.type)} (${listed(all, 'and')}). It is kept, and counts as opened by whatever leads to it.`;
    }
  }
}
