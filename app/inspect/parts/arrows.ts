/** The arrows into and out of a thing, and those that could be added. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import { linkRefusal } from '../../../src/game/links.ts';
import type { Game, GameLink, GameNode, NodeId } from '../../../src/game/model.ts';
import { KIND_GROUPS } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { freshId } from '../../store/ids.ts';
import type { Choice } from '../Picker.tsx';
import { shownName } from './holders.ts';

/** An arrow and the thing at its other end. */
export interface Arrow {
  readonly link: GameLink;
  readonly other: GameNode;
}

interface Named {
  readonly node: GameNode;
  readonly name: string;
}

const inOrder = (a: Named, b: Named) =>
  a.name.localeCompare(b.name, 'en') || (a.node.id < b.node.id ? -1 : 1);

/** By name, so that a form reads alike however the arrows came about. */
export function arrowsInto(game: Game, id: NodeId): Arrow[] {
  return sorted(game, (link) => (link.to === id ? link.from : undefined));
}

export function arrowsFrom(game: Game, id: NodeId): Arrow[] {
  return sorted(game, (link) => (link.from === id ? link.to : undefined));
}

function sorted(game: Game, otherEnd: (link: GameLink) => NodeId | undefined): Arrow[] {
  const arrows: (Arrow & Named)[] = [];
  for (const link of game.links.values()) {
    const end = otherEnd(link);
    const other = end === undefined ? undefined : game.nodes.get(end);
    if (other) arrows.push({ link, other, node: other, name: shownName(game, other) });
  }
  return arrows.sort(inOrder).map(({ link, other }) => ({ link, other }));
}

const KINDS: readonly GameNode['kind'][] = [
  'puzzle',
  'fastener',
  'clue',
  'place',
  'key',
  'tool',
  'container',
  'prize',
];

function choices(game: Game, legal: (node: GameNode) => boolean): Choice[] {
  return [...game.nodes.values()]
    .filter(legal)
    .map((node) => ({ node, name: shownName(game, node) }))
    .sort((a, b) => KINDS.indexOf(a.node.kind) - KINDS.indexOf(b.node.kind) || inOrder(a, b))
    .map(({ node, name }) => ({ id: node.id, name, group: KIND_GROUPS[node.kind] }));
}

export function possibleTargets(game: Game, id: NodeId): Choice[] {
  return choices(game, (node) => linkRefusal(game, id, node.id) === undefined);
}

export function possibleSources(game: Game, id: NodeId): Choice[] {
  return choices(game, (node) => linkRefusal(game, node.id, id) === undefined);
}

export function addArrow(from: NodeId, to: NodeId): void {
  useGame.getState().apply([{ type: 'link', id: freshId(), from, to }]);
}

export function removeArrow(id: string): void {
  useGame.getState().apply([{ type: 'unlink', ids: [id] }]);
}

/** Only what carries an answer can fill places of a code. */
export function fillsPlaces(source: GameNode | undefined, target: GameNode | undefined): boolean {
  return (
    (source?.kind === 'puzzle' || source?.kind === 'clue') &&
    target?.kind === 'fastener' &&
    fastenerType(target.type).opensWith !== 'key' &&
    fastenerType(target.type).opensWith !== 'nothing'
  );
}

/** A puzzle's arrow to a thing: the teacher hands it over when the puzzle is solved. */
export function handsOver(source: GameNode, target: GameNode): boolean {
  return source.kind === 'puzzle' && ['key', 'tool', 'container', 'prize', 'clue'].includes(target.kind);
}
