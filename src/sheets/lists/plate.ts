/** Locks on the lists: each a plate with its sign and what it is set to. */
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import { wrapSymbols } from '../../map/code.ts';
import { textWidth } from '../../type/text.ts';
import { lockTold, NOTHING_TO_SET } from '../../words/lists.ts';
import { sayer } from '../../words/say.ts';
import type { Mark, TextMark } from '../drawing.ts';
import type { Strip } from '../flow.ts';
import type { Setting } from '../locks.ts';
import { movedDown, rectangle, rule, textMark } from '../marks.ts';
import { prose } from '../prose.ts';
import { lockSign, type SignName } from '../signs.ts';
import { space } from './parts.ts';
import { CODE, SMALL, TEXT } from './type.ts';

const PLATE_PAD = 4;
/** Side of the sign on a plate. */
const PLATE_SIGN = 14;
const ARROW = 12;
const ARROW_GAP = 4;
const ARROWS: ReadonlyMap<string, SignName> = new Map([
  ['U', 'up'],
  ['D', 'down'],
  ['L', 'left'],
  ['R', 'right'],
]);

/** A lock as a plate: its sign, and what it is set to; without a setting the sign alone. No wider than `width`. */
export function plateStrips(
  assessment: Assessment,
  lock: NodeId,
  setting: Setting | undefined,
  x: number,
  width: number,
): Strip[] {
  const node = assessment.game.nodes.get(lock);
  const sign = lockSign(node?.kind === 'fastener' ? node.type : undefined);
  const from = x + PLATE_PAD + PLATE_SIGN + (setting ? 5 : 0);
  const room = width - (from - x) - PLATE_PAD;
  const lines = setting
    ? settingLines(assessment, lock, setting, from, room)
    : [{ height: CODE.leading, marks: [], end: from }];
  const widest = Math.max(...lines.map(({ end }) => end));
  const height = lines.reduce((sum, line) => sum + line.height, 0);
  const plate: Mark[] = [
    {
      mark: 'area',
      role: 'plate',
      of: lock,
      corners: rectangle(x, 0, widest + PLATE_PAD + 1 - x, height),
      rounded: 2.5,
      fill: 'metalSoft',
      stroke: 'metal',
      width: 0.9,
    },
    {
      mark: 'sign',
      sign,
      x: x + PLATE_PAD,
      y: (CODE.leading - PLATE_SIGN) / 2,
      size: PLATE_SIGN,
      ink: 'metal',
      of: lock,
    },
  ];
  let y = 0;
  const inside = lines.flatMap((line) => {
    const marks = line.marks.map((mark) => movedDown(mark, y));
    y += line.height;
    return marks;
  });
  return [{ height, marks: [...plate, ...inside] }];
}

interface SettingLine {
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly end: number;
}

function settingLines(
  assessment: Assessment,
  lock: NodeId,
  setting: Setting,
  x: number,
  room: number,
): SettingLine[] {
  switch (setting.set) {
    case 'code':
      return setting.directions
        ? arrowLines(setting.words, lock, x, room)
        : codeLines(setting.words, lock, x, room);
    case 'key':
      return proseLines(prose(sayer(assessment.game).names(setting.keys, 9), x, room, TEXT));
    case 'nothing':
      return proseLines(prose([NOTHING_TO_SET], x, room, { ...TEXT, ink: 'second' }));
    case 'missing': {
      const end = x + Math.min(room, 84);
      return [
        {
          height: CODE.leading,
          end,
          marks: [rule({ x, y: 14 }, { x: end, y: 14 }, 0.9, 'ink', [0.9, 2.2])],
        },
      ];
    }
  }
}

function proseLines(strips: readonly Strip[]): SettingLine[] {
  return strips.map(({ marks }) => {
    const texts = marks.filter((mark): mark is TextMark => mark.mark === 'text');
    return {
      height: CODE.leading,
      marks: marks.map((mark) => movedDown(mark, (CODE.leading - TEXT.leading) / 2)),
      end: Math.max(0, ...texts.map((text) => text.x + text.width)),
    };
  });
}

const CODE_STYLE = { size: CODE.size, weight: 'strong', family: 'codes', spacing: CODE.spacing } as const;
const BASE = CODE.leading / 2 + CODE.size * 0.34;

function codeLines(
  words: readonly (readonly string[])[],
  lock: NodeId,
  x: number,
  room: number,
): SettingLine[] {
  return wrapSymbols(words, room, (symbol) => textWidth(symbol, CODE_STYLE)).map((symbols) => {
    const mark = textMark(symbols.join(''), { x, y: BASE }, { ...CODE_STYLE, role: 'code', of: lock });
    return { height: CODE.leading, marks: [mark], end: x + mark.width - CODE.spacing };
  });
}

/** Each direction as an arrow with its letter. */
function arrowLines(
  words: readonly (readonly string[])[],
  lock: NodeId,
  x: number,
  room: number,
): SettingLine[] {
  const step = ARROW + 1 + textWidth('U', CODE_STYLE) + ARROW_GAP;
  return wrapSymbols(words, room + ARROW_GAP, () => step).map((symbols) => ({
    height: CODE.leading,
    end: x + symbols.length * step - ARROW_GAP,
    marks: symbols.flatMap((symbol, i) => arrowMarks(symbol, x + i * step, lock)),
  }));
}

function arrowMarks(symbol: string, x: number, of: NodeId): Mark[] {
  const sign = ARROWS.get(symbol);
  const letter = textMark(symbol, { x: x + ARROW + 1, y: BASE }, { ...CODE_STYLE, role: 'code', of });
  if (sign === undefined) return [letter];
  return [{ mark: 'sign', sign, x, y: (CODE.leading - ARROW) / 2, size: ARROW, ink: 'ink', of }, letter];
}

/** The right edge of the areas in a strip. */
export function rightOf({ marks }: Strip): number {
  return Math.max(
    0,
    ...marks.flatMap((mark) => (mark.mark === 'area' ? mark.corners.map(({ x }) => x) : [])),
  );
}

/** 'Small red padlock, key lock' under its plate. */
export function lockTypeStrips(assessment: Assessment, lock: NodeId, x: number, width: number): Strip[] {
  return [space(2), ...prose(lockTold(assessment, lock), x, width, { ...SMALL, ink: 'second' })];
}
