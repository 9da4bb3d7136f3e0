/** What the pages of the map have to say of the game: each thing by its whole name, numbers, codes, boxes to tick, the verdict. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import { normaliseCode } from '../../../src/game/codes.ts';
import type { GameNode, NodeId } from '../../../src/game/model.ts';
import type { TextRole } from '../../../src/sheets/drawing.ts';
import type { SheetOptions } from '../../../src/sheets/sheet.ts';
import { holds } from './boxes.ts';
import type { Fault } from './fault.ts';
import { letters } from './links.ts';
import type { Page } from './page.ts';
import { called, type Used } from './used.ts';

/** All texts of one role about one node on a page, joined as they are painted. */
function said({ texts }: Page, of: NodeId, role: TextRole): string {
  return texts
    .filter(({ mark }) => mark.of === of && mark.role === role)
    .map(({ mark }) => mark.text)
    .join('');
}

function shownFaults(pages: readonly Page[], used: Used): Fault[] {
  return [...used.nodes].flatMap(([id, node]): Fault[] => {
    const has = pages.some(({ texts, signs }) => [...texts, ...signs].some(({ mark }) => mark.of === id));
    if (!has) return [{ kind: 'missing', page: 0, what: called(used, id) }];
    const areas = pages.flatMap(({ trays }) => trays.filter(({ mark }) => mark.of === id));
    const wantsArea = node.kind === 'place' || node.kind === 'container' || node.kind === 'puzzle';
    if (wantsArea && !areas.some(({ mark }) => mark.role === node.kind)) {
      return [{ kind: 'missing', page: 0, what: `tray or bar of ${called(used, id)}` }];
    }
    // A lock is told by its number and its code.
    if (node.kind === 'fastener') return [];
    const whole = pages.some((page) => letters(said(page, id, 'name')).includes(letters(node.name)));
    return whole ? [] : [{ kind: 'name not whole', page: 0, what: called(used, id) }];
  });
}

function numberFaults(pages: readonly Page[], used: Used): Fault[] {
  const found = new Map<NodeId, string[]>();
  const faults: Fault[] = [];
  for (const page of pages) {
    for (const { mark, box } of page.texts) {
      // The legend shows a number of nothing.
      if (mark.role !== 'step' || mark.of === undefined) continue;
      found.set(mark.of, [...(found.get(mark.of) ?? []), mark.text]);
      const circle = page.areas.some(
        (area) =>
          area.mark.role === 'step' && area.mark.of === mark.of && holds(area.box, box, 0.1 * mark.size),
      );
      if (!circle)
        faults.push({ kind: 'step number', page: page.number, what: `${mark.text} stands in no circle` });
    }
  }
  for (const id of new Set([...found.keys(), ...used.numbers.keys()])) {
    const number = used.numbers.get(id);
    const texts = found.get(id) ?? [];
    if (number !== undefined && texts.length === 1 && texts[0] === String(number)) continue;
    const what = `${called(used, id)} is ${number ?? 'no step'}, the pages say '${texts.join(', ')}'`;
    faults.push({ kind: 'step number', page: 0, what });
  }
  return faults;
}

/** The code of a lock that takes one, or the answer of a puzzle, as typed. */
function secretOf(node: GameNode): string | undefined {
  if (node.kind === 'puzzle' || node.kind === 'clue') return node.answer;
  if (node.kind !== 'fastener') return undefined;
  const { opensWith } = fastenerType(node.type);
  return opensWith === 'key' || opensWith === 'nothing' ? undefined : node.code;
}

function codeFaults(pages: readonly Page[], used: Used): Fault[] {
  return [...used.nodes].flatMap(([id, node]): Fault[] => {
    const code = normaliseCode(secretOf(node) ?? '');
    // What a clue says is read on the clue.
    if (code === '' || node.kind === 'clue') return [];
    if (pages.some((page) => normaliseCode(said(page, id, 'code')).includes(code))) return [];
    const shown = pages.map((page) => said(page, id, 'code')).join('');
    return [
      { kind: 'code missing', page: 0, what: `${called(used, id)}: ${code}, the pages say '${shown}'` },
    ];
  });
}

const SECRET_LENGTH = 3;

/** Shorter codes than three signs are also numbers of steps and minutes, and are looked for nowhere. */
export function givenAway(pages: readonly Page[], used: Used): Fault[] {
  const names = [...used.nodes.values()].map(({ name }) => letters(name)).join(' ');
  const secrets = new Map<string, NodeId>();
  for (const [id, node] of used.nodes) {
    const typed = letters(secretOf(node) ?? '');
    for (const form of [typed, normaliseCode(typed)]) {
      if ([...form].length >= SECRET_LENGTH && !names.includes(form)) secrets.set(form, id);
    }
  }
  return pages.flatMap((page) => {
    const faults: Fault[] = [];
    const wholes = new Map<string, string>();
    for (const { mark } of page.texts) {
      if (mark.role === 'code') {
        faults.push({
          kind: 'code given away',
          page: page.number,
          what: `'${mark.text}' is drawn as a code`,
        });
      }
      if (mark.role === 'name' || mark.role === 'title' || mark.role === 'step') continue;
      const key = `${mark.role} ${mark.of ?? ''}`;
      wholes.set(key, `${wholes.get(key) ?? ''} ${mark.text}`);
    }
    for (const whole of wholes.values()) {
      for (const [secret, id] of secrets) {
        if (!letters(whole).includes(secret)) continue;
        faults.push({
          kind: 'code given away',
          page: page.number,
          what: `${secret} of ${called(used, id)} in '${whole}'`,
        });
      }
    }
    return faults;
  });
}

const TICK = (4 * 72) / 25.4;

function tickFaults(pages: readonly Page[], used: Used, wanted: boolean): Fault[] {
  const counts = new Map<NodeId, number>();
  const faults: Fault[] = [];
  for (const { areas, number } of pages) {
    for (const { mark, box } of areas) {
      if (mark.role !== 'tick' || mark.of === undefined) continue;
      counts.set(mark.of, (counts.get(mark.of) ?? 0) + 1);
      const sides = [box.right - box.left, box.bottom - box.top];
      if (sides.some((side) => Math.abs(side - TICK) > 0.1)) {
        faults.push({
          kind: 'tick boxes',
          page: number,
          what: `${sides.map((side) => side.toFixed(2)).join(' by ')} points`,
        });
      }
    }
  }
  for (const [id, node] of used.nodes) {
    const right = wanted && node.kind === 'fastener' ? used.teams : 0;
    const count = counts.get(id) ?? 0;
    if (count !== right)
      faults.push({ kind: 'tick boxes', page: 0, what: `${called(used, id)}: ${count}, not ${right}` });
  }
  return faults;
}

const OPTIONAL = { minutes: 'times', rescue: 'rescue' } as const;

function optionFaults(pages: readonly Page[], options: SheetOptions): Fault[] {
  return pages.flatMap((page) =>
    page.texts.flatMap(({ mark }): Fault[] => {
      if (mark.role !== 'minutes' && mark.role !== 'rescue') return [];
      if (options[OPTIONAL[mark.role]]) return [];
      return [{ kind: 'left out by the options', page: page.number, what: `'${mark.text}' (${mark.role})` }];
    }),
  );
}

/** A game that cannot be won says so in a band of its own. */
function bandFaults([first]: readonly Page[], used: Used): Fault[] {
  const band = first?.areas.some(
    ({ mark, box }) =>
      (mark.fill === 'stop' || mark.fill === 'stopSoft') &&
      first.texts.some((text) => holds(box, text.box, 0.1 * text.mark.size)),
  );
  // Without a prize there is nothing to win yet, which is no fault of the game.
  const hasPrize = [...used.nodes.values()].some(({ kind }) => kind === 'prize');
  if (band !== used.canBeWon || !hasPrize) return [];
  return [{ kind: 'no band', page: 1, what: used.canBeWon ? 'a band, and it can be won' : 'none' }];
}

export function contentFaults(pages: readonly Page[], used: Used, options: SheetOptions): Fault[] {
  return [
    ...shownFaults(pages, used),
    ...numberFaults(pages, used),
    ...(options.codes ? codeFaults(pages, used) : givenAway(pages, used)),
    ...tickFaults(pages, used, options.ticks),
    ...optionFaults(pages, options),
    ...bandFaults(pages, used),
  ];
}
