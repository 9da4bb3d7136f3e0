/** Codes of all locks, drawn: a row for each lock. */
import { FASTENER_TYPES, isKnownType, type LockType } from '../../fasteners/index.ts';
import type { Assessment } from '../../findings/assess.ts';
import { lessonOf } from '../../game/defaults.ts';
import { directionCodes } from '../../map/code.ts';
import { LOCK_STATES } from '../../words/canvas.ts';
import { anyOf, COLUMNS, INTRO, NO_LOCKS, openerTold, shared, whereText } from '../../words/lists.ts';
import { lockSettingsTold, SETTING_LOCKS } from '../../words/lock-types.ts';
import { sayer } from '../../words/say.ts';
import { copiesOf } from '../copies.ts';
import type { Row, Section, Strip } from '../flow.ts';
import { type LockEntry, lockEntries, type Opener } from '../locks.ts';
import { TICK } from '../marks.ts';
import { prose } from '../prose.ts';
import { columnsOf, headsRow, type ListContent, type ListFrame, saidAlone } from './page.ts';
import { findingStrips, numberStrip, ruleStrip, space, tickStrip } from './parts.ts';
import { lockTypeStrips, plateStrips } from './plate.ts';
import { NOTE, SMALL, TEXT } from './type.ts';
import { nearestOf, whereaboutsOf } from './whereabouts.ts';

const NUMBER = 26;
const TICKS = 28;

export function codesPage(frame: ListFrame): ListContent {
  const { assessment, options, paper } = frame;
  const { left, right } = columnsOf(paper);
  const end = options.ticks ? right - 2 * TICKS : right;
  const wide = end - left - NUMBER;
  const box = left + NUMBER;
  const code = box + wide * 0.3;
  const from = code + wide * 0.42;
  const columns: Columns = {
    left,
    right,
    box,
    code,
    from,
    end,
    ticks: options.ticks ? [end + TICKS * 0.5, end + TICKS * 1.5].map((middle) => middle - TICK / 2) : [],
  };
  const entries = lockEntries(assessment);
  const directions = directionCodes(assessment.game);
  const fewer = entries.some(({ lock }) => copiesOf(assessment.game, lock) !== undefined);
  const heads = headsRow(
    [
      { x: box, text: COLUMNS.lock },
      { x: code, text: COLUMNS.code },
      { x: from, text: COLUMNS.openers },
      ...columns.ticks.map((x, i) => ({
        x: x + TICK / 2,
        text: i === 0 ? COLUMNS.set : COLUMNS.tried,
        align: 'middle' as const,
      })),
    ],
    { left, right },
  );
  const rows = entries.map((entry) => lockRow(frame, entry, columns, directions));
  return {
    name: 'codes',
    intro: [INTRO.codes(lessonOf(assessment.game).teams, options.ticks ? 'one' : 'none', fewer)],
    flow:
      rows.length > 0
        ? { heads, sections: [{ rows }, ...settingSections(frame, entries)] }
        : { sections: [saidAlone(NO_LOCKS, paper)] },
  };
}

/** How each type of lock that is set to a code is set, once each. */
function settingSections({ assessment, paper }: ListFrame, entries: readonly LockEntry[]): Section[] {
  const { left, right } = columnsOf(paper);
  const types = new Set<LockType>();
  for (const { lock, setting } of entries) {
    const node = assessment.game.nodes.get(lock);
    const type = node?.kind === 'fastener' ? node.type : undefined;
    if (setting.set === 'code' && type !== undefined && isKnownType(type)) types.add(type);
  }
  if (types.size === 0) return [];
  const wide = right - left;
  const used = FASTENER_TYPES.map(({ type }) => type).filter((type) => types.has(type));
  const rows = lockSettingsTold(used).map(
    (told, i): Row => ({ before: i === 0 ? 0 : 3, cells: [prose(told, left, wide, SMALL)] }),
  );
  const heading = (): Row => ({
    before: 14,
    cells: [
      [
        ...prose([{ strong: SETTING_LOCKS.heading }], left, wide, TEXT),
        ...prose([SETTING_LOCKS.intro], left, wide, NOTE),
        space(3),
      ],
    ],
  });
  return [{ heading, rows }];
}

interface Columns {
  readonly left: number;
  readonly right: number;
  readonly box: number;
  readonly code: number;
  readonly from: number;
  readonly end: number;
  /** Of 'set' and of 'tried'. */
  readonly ticks: readonly number[];
}

const GAP = 10;

function lockRow(
  { assessment }: ListFrame,
  entry: LockEntry,
  { left, right, box, code, from, end, ticks }: Columns,
  directions: ReadonlySet<string>,
): Row {
  const { lock, number, opens, setting, openers, need, findings } = entry;
  const { game } = assessment;
  const node = game.nodes.get(lock);
  const on = node?.kind === 'fastener' ? node.on : lock;
  const where = shared(whereText(assessment, whereaboutsOf(assessment, on)), copiesOf(game, lock));
  const name = prose(sayer(game).name(on), box, code - box - GAP, TEXT);
  const lies = prose(where, box, code - box - GAP, NOTE);
  const state = opens
    ? []
    : prose([{ strong: LOCK_STATES.cannotOpen }], box, code - box - GAP, { ...SMALL, ink: 'stop' });
  const isSet = setting.set === 'code' || setting.set === 'missing';
  return {
    before: 7,
    cells: [
      number > 0 ? [space(1), numberStrip(number, left, lock, 17)] : [],
      [space(3), ...name, ...lies, ...state],
      [
        ...plateStrips(assessment, lock, setting, code, from - code - GAP),
        ...lockTypeStrips(assessment, lock, code, from - code - GAP),
      ],
      [
        space(3),
        ...(need === undefined ? [] : prose([anyOf(need)], from, end - from - GAP, NOTE)),
        ...openers.flatMap((opener) => openerStrips(assessment, opener, from, end - from - GAP)),
      ],
      [space(3), tickStrip({ xs: isSet ? ticks : ticks.slice(1), numbered: false }, lock)],
    ],
    below: [
      ...findings.flatMap((finding): Strip[] => [
        space(3),
        ...findingStrips(assessment, finding, box, right - box, directions),
      ]),
      ruleStrip(left, right),
    ],
  };
}

function openerStrips(assessment: Assessment, opener: Opener, x: number, width: number): Strip[] {
  const told = openerTold(assessment, opener, nearestOf(whereaboutsOf(assessment, opener.node)));
  return [
    ...prose(sayer(assessment.game).name(opener.node), x, width, { ...TEXT, names: 'regular' }),
    ...(told.length === 0 ? [] : prose(told, x, width, NOTE)),
  ];
}
