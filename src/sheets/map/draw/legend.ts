/** What the signs mean that a page uses, and no others. */
import type { LockType } from '../../../fasteners/index.ts';
import { wrap } from '../../../type/text.ts';
import { kindName, lockName } from '../../../words/kinds.ts';
import { LEGEND } from '../../../words/sheet-map.ts';
import type { Mark } from '../../drawing.ts';
import { rectangle, TICK, tickBox } from '../../marks.ts';
import type { SignName } from '../../signs.ts';
import {
  broken,
  type Line,
  type Piece,
  signPiece,
  stepPiece,
  textPiece,
  together,
} from '../measure/pieces.ts';
import { typeOf } from '../measure/type.ts';

/** What a page uses. */
export interface Uses {
  readonly signs: ReadonlySet<SignName>;
  readonly hasSteps: boolean;
  readonly hasHidden: boolean;
  readonly hasTicks: boolean;
  /** A step that is told and not drawn, for the example; 0 when there is none. */
  readonly told: number;
}

const SIZE = 8;
const THINGS = ['clue', 'key', 'tool', 'prize'] as const;
const LOCKS: readonly LockType[] = [
  'key',
  'number',
  'word',
  'direction',
  'dial',
  'picture',
  'typed',
  'latch',
];

export function usesOf(marks: readonly Mark[]): Uses {
  const signs = new Set<SignName>();
  let hasSteps = false;
  let hasHidden = false;
  let hasTicks = false;
  let told = 0;
  for (const mark of marks) {
    if (mark.mark === 'sign') signs.add(mark.sign);
    else if (mark.mark === 'area') {
      hasSteps ||= mark.role === 'step';
      hasHidden ||= mark.role === 'place' && mark.dash !== undefined;
      hasTicks ||= mark.role === 'tick';
    } else if (told === 0 && mark.mark === 'text' && mark.role === 'reference') {
      told = /^\d+$/.test(mark.text) ? Number(mark.text) : 0;
    }
  }
  return { signs, hasSteps, hasHidden, hasTicks, told };
}

export function legendLines(uses: Uses, teams: number, remarks: readonly string[], width: number): Line[] {
  const type = typeOf(SIZE);
  const words = (text: string) => textPiece(text, type.thing, { role: 'plain', ink: 'second' }, type.gap);
  const entry = (pieces: readonly Piece[], text: string) => together([...pieces, words(text)], 11);
  const sign = (name: SignName, ink: 'ink' | 'metal') => signPiece(name, 11, ink);
  const entries: Piece[] = [];
  for (const kind of THINGS) {
    if (uses.signs.has(kind)) entries.push(entry([sign(kind, 'ink')], kindName(kind)));
  }
  for (const lock of LOCKS) {
    const name = lock === 'key' ? 'keyLock' : lock;
    if (uses.signs.has(name)) entries.push(entry([sign(name, 'metal')], lockName(lock)));
  }
  if (uses.signs.has('otherLock')) entries.push(entry([sign('otherLock', 'metal')], LEGEND.lock));
  if (uses.hasSteps) entries.push(entry([exampleStep()], LEGEND.step));
  if (uses.told > 0) {
    const number = textPiece(String(uses.told), { ...type.name }, { role: 'plain' }, 1);
    entries.push(entry([signPiece('leadsTo', SIZE, 'ink'), number], LEGEND.told(uses.told)));
  }
  if (uses.hasHidden) entries.push(entry([hiddenPiece()], LEGEND.hidden));
  if (uses.hasTicks) entries.push(entry([tickPiece()], LEGEND.tick(teams)));
  for (const remark of remarks) {
    for (const part of wrap(remark, width, type.thing)) entries.push({ ...words(part), before: 11 });
  }
  return broken(entries, width);
}

function hiddenPiece(): Piece {
  return {
    width: 13,
    before: 0,
    marks: [
      {
        mark: 'area',
        role: 'plain',
        corners: rectangle(0.5, -4.5, 12, 9),
        stroke: 'second',
        width: 1,
        dash: [3, 2.5],
      },
    ],
  };
}

function tickPiece(): Piece {
  const { role: _, ...box } = tickBox(0.4, -TICK / 2);
  return { width: TICK + 0.8, before: 0, marks: [{ ...box, role: 'plain' }] };
}

/** It stands for no step of the game. */
function exampleStep(): Piece {
  const piece = stepPiece(3, typeOf(7.5), '');
  return {
    ...piece,
    marks: piece.marks.map((mark): Mark => {
      const { of: _, ...rest } = mark;
      return rest.mark === 'text' || rest.mark === 'area' ? { ...rest, role: 'plain' } : rest;
    }),
  };
}
