/** Words of the printed map that stand nowhere else. */
import type { Kind } from '../game/model.ts';
import type { Elsewhere } from '../sheets/map/content.ts';
import { count, list } from './numbers.ts';
import { inText } from './places.ts';

/** 'right half', 'page 2': where the other end of a link is. */
export function elsewhere(where: Elsewhere): string {
  return 'page' in where ? `page ${where.page}` : `${where.half} half`;
}

/** '(Notice board)', '(Notice board, page 2)'; empty where there is nothing to say. */
function bracketed(...parts: readonly (string | undefined)[]): string {
  const said = parts.filter((part) => part !== undefined && part !== '');
  return said.length === 0 ? '' : ` (${said.join(', ')})`;
}

/** Things that a step needs and that lie in one place: '+ Spice chart (Notice board)', '+ Flag key, Set of weights (Strongbox, page 2)'. */
export function needed(
  names: readonly string[],
  holder: string | undefined,
  where: string | undefined,
): string {
  return `+ ${names.join(', ')}${bracketed(holder, where)}`;
}

/** What a lock, place or thing waits for: '10', 'Grain poster (Notice board)', 'Hand lens (Lens tin, 8)' where it is in hand after step 8. */
export function source(
  step: number,
  name: string,
  holder: string | undefined,
  after: number,
  where: string | undefined,
): string {
  if (step > 0) return `${step}${bracketed(where)}`;
  if (after === 0) return `${name}${bracketed(holder, where)}`;
  const since = holder === undefined ? `after ${after}` : `${holder}, ${after}`;
  return `${name}${bracketed(since, where)}`;
}

/** A list in parts that may stand on lines of their own: 'from Cube scrap (Lens tin),' 'Garnet scrap (Iron box),' 'with Hand lens'. */
export function sourceList(sources: readonly { readonly verb: string; readonly text: string }[]): string[] {
  return sources.map(({ verb, text }, i) => {
    const isFirst = verb !== sources[i - 1]?.verb;
    return `${isFirst ? `${verb} ` : ''}${text}${i < sources.length - 1 ? ',' : ''}`;
  });
}

/** Which positions of a code something gives, in a list: 'position 1: Cube scrap (Lens tin),' '2: step 7'. */
export function positionOf(at: readonly number[], source: string, isFirst: boolean, isLast: boolean): string {
  const word = isFirst ? (at.length === 1 ? 'position ' : 'positions ') : '';
  return `${word}${list(at.map(String))}: ${source}${isLast ? '' : ','}`;
}

/** At the end of what is told where there is no room for all. */
export function moreTold(more: number): string {
  return `and ${more} more: see the order of play`;
}

/** Where a key lies: 'in Miller’s satchel'. */
export function inHolder(holder: string | undefined, where: string | undefined): string {
  if (holder === undefined) return where === undefined ? '' : `on ${where}`;
  return `${inText(holder)}${bracketed(where)}`;
}

/** Before what something leads to. `gives`: a puzzle hands it over. */
export function leadVerb(kind: Kind, gives: boolean): string {
  if (gives) return 'gives';
  switch (kind) {
    case 'fastener':
      return 'opens';
    case 'place':
      return 'leads to';
    case 'clue':
      return 'needed to read';
    case 'tool':
      return 'needed to use';
    case 'puzzle':
    case 'key':
    case 'container':
    case 'prize':
      return 'needed for';
  }
}

/** So many steps that a thing is finally for are told. */
const USES = 3;

/** What something leads to: 'opens 11: Oven safe', 'needed to read Tiny label (Cotton box), for 18'. `uses`: the steps that a thing which is none is finally for. */
export function leadsTo(
  verb: string,
  step: number,
  name: string,
  holder: string | undefined,
  where: string | undefined,
  uses: readonly number[],
): string {
  const few = uses.length > USES ? [...uses.slice(0, USES).map(String), 'others'] : uses.map(String);
  const final = uses.length === 0 ? '' : `, for\u00A0${list(few)}`;
  return `${verb} ${step > 0 ? `${step}: ` : ''}${name}${bracketed(holder, where)}${final}`;
}

export const NOTES = {
  /** Beside a puzzle that no team gets to. */
  neverReached: 'never reached',
  /** Under 'given by the teacher'. */
  atMinute: (minute: number) => `at minute ${minute}`,
  /** It cannot be had or done before. */
  fromMinute: (minute: number) => `from minute ${minute}`,
};

/** A tray that is too long for a page. Without the page where it is not yet known. */
export function continuedFrom(where: Elsewhere | undefined): string {
  return where === undefined ? 'continued' : `continued from ${elsewhere(where)}`;
}

export function continuedOn(where: Elsewhere | undefined): string {
  return where === undefined ? 'continued' : `continued on ${elsewhere(where)}`;
}

/** As much room is kept as any of them takes. */
export const CONTINUED_WIDEST = ['continued from page 0000', 'continued from right half'] as const;

/** What the signs of the page mean. */
export const LEGEND = {
  step: 'step, in order of play',
  unreached: 'step never reached',
  told: (step: number) => `used in step ${step} (no line drawn)`,
  lock: 'lock',
  hidden: 'opened by a step',
  hasp: 'open all locks',
  tick: (teams: number) => (teams > 1 ? 'to tick, one for each team' : 'to tick when open'),
};

/** At the end of the legend. */
export function leftOut(things: number): string {
  return things === 0 ? '' : `${count(things, 'thing')} not used today and not on this page`;
}

/** Beyond so many, steps are counted. */
export const NUMBERS_SAID = 12;

/** Rescue lines that found no room. */
export function notBeside(steps: readonly number[]): string {
  const which =
    steps.length > NUMBERS_SAID
      ? count(steps.length, 'step')
      : `${steps.length === 1 ? 'step' : 'steps'} ${steps.join(', ')}`;
  return `What to say at ${which} stands in the order of play`;
}

/** Across a page of a game that cannot be won. */
export const STOP_BAND = {
  title: 'This game cannot be won.',
  more: (n: number) => `and ${n} more ${n === 1 ? 'reason' : 'reasons'}`,
};

export const EMPTY = 'Nothing lies on the map yet.';
