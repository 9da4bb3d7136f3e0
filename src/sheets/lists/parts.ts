/** What the lists are made of: numbers in circles, signs, plates of locks, boxes to be ticked. */
import type { Assessment } from '../../findings/assess.ts';
import type { Finding } from '../../findings/finding.ts';
import { codeOf } from '../../game/codes.ts';
import type { NodeId } from '../../game/model.ts';
import { directionNodes, wrapSymbols } from '../../map/code.ts';
import { textWidth } from '../../type/text.ts';
import { findingTold, lockText, NOTHING_TO_SET } from '../../words/lists.ts';
import { sayer } from '../../words/say.ts';
import type { Mark, TextMark } from '../drawing.ts';
import type { Strip } from '../flow.ts';
import { movedDown, rectangle, rule, TICK, textMark, tickBox } from '../marks.ts';
import { prose } from '../prose.ts';
import { lockSign, type SignName } from '../signs.ts';
import type { Setting } from './codes.ts';
import { CODE, SIGN, SMALL, TEXT } from './type.ts';

export const space = (height: number): Strip => ({ height, marks: [] });

const CIRCLE = 8.5;

/** The number of a step in its circle, its middle on the middle of a line of text. */
export function numberStrip(number: number, x: number, of: NodeId, height: number = TEXT.leading): Strip {
  const digits = String(number).length;
  const half = digits > 2 ? CIRCLE + (digits - 2) * 2.5 : CIRCLE;
  const middle = height / 2;
  return {
    height: Math.max(height, 2 * CIRCLE),
    marks: [
      {
        mark: 'area',
        role: 'step',
        of,
        corners: rectangle(x, middle - CIRCLE, 2 * half, 2 * CIRCLE),
        rounded: CIRCLE,
        fill: 'ink',
      },
      textMark(
        String(number),
        { x: x + half, y: middle + 3.2 },
        { size: 9, weight: 'strong', role: 'step', ink: 'paper', align: 'middle', of },
      ),
    ],
  };
}

export function signStrip(sign: SignName, x: number, of: NodeId, height: number = TEXT.leading): Strip {
  return {
    height,
    marks: [{ mark: 'sign', sign, x, y: (height - SIGN) / 2, size: SIGN, ink: 'ink', of }],
  };
}

/** Boxes to be ticked, on the middle of a line; with the numbers of the sets in them, as on the map. */
export function tickStrip(
  { xs, numbered }: { readonly xs: readonly number[]; readonly numbered: boolean },
  of: NodeId,
): Strip {
  const middle = TEXT.leading / 2;
  return {
    height: Math.max(TEXT.leading, TICK),
    marks: xs.flatMap((x, i): Mark[] => [
      tickBox(x, middle - TICK / 2, of),
      ...(numbered ? [setNumber(i + 1, x + TICK / 2, middle)] : []),
    ]),
  };
}

function setNumber(number: number, x: number, middle: number): Mark {
  return textMark(String(number), { x, y: middle + 2.6 }, { size: 7.5, ink: 'second', align: 'middle' });
}

/** Codes and answers of the game that are directions. */
export function directionCodes({ game }: Assessment): ReadonlySet<string> {
  const codes = new Set<string>();
  for (const id of directionNodes(game)) {
    const code = codeOf(game, id);
    if (code !== undefined) codes.add(code);
  }
  return codes;
}

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

/** What the program has to say of something on the list. */
export function findingStrips(
  { game }: Assessment,
  finding: Finding,
  x: number,
  width: number,
  directions?: ReadonlySet<string>,
): Strip[] {
  return prose(findingTold(game, finding), x, width, {
    ...SMALL,
    ink: finding.level === 'stops' ? 'stop' : 'ink',
    names: 'regular',
    ...(directions && { directions }),
  });
}

/** The right edge of the areas in a strip. */
export function rightOf({ marks }: Strip): number {
  return Math.max(
    0,
    ...marks.flatMap((mark) => (mark.mark === 'area' ? mark.corners.map(({ x }) => x) : [])),
  );
}

/** 'number lock' under its plate. */
export function lockTypeStrips(assessment: Assessment, lock: NodeId, x: number, width: number): Strip[] {
  return [space(2), ...prose([lockText(assessment, lock)], x, width, { ...SMALL, ink: 'second' })];
}

/** A hair line under a row. */
export function ruleStrip(left: number, right: number, height = 6): Strip {
  return { height, marks: [rule({ x: left, y: height }, { x: right, y: height }, 0.5, 'hair')] };
}
