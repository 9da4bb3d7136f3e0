/** Codes and answers on the map: which symbols are drawn, and broken into lines between symbols. */
import type { FastenerType } from '../fasteners/index.ts';
import { writtenFor } from '../fasteners/written-for.ts';
import { isDirections, symbolsOf, writtenCode } from '../game/codes.ts';
import type { Game, GameNode, NodeId } from '../game/model.ts';
import { textWidth, tidySpaces } from '../type/text.ts';
import type { CodeLines } from './layout.ts';
import { ARROW_WIDTH, CODE } from './sizes.ts';

const HAS_ARROW = /[↑⬆⇧↓⬇⇩←⬅⇦→➡⇨]/u;
const DIRECTIONS = new Set(['U', 'D', 'L', 'R']);

/** Codes and answers that are moves, normalised: those of direction locks, and of the puzzles and clues whose answer opens one. */
export function directionCodes(game: Game): ReadonlySet<string> {
  const codes = new Set<string>();
  for (const [id, type] of writtenFor(game)) {
    const code = type.directions ? writtenCode(game, id)?.normalised : undefined;
    if (code !== undefined && isDirections(code)) codes.add(code);
  }
  return codes;
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
  readonly type: FastenerType | undefined;
  readonly code: CodeLines | undefined;
}
const lastBroken = new WeakMap<GameNode, Broken>();

/** The code or answer of a node as typed, in lines no wider than `width`; undefined when it has none. */
export function codeLines(game: Game, node: GameNode, width: number): CodeLines | undefined {
  const last = lastBroken.get(node);
  const type = writtenFor(game).get(node.id);
  if (last && last.width === width && last.type === type) return last.code;
  const code = breakCode(game, node, width);
  lastBroken.set(node, { width, type, code });
  return code;
}

/**
 * The code or answer of a node in words of signs: directions one word of U, D, L and R, names and numbers of a lock a word each, all
 * else as typed. Undefined when it has none.
 */
export function spelledCode(
  game: Game,
  id: NodeId,
): { readonly words: readonly (readonly string[])[]; readonly directions: boolean } | undefined {
  const written = writtenCode(game, id);
  if (written === undefined) return undefined;
  const type = writtenFor(game).get(id);
  const symbols = type?.symbols(written.typed) ?? symbolsOf(written.normalised);
  const directions =
    (type?.directions === true || HAS_ARROW.test(written.typed)) &&
    symbols.every((symbol) => DIRECTIONS.has(symbol));
  if (directions) return { words: [symbols], directions };
  const words = type?.apart ? symbols : tidySpaces(written.typed.normalize('NFC')).split(' ');
  return { words: words.map(symbolsOf), directions };
}

function breakCode(game: Game, node: GameNode, width: number): CodeLines | undefined {
  const code = spelledCode(game, node.id);
  if (code === undefined) return undefined;
  const { words, directions } = code;
  return { lines: wrapSymbols(words, width, directions ? arrowWidth : symbolWidth), directions };
}

/** Width in pixels of the widest line. */
export function codeWidth({ lines, directions }: CodeLines): number {
  const widthOf = directions ? arrowWidth : symbolWidth;
  return Math.max(0, ...lines.map((line) => line.reduce((sum, symbol) => sum + widthOf(symbol), 0)));
}
