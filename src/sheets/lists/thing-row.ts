/** A thing as a row of a tray: its sign, its name, what it is, the teacher's note on it, and boxes to be ticked. */
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import { sayer } from '../../words/say.ts';
import type { TextMark } from '../drawing.ts';
import type { Row, Strip } from '../flow.ts';
import { plainText, prose } from '../prose.ts';
import { tickStrip } from './parts.ts';
import { type SetTicks, thingSign } from './trays.ts';
import { NOTE, SIGN_ROOM, TEXT } from './type.ts';

interface Thing {
  readonly id: NodeId;
  /** What it is: behind its name where there is room, else under it. */
  readonly told: string;
  readonly note: string | undefined;
  readonly left: number;
  readonly ticks: SetTicks;
}

export function thingRow({ game }: Assessment, { id, told, note, left, ticks }: Thing): Row {
  const x = left + SIGN_ROOM;
  const width = ticks.left - 8 - x;
  const name = prose(sayer(game).name(id), x, width, { ...TEXT, names: 'regular' });
  const what = prose(plainText(told), x, width, NOTE);
  return {
    before: 4,
    cells: [
      thingSign(game, id, left),
      [
        ...(behind(name, what, x + width) ?? [...name, ...what]),
        ...(note === undefined ? [] : prose(plainText(note), x, width, NOTE)),
      ],
      [tickStrip(ticks, id)],
    ],
  };
}

const GAP = 7;

/** A short text behind the last line of a name, on its base line; undefined where it does not fit. */
function behind(name: readonly Strip[], text: readonly Strip[], right: number): Strip[] | undefined {
  const last = name.at(-1);
  const [line] = text;
  if (!last || !line || text.length > 1) return undefined;
  const end = Math.max(...textsOf(last).map((mark) => mark.x + mark.width));
  const [mark, ...more] = textsOf(line);
  if (!mark || more.length > 0 || end + GAP + mark.width > right) return undefined;
  const base = textsOf(last)[0]?.y ?? mark.y;
  return [...name.slice(0, -1), { ...last, marks: [...last.marks, { ...mark, x: end + GAP, y: base }] }];
}

function textsOf({ marks }: Strip): TextMark[] {
  return marks.filter((mark): mark is TextMark => mark.mark === 'text');
}
