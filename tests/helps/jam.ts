/** A game with a bad jam: all there is to do lies behind one slow lock, at which one pupil can work while the others stand around it. */
import type { Game } from '../../src/game/model.ts';
import { gameOf, type NodeDraft } from '../game-of.ts';

const minutes = (low: number, likely: number, high: number) => ({ minutes: { low, likely, high } });

const NODES: readonly NodeDraft[] = [
  { id: 'sill', kind: 'place', ...minutes(1, 2, 3) },
  { id: 'strip', kind: 'clue', in: 'sill', answer: '472' },
  { id: 'trunk', kind: 'container' },
  {
    id: 'jam',
    kind: 'fastener',
    name: 'Lock',
    on: 'trunk',
    type: 'number',
    code: '472',
    hands: 1,
    ...minutes(8, 12, 16),
  },
  { id: 'map', kind: 'clue', in: 'trunk' },
  { id: 'list', kind: 'clue', in: 'trunk' },
  { id: 'letter', kind: 'clue', in: 'trunk' },
  { id: 'sums', kind: 'puzzle', answer: '19', ...minutes(3, 5, 8) },
  { id: 'riddle', kind: 'puzzle', answer: 'OWL', ...minutes(3, 5, 8) },
  { id: 'maze', kind: 'puzzle', answer: '8', ...minutes(3, 5, 8) },
  { id: 'chest', kind: 'container' },
  { id: 'wheels', kind: 'fastener', on: 'chest', type: 'number', code: '198' },
  { id: 'letters', kind: 'fastener', on: 'chest', type: 'word', code: 'OWL' },
  { id: 'medal', kind: 'prize', in: 'chest' },
];
const LINKS = [
  'strip>jam',
  'map>sums',
  'list>riddle',
  'letter>maze',
  'sums>wheels@1,2',
  'maze>wheels@3',
  'riddle>letters',
];

/** One team of six, and a bell that about half of the lessons hear. */
export function jammed(minutesOfPlay = 21): Game {
  const game = gameOf(NODES, LINKS);
  return { ...game, head: { lesson: { pupils: 6, teams: 1, minutes: minutesOfPlay } } };
}
