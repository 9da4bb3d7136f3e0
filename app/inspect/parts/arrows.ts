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

const byName = (a: GameNode, b: GameNode) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1);

/** By name, so that a form reads alike however the arrows came about. */
export function arrowsInto(game: Game, id: NodeId): Arrow[] {
  return sorted(game, (link) => (link.to === id ? link.from : undefined));
}

export function arrowsFrom(game: Game, id: NodeId): Arrow[] {
  return sorted(game, (link) => (link.from === id ? link.to : undefined));
}

function sorted(game: Game, otherEnd: (link: GameLink) => NodeId | undefined): Arrow[] {
  const arrows: Arrow[] = [];
  for (const link of game.links.values()) {
    const end = otherEnd(link);
    const other = end === undefined ? undefined : game.nodes.get(end);
    if (other) arrows.push({ link, other });
  }
  return arrows.sort((a, b) => byName(a.other, b.other));
}

/** A lock's name says little without its box. */
function targetName(game: Game, node: GameNode): string {
  const carrier = node.kind === 'fastener' ? game.nodes.get(node.on) : undefined;
  return carrier ? `${shownName(node)} (${shownName(carrier)})` : shownName(node);
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
    .sort((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || byName(a, b))
    .map((node) => ({ id: node.id, name: targetName(game, node), group: KIND_GROUPS[node.kind] }));
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
