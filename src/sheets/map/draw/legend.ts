/** What the signs mean that a page uses, and no others. */
import { FASTENER_TYPES } from '../../../fasteners/index.ts';
import { wrap } from '../../../type/text.ts';
import { kindName, lockName } from '../../../words/kinds.ts';
import { LEGEND } from '../../../words/sheet-map.ts';
import type { Mark, Spot } from '../../drawing.ts';
import { rectangle, TICK, tickBox } from '../../marks.ts';
import { lockSign, type SignName } from '../../signs.ts';
import {
  broken,
  type Line,
  type Piece,
  signPiece,
  stepPiece,
  textPiece,
  together,
} from '../measure/pieces.ts';
import { teamNumber } from '../measure/ticks.ts';
import { typeOf } from '../measure/type.ts';
import { container, haspBar, place } from '../measure/wall-marks.ts';

/** What a page uses. */
export interface Uses {
  readonly signs: ReadonlySet<SignName>;
  readonly hasPlaces: boolean;
  readonly hasBoxes: boolean;
  readonly hasSteps: boolean;
  readonly hasUnreached: boolean;
  readonly hasHidden: boolean;
  readonly hasHasps: boolean;
  readonly hasTicks: boolean;
  /** A step that is told and not drawn, for the example; 0 when there is none. */
  readonly told: number;
}

const SIZE = 8;
const THINGS = ['clue', 'key', 'tool', 'prize'] as const;

export function legendUses(marks: readonly Mark[]): Uses {
  const signs = new Set<SignName>();
  let hasPlaces = false;
  let hasBoxes = false;
  let hasSteps = false;
  let hasUnreached = false;
  let hasHidden = false;
  let hasHasps = false;
  let hasTicks = false;
  let told = 0;
  for (const mark of marks) {
    if (mark.mark === 'sign') signs.add(mark.sign);
    else if (mark.mark === 'area') {
      hasPlaces ||= mark.role === 'place' && !mark.hidden;
      hasBoxes ||= mark.role === 'container';
      hasSteps ||= mark.role === 'step';
      hasUnreached ||= mark.role === 'unreached';
      hasHidden ||= mark.role === 'place' && mark.hidden === true;
      hasTicks ||= mark.role === 'tick';
    } else if (mark.mark === 'line') {
      hasHasps ||= mark.role === 'hasp';
    } else if (told === 0 && mark.mark === 'text' && mark.role === 'reference' && !mark.italic) {
      told = /^\d+$/.test(mark.text) ? Number(mark.text) : 0;
    }
  }
  return { signs, hasPlaces, hasBoxes, hasSteps, hasUnreached, hasHidden, hasHasps, hasTicks, told };
}

export function legendLines(uses: Uses, teams: number, remarks: readonly string[], width: number): Line[] {
  const type = typeOf(SIZE);
  const words = (text: string) => textPiece(text, type.thing, { role: 'plain', ink: 'second' }, type.gap);
  const entry = (pieces: readonly Piece[], text: string) => together([...pieces, words(text)], 11);
  const sign = (name: SignName, ink: 'ink' | 'metal') => signPiece(name, 11, ink);
  const entries: Piece[] = [];
  if (uses.hasPlaces) entries.push(entry([wallPiece(place('', TRAY, UNCUT, false, ARM))], kindName('place')));
  if (uses.hasHidden) entries.push(entry([wallPiece(place('', TRAY, UNCUT, true, ARM))], LEGEND.hidden));
  if (uses.hasBoxes) entries.push(entry([wallPiece(container('', TRAY, UNCUT, 0))], kindName('container')));
  for (const kind of THINGS) {
    if (uses.signs.has(kind)) entries.push(entry([sign(kind, 'ink')], kindName(kind)));
  }
  for (const { type: lock } of FASTENER_TYPES) {
    const name = lockSign(lock);
    if (uses.signs.has(name)) entries.push(entry([sign(name, 'metal')], lockName(lock)));
  }
  if (uses.signs.has('otherLock')) entries.push(entry([sign('otherLock', 'metal')], LEGEND.lock));
  if (uses.hasHasps) entries.push(entry([haspPiece()], LEGEND.hasp));
  if (uses.hasSteps) entries.push(entry([example(3)], LEGEND.step));
  if (uses.hasUnreached) entries.push(entry([example(0)], LEGEND.unreached));
  if (uses.told > 0) {
    const number = textPiece(String(uses.told), { ...type.name }, { role: 'plain' }, 1);
    entries.push(entry([signPiece('leadsTo', SIZE, 'ink'), number], LEGEND.told(uses.told)));
  }
  if (uses.hasTicks) entries.push(entry([tickPiece(teams)], LEGEND.tick(teams)));
  for (const remark of remarks) {
    for (const part of wrap(remark, width, type.thing)) entries.push({ ...words(part), before: 11 });
  }
  return broken(entries, width);
}

const TRAY = { left: 1, right: 29, top: -10, bottom: 10 };
const UNCUT = { continued: false, continues: false };
const ARM = 7;
const SMALL = 0.55;

/** A small one of what is round the rows of a tray. */
function wallPiece(marks: readonly Mark[]): Piece {
  return { width: 16.5, before: 0, marks: marks.map((mark) => meaningNone(smaller(mark))) };
}

/** Two plates on the bar that joins them. */
function haspPiece(): Piece {
  const plate = (y: number): Mark => ({
    mark: 'area',
    role: 'plain',
    corners: rectangle(0.4, y, 9, 4.2),
    rounded: 1,
    fill: 'metalSoft',
    stroke: 'metal',
    width: 0.8,
  });
  const bar: Mark = { ...haspBar(7.2, -4, 4, 2.6), role: 'rule' };
  return { width: 10, before: 0, marks: [bar, plate(-6), plate(1.8)] };
}

function smaller(mark: Mark): Mark {
  const shrunk = ({ x, y }: Spot) => ({ x: SMALL * x, y: SMALL * y });
  if (mark.mark === 'line')
    return { ...mark, points: mark.points.map(shrunk), width: Math.max(0.5, SMALL * mark.width) };
  return mark.mark === 'area' ? { ...mark, corners: mark.corners.map(shrunk) } : mark;
}

function tickPiece(teams: number): Piece {
  const y = -TICK / 2;
  const box: Mark = { ...tickBox(0.4, y), role: 'plain' };
  return { width: TICK + 0.8, before: 0, marks: teams > 1 ? [box, teamNumber(1, 0.4, y)] : [box] };
}

function example(step: number): Piece {
  const piece = stepPiece(step, typeOf(7.5), '');
  return { ...piece, marks: piece.marks.map(meaningNone) };
}

/** It stands for nothing in the game. */
function meaningNone(mark: Mark): Mark {
  const { of: _, ...rest } = mark;
  if (rest.mark === 'line') return { ...rest, role: 'rule' };
  return rest.mark === 'text' || rest.mark === 'area' ? { ...rest, role: 'plain' } : rest;
}
