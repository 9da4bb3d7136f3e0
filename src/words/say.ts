/**
 * Building blocks of sentences about one game: names are looked up here, at the moment of wording.
 * A thing without a name is spoken of by its kind, a lock without one of its own by its type and box; an id is never shown.
 */
import { byCodePoint } from '../game/compare.ts';
import type { Game, GameNode, NodeId, NodeOf } from '../game/model.ts';
import { kindOf, withArticle } from './kinds.ts';
import { ownLockName } from './lock-name.ts';
import type { Part, Sentence } from './sentence.ts';

export interface Say {
  readonly game: Game;
  /** Its name, leading to it: "Red tag"; without a name "a key". */
  readonly name: (id: NodeId) => Sentence;
  /** Kind and name: "the key Red tag", "the number lock on Green tin". */
  readonly the: (id: NodeId) => Sentence;
  /** Its name on a line of its own: "Red tag", "Number lock on Green tin". */
  readonly title: (id: NodeId) => Sentence;
  /** "A, B and C"; beyond `most` the rest is counted: "A, B, C and 4 more". */
  readonly names: (ids: readonly NodeId[], most?: number) => Sentence;
  readonly all: (ids: readonly NodeId[], most?: number) => Sentence;
}

/** Joins pieces into one sentence and merges neighbouring texts. */
export function sentence(...pieces: readonly (Part | Sentence)[]): Sentence {
  const parts: Part[] = [];
  for (const piece of pieces) {
    for (const part of Array.isArray(piece) ? (piece as Sentence) : [piece as Part]) {
      const last = parts[parts.length - 1];
      if (typeof part === 'string' && typeof last === 'string') parts[parts.length - 1] = last + part;
      else if (part !== '') parts.push(part);
    }
  }
  return parts;
}

/** The same with its first letter in upper case, when it begins with plain text. */
export function capital(words: Sentence): Sentence {
  const [first, ...rest] = words;
  if (typeof first !== 'string' || first === '') return words;
  return [first.charAt(0).toUpperCase() + first.slice(1), ...rest];
}

/** "A, B and C"; beyond `most` the rest is counted. */
export function joined(items: readonly Sentence[], most: number): Sentence {
  const shown = items.length <= most + 1 ? items : items.slice(0, most);
  const rest = items.length - shown.length;
  const pieces: (Part | Sentence)[] = [];
  shown.forEach((item, i) => {
    if (i > 0) pieces.push(i === shown.length - 1 && rest === 0 ? ' and ' : ', ');
    pieces.push(item);
  });
  if (rest > 0) pieces.push(` and ${rest} more`);
  return sentence(...pieces);
}

/** How many names a sentence lists before it counts the rest. */
const MOST = 4;

const knownFasteners = new WeakMap<Game['nodes'], ReadonlyMap<NodeId, readonly NodeOf<'fastener'>[]>>();

/** By box. Made once for a game: a long list names every lock. */
function fastenersOf(nodes: Game['nodes']): ReadonlyMap<NodeId, readonly NodeOf<'fastener'>[]> {
  const known = knownFasteners.get(nodes);
  if (known) return known;
  const byBox = new Map<NodeId, NodeOf<'fastener'>[]>();
  for (const node of nodes.values()) {
    if (node.kind !== 'fastener') continue;
    const list = byBox.get(node.on);
    if (list) list.push(node);
    else byBox.set(node.on, [node]);
  }
  knownFasteners.set(nodes, byBox);
  return byBox;
}

/**
 * Its own name, else "number lock"; where the box has another of that type, with what tells them apart: its name, else "second
 * number lock". The box is not part of it.
 */
export function lockLabel(game: Game, node: NodeOf<'fastener'>): string {
  const type = kindOf(node);
  const ownName = (one: GameNode) => one.name.trim();
  const alike = (fastenersOf(game.nodes).get(node.on) ?? []).filter((other) => kindOf(other) === type);
  const own = ownLockName(game, node);
  if (alike.length < 2) return own ?? type;
  const isTelling =
    ownName(node) !== '' && alike.every((one) => one === node || ownName(one) !== ownName(node));
  if (isTelling) return own ?? `${type} ${ownName(node)}`;
  const place = alike
    .map(({ id }) => id)
    .sort(byCodePoint)
    .indexOf(node.id);
  return `${ORDINALS[place] ?? `${place + 1}th`} ${type}`;
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth'];

function upper(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const knownNames = new WeakMap<Game['nodes'], ReadonlyMap<string, number>>();

function isOnlyOneNamed(nodes: Game['nodes'], name: string): boolean {
  let names = knownNames.get(nodes);
  if (!names) {
    const counted = new Map<string, number>();
    for (const node of nodes.values()) {
      if (node.kind === 'fastener') counted.set(node.name.trim(), (counted.get(node.name.trim()) ?? 0) + 1);
    }
    names = counted;
    knownNames.set(nodes, names);
  }
  return names.get(name) === 1;
}

export function sayer(game: Game): Say {
  const named = (node: GameNode): Part => ({ node: node.id, text: node.name.trim() });

  /** A name of its own says enough, unless another lock has the same. */
  const lock = (node: NodeOf<'fastener'>, article: string): Sentence => {
    const label = lockLabel(game, node);
    const isOwn = label === ownLockName(game, node);
    const words: Part = { node: node.id, text: article === '' ? upper(label) : label };
    const isEnough = isOwn && isOnlyOneNamed(game.nodes, label);
    return sentence(
      isOwn ? '' : article,
      words,
      ...(isEnough || !game.nodes.has(node.on) ? [] : [' on ', ...name(node.on)]),
    );
  };

  const name = (id: NodeId): Sentence => {
    const node = game.nodes.get(id);
    if (!node) return ['something that is gone'];
    if (node.kind === 'fastener') return lock(node, 'the ');
    if (node.name.trim() === '') return [{ node: id, text: `${withArticle(kindOf(node))} without a name` }];
    return [named(node)];
  };

  const the = (id: NodeId): Sentence => {
    const node = game.nodes.get(id);
    if (!node || node.kind === 'fastener' || node.name.trim() === '') return name(id);
    return sentence(`the ${kindOf(node)} `, named(node));
  };

  return {
    game,
    name,
    the,
    title: (id) => {
      const node = game.nodes.get(id);
      if (!node) return name(id);
      if (node.kind === 'fastener') return lock(node, '');
      return [{ node: id, text: node.name.trim() === '' ? upper(kindOf(node)) : node.name.trim() }];
    },
    names: (ids, most = MOST) => joined(ids.map(name), most),
    all: (ids, most = MOST) => joined(ids.map(the), most),
  };
}
