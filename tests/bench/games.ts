/**
 * Games of the shape that lessons have, at any size: rooms of sixteen nodes (a hiding place with a locked box, papers, puzzles,
 * keys), each room opened by what an earlier one gave; some puzzles want any two of three. Seeded, so that every run asks the same.
 */
import type { Game } from '../../src/game/model.ts';
import { gameOf, type NodeDraft } from '../game-of.ts';
import { seededRandom } from '../random-game.ts';

const ROOM = 16;

/** A game of exactly `size` nodes that can be won. */
export function lessonGame(size: number, seed = 1): Game {
  const random = seededRandom(seed);
  const draw = (below: number) => Math.floor(random() * below);
  const nodes: NodeDraft[] = [];
  const links: string[] = [];
  const minutes = (low: number) => ({ minutes: { low, likely: low + draw(4), high: low + 4 + draw(8) } });
  const rewards: string[] = [];
  const rooms = Math.max(1, Math.floor((size - 1) / ROOM));
  for (let room = 0; room < rooms; room++) {
    const id = (name: string) => `r${room}-${name}`;
    const before = rewards.length === 0 ? undefined : rewards[Math.max(0, rewards.length - 1 - draw(4))];
    nodes.push(
      { id: id('shelf'), kind: 'place', ...minutes(1) },
      { id: id('desk'), kind: 'place', ...minutes(1) },
      { id: id('drawer'), kind: 'place', ...minutes(1) },
      { id: id('map'), kind: 'clue', in: id('shelf') },
      { id: id('list'), kind: 'clue', in: id('desk') },
      { id: id('letter'), kind: 'clue', in: id('drawer') },
      { id: id('sum'), kind: 'puzzle', answer: '472', ...minutes(2) },
      { id: id('riddle'), kind: 'puzzle', answer: 'OWL', need: 2, ...minutes(3) },
      { id: id('box'), kind: 'container', in: id('shelf') },
      { id: id('wheels'), kind: 'fastener', on: id('box'), type: 'number', code: '472' },
      { id: id('letters'), kind: 'fastener', on: id('box'), type: 'word', code: 'OWL' },
      { id: id('key'), kind: 'key', in: id('box') },
      { id: id('case'), kind: 'container', in: id('box') },
      { id: id('padlock'), kind: 'fastener', on: id('case'), type: 'key' },
      { id: id('note'), kind: 'clue', in: id('case') },
      { id: id('last'), kind: 'puzzle', ...minutes(3) },
    );
    links.push(
      `${id('map')}>${id('sum')}`,
      `${id('sum')}>${id('wheels')}`,
      `${id('map')}>${id('riddle')}`,
      `${id('list')}>${id('riddle')}`,
      `${id('letter')}>${id('riddle')}`,
      `${id('riddle')}>${id('letters')}`,
      `${id('key')}>${id('padlock')}`,
      `${id('note')}>${id('last')}`,
    );
    if (before) links.push(`${before}>${id('shelf')}`, `${before}>${id('desk')}`);
    rewards.push(id('last'));
  }
  nodes.push({ id: 'win', kind: 'prize' });
  for (const reward of rewards.slice(-4)) links.push(`${reward}>win`);
  for (let spare = 0; nodes.length < size; spare++) {
    nodes.push({ id: `spare-${spare}`, kind: 'clue', in: `r${draw(rooms)}-shelf`, decoy: true });
  }
  return gameOf(nodes, links);
}
