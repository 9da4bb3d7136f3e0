/** Codes and answers in mono, each direction an arrow with its letter. */
import type { NodeId } from '../../../game/model.ts';
import { spelledCode, wrapSymbols } from '../../../map/code.ts';
import { textWidth } from '../../../type/text.ts';
import { GIVES } from '../../../words/canvas.ts';
import type { SignName } from '../../signs.ts';
import type { Facts } from '../content/facts.ts';
import { type Line, lineOf, type Piece, signPiece, textPiece } from './pieces.ts';
import type { Type } from './type.ts';

const ARROWS: ReadonlyMap<string, SignName> = new Map([
  ['U', 'up'],
  ['D', 'down'],
  ['L', 'left'],
  ['R', 'right'],
]);

const arrowSide = ({ size }: Type) => 0.8 * size;
const arrowGap = ({ size }: Type) => 0.3 * size;

function symbolWidths(type: Type, directions: boolean): (symbol: string) => number {
  const arrow = arrowSide(type) + textWidth('U', type.code) + arrowGap(type);
  return (symbol) => (directions ? arrow : textWidth(symbol, type.code));
}

/** The code of a lock, or the answer of a puzzle or clue; undefined when it has none or the options leave codes out. */
export function answerLines(
  { assessment, options }: Facts,
  id: NodeId,
  width: number,
  type: Type,
): Line[] | undefined {
  const spelled = options.codes ? spelledCode(assessment.game, id) : undefined;
  if (!spelled) return undefined;
  const { code } = type;
  const { words, directions } = spelled;
  return wrapSymbols(words, width, symbolWidths(type, directions)).map((symbols) =>
    directions
      ? lineOf(symbols.flatMap((symbol) => move(symbol, type, id)))
      : lineOf([textPiece(symbols.join(''), code, { role: 'code', of: id })]),
  );
}

/** A code of so many symbols is read at a glance, so it should not be broken; a longer one is read in parts anyway. */
const GLANCE = 8;

/** Width of the longest word of the answer that should not be broken; 0 when there is none. */
export function glanceWidth({ assessment, options }: Facts, id: NodeId, type: Type): number {
  const spelled = options.codes ? spelledCode(assessment.game, id) : undefined;
  if (!spelled) return 0;
  const widthOf = symbolWidths(type, spelled.directions);
  const widths = spelled.words
    .filter((word) => word.length <= GLANCE)
    .map((word) => word.reduce((sum, symbol) => sum + widthOf(symbol), 0));
  return Math.max(0, ...widths);
}

/** 'gives 3185'; the answer on lines of its own where that saves breaking it. */
export function givesLines(facts: Facts, id: NodeId, width: number, type: Type): Line[] {
  const gives = textPiece(GIVES, type.note, { role: 'note', ink: 'second', of: id });
  const indent = gives.width + type.gap;
  const beside = answerLines(facts, id, width - indent, type) ?? [];
  const alone = answerLines(facts, id, width, type) ?? [];
  if (beside.length > alone.length) return [lineOf([gives]), ...alone];
  return beside.map((line, i) => {
    const answer = { ...line, before: type.gap };
    return lineOf([i === 0 ? gives : { width: gives.width, marks: [], before: 0 }, answer]);
  });
}

function move(symbol: string, type: Type, of: NodeId): Piece[] {
  const letter = textPiece(symbol, type.code, { role: 'code', of });
  const sign = ARROWS.get(symbol);
  if (sign === undefined) return [letter];
  return [signPiece(sign, arrowSide(type), 'ink', arrowGap(type), of), letter];
}
