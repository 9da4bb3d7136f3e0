/** Codes and answers on the map: which symbols are drawn, and broken into lines between symbols. */
import { fastenerType } from '../fasteners/index.ts';
import { symbolsOf, writtenCode } from '../game/codes.ts';
import type { Game, GameNode, NodeId } from '../game/model.ts';
import { textWidth, tidySpaces } from '../type/text.ts';
import type { CodeLines } from './layout.ts';
import { ARROW_WIDTH, CODE } from './sizes.ts';

const HAS_ARROW = /[↑⬆⇧↓⬇⇩←⬅⇦→➡⇨]/u;
const DIRECTIONS = new Set(['U', 'D', 'L', 'R']);

/** Direction locks, and the puzzles and clues whose answer opens one. */
export function directionNodes(game: Game): ReadonlySet<NodeId> {
  const found = new Set<NodeId>();
  for (const node of game.nodes.values()) {
    if (node.kind === 'fastener' && fastenerType(node.type).directions) found.add(node.id);
  }
  for (const { from, to } of game.links.values()) {
    if (game.nodes.get(to)?.kind === 'fastener' && found.has(to)) found.add(from);
  }
  return found;
}

/** Words of the code in symbols; directions are one word. */
function wordsOf(written: string, normalised: readonly string[], directions: boolean): string[][] {
  if (directions) return [[...normalised]];
  return tidySpaces(written.normalize('NFC')).split(' ').map(symbolsOf);
}

/** Breaks words of symbols into lines no wider than `width`: between words where that fits, else between any two symbols. A space kept within a line is a symbol of it. */
export function wrapSymbols(
  words: readonly (readonly string[])[],
  width: number,
  widthOf: (symbol: string) => number,
): readonly (readonly string[])[] {
  const lines: string[][] = [];
  let line: string[] = [];
  let used = 0;
  const end = () => {
    if (line.length > 0) lines.push(line);
    line = [];
    used = 0;
  };
  for (const word of words) {
    const wordWidth = word.reduce((sum, symbol) => sum + widthOf(symbol), 0);
    const space = line.length > 0 ? widthOf(' ') : 0;
    if (line.length > 0 && used + space + wordWidth > width) end();
    else if (line.length > 0) {
      line.push(' ');
      used += space;
    }
    for (const symbol of word) {
      if (line.length > 0 && used + widthOf(symbol) > width) end();
      line.push(symbol);
      used += widthOf(symbol);
    }
  }
  end();
  return lines;
}

const symbolWidth = (symbol: string) => textWidth(symbol, CODE);
const arrowWidth = () => ARROW_WIDTH;

interface Broken {
  readonly width: number;
  readonly directional: boolean;
  readonly code: CodeLines | undefined;
}
const lastBroken = new WeakMap<GameNode, Broken>();

/** The code or answer of a node as typed, in lines no wider than `width`; undefined when it has none. */
export function codeLines(
  game: Game,
  node: GameNode,
  width: number,
  directional: boolean,
): CodeLines | undefined {
  const last = lastBroken.get(node);
  if (last && last.width === width && last.directional === directional) return last.code;
  const code = breakCode(game, node, width, directional);
  lastBroken.set(node, { width, directional, code });
  return code;
}

/** The code or answer of a node as typed, in words of symbols; directions are one word of U, D, L and R. Undefined when it has none. */
export function spelledCode(
  game: Game,
  id: NodeId,
  directional: boolean,
): { readonly words: readonly (readonly string[])[]; readonly directions: boolean } | undefined {
  const written = writtenCode(game, id);
  if (written === undefined) return undefined;
  const normalised = symbolsOf(written.normalised);
  const directions =
    (directional || HAS_ARROW.test(written.typed)) && normalised.every((symbol) => DIRECTIONS.has(symbol));
  return { words: wordsOf(written.typed, normalised, directions), directions };
}

function breakCode(game: Game, node: GameNode, width: number, directional: boolean): CodeLines | undefined {
  const code = spelledCode(game, node.id, directional);
  if (code === undefined) return undefined;
  const { words, directions } = code;
  return { lines: wrapSymbols(words, width, directions ? arrowWidth : symbolWidth), directions };
}

/** Width in pixels of the widest line. */
export function codeWidth({ lines, directions }: CodeLines): number {
  const widthOf = directions ? arrowWidth : symbolWidth;
  return Math.max(0, ...lines.map((line) => line.reduce((sum, symbol) => sum + widthOf(symbol), 0)));
}
