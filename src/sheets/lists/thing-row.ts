/** A thing as a row of a tray: its sign, its name, what it is, the teacher's note on it, and boxes to be ticked. */
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import { sayer } from '../../words/say.ts';
import type { Row } from '../flow.ts';
import { plainText, prose } from '../prose.ts';
import { tickStrip } from './parts.ts';
import { type SetTicks, thingSign } from './trays.ts';
import { NOTE, SIGN_ROOM, TEXT } from './type.ts';

interface Thing {
  readonly id: NodeId;
  /** Under its name: what it is. */
  readonly told: string;
  readonly note: string | undefined;
  readonly left: number;
  readonly ticks: SetTicks;
}

export function thingRow({ game }: Assessment, { id, told, note, left, ticks }: Thing): Row {
  const x = left + SIGN_ROOM;
  const width = ticks.left - 8 - x;
  const under = note === undefined ? told : `${told}. ${note}`;
  return {
    before: 4,
    cells: [
      thingSign(game, id, left),
      [
        ...prose(sayer(game).name(id), x, width, { ...TEXT, names: 'regular' }),
        ...prose(plainText(under), x, width, NOTE),
      ],
      [tickStrip(ticks.xs, id)],
    ],
  };
}
