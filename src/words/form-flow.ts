/** Where each symbol of a code comes from, as the form of the lock says it. */
import { list } from './numbers.ts';

export const FLOW = {
  label: 'Where the code comes from',
  comesFrom: 'comes from',
  /** Read aloud in place of the arrow between a source and what is made of it. */
  leadsTo: 'for',
  noAnswer: 'has no answer yet',
  nothingGives: 'nothing gives it',
  more: (count: number) => `${count} more`,
};

/** What a row of small plates says, for the ear: '1 2 at positions 2 and 3', 'the whole code 472'. */
export function slotsAloud(symbols: readonly string[], positions: readonly number[] | undefined): string {
  const said = symbols.join(' ');
  if (positions === undefined) return `the whole code ${said}`;
  const at = `${positions.length === 1 ? 'position' : 'positions'} ${list(positions.map(String))}`;
  return said === '' ? at : `${said} at ${at}`;
}

/** 'at positions 3, 1': where small plates would not show it. */
export function positionsSaid(positions: readonly number[]): string {
  return `${positions.length === 1 ? 'position' : 'positions'} ${positions.join(', ')}`;
}
