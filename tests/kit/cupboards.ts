/** Small kits and games against them, from a seed or by hand. */
import type { Game } from '../../src/game/model.ts';
import { emptyKit, type ItemOf, type Kit, type KitItem } from '../../src/kit/model.ts';
import { gameOf, type NodeDraft } from '../game-of.ts';
import { seededRandom } from '../random-game.ts';

export function kitOf(...items: readonly KitItem[]): Kit {
  return { ...emptyKit, items };
}

type LockFields = Partial<Omit<ItemOf<'lock'>, 'what' | 'id' | 'type' | 'count'>>;

export function lockItem(id: string, type: string, count: number, fields: LockFields = {}): KitItem {
  return { id, label: '', count, what: 'lock', type, ...fields };
}

export const DIGITS = '0123456789';
export const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** A game in which each lock shuts a box of its own on the table and is opened by a puzzle or a key; what is in a box leads to the next, and the last holds the prize. */
export function boxesGame(
  locks: readonly { readonly type: string; readonly code?: string }[],
  teams: number,
): Game {
  const nodes: NodeDraft[] = [{ id: 'prize', kind: 'prize', in: `b${locks.length - 1}` }];
  const links: string[] = [];
  locks.forEach(({ type, code }, i) => {
    nodes.push(
      { id: `b${i}`, kind: 'container' },
      { id: `f${i}`, kind: 'fastener', on: `b${i}`, type, ...(code && { code }) },
    );
    if (type === 'key') nodes.push({ id: `k${i}`, kind: 'key', ...(i > 0 && { in: `b${i - 1}` }) });
    else nodes.push({ id: `k${i}`, kind: 'puzzle', ...(code && { answer: code }) });
    links.push(`k${i}>f${i}`);
    if (i > 0 && type !== 'key') links.push(`b${i - 1}>k${i}`);
  });
  return { ...gameOf(nodes, links), head: { lesson: { teams } } };
}

/** A game and a cupboard that may be too poor for it, rich in choices. */
export function randomCase(seed: number): { readonly game: Game; readonly kit: Kit } {
  const random = seededRandom(seed);
  const pick = (count: number) => Math.floor(random() * count);
  const code = (signs: string, length: number) =>
    Array.from({ length }, () => signs.charAt(pick(signs.length))).join('');
  const locks = Array.from({ length: 1 + pick(5) }, () => {
    const type = ['number', 'number', 'word', 'key', 'direction'][pick(5)] ?? 'key';
    if (type === 'number') return { type, code: code(DIGITS, 3 + pick(2)) };
    if (type === 'word') return { type, code: code('ABCDE', 3) };
    return type === 'direction' ? { type, code: code('UDLR', 4) } : { type };
  });
  const items = Array.from({ length: 2 + pick(6) }, (_, i): KitItem => {
    const id = `i${i}`;
    const count = pick(4);
    switch (pick(5)) {
      case 0:
        return lockItem(
          id,
          'number',
          count,
          pick(2) === 0 ? {} : { wheels: Array<string>(3 + pick(2)).fill(DIGITS) },
        );
      case 1:
        return lockItem(id, 'word', count, { wheels: [code('ABCDE', 4), 'ABCDE', code('ABCDEF', 5)] });
      case 2:
        return lockItem(
          id,
          'key',
          count,
          pick(2) === 0 ? {} : { keyedAlike: ['red', 'blue'][pick(2)] ?? 'red' },
        );
      case 3:
        return lockItem(id, 'direction', count);
      default:
        return lockItem(id, 'number', count, { wheels: [DIGITS, '01234', DIGITS] });
    }
  });
  return { game: boxesGame(locks, 1 + pick(4)), kit: kitOf(...items) };
}
