/** The order of play in sentences, drawn: a row for each step, then what is never reached. */
import { directionCodes } from '../../map/code.ts';
import {
  COLUMNS,
  INTRO,
  neverReachedText,
  noteTold,
  ORDER,
  rescueTold,
  timesTold,
} from '../../words/lists.ts';
import type { Row, Section, Strip } from '../flow.ts';
import { textMark } from '../marks.ts';
import { prose } from '../prose.ts';
import { type OrderList, orderList, type StepEntry } from './order.ts';
import { columnsOf, headsRow, type ListContent, type ListFrame, saidAlone } from './page.ts';
import { findingStrips, numberStrip, ruleStrip, space } from './parts.ts';
import { HEADING, SMALL, TEXT } from './type.ts';

const NUMBER = 28;
const TIME = 52;

export function orderPage(frame: ListFrame): ListContent {
  const { assessment, options, paper } = frame;
  const { left, right } = columnsOf(paper);
  const list = orderList(assessment, options);
  const directions = directionCodes(assessment.game);
  const hasNotes = list.steps.some(({ note }) => note !== undefined);
  const rows = list.steps.map((step) => stepRow(frame, step, directions));
  const heads = headsRow(
    [
      { x: left + NUMBER, text: COLUMNS.step },
      ...(options.times ? [{ x: right, text: COLUMNS.minutes, align: 'end' as const }] : []),
    ],
    { left, right },
  );
  const sections: Section[] = [
    rows.length > 0 ? { rows } : saidAlone(ORDER.noSteps, paper),
    ...neverReached(frame, list, directions),
  ];
  return {
    name: 'order',
    intro: [INTRO.order(options.rescue, hasNotes, timesTold(assessment, options.times))],
    flow: rows.length > 0 ? { heads, sections } : { sections },
  };
}

function stepRow(
  { options, paper }: ListFrame,
  { line, rescue, note }: StepEntry,
  directions: ReadonlySet<string>,
): Row {
  const { left, right } = columnsOf(paper);
  const x = left + NUMBER;
  const width = right - x - (options.times ? TIME : 0);
  const time: Strip = {
    height: TEXT.leading,
    marks: [
      textMark(line.minutes, { x: right, y: 10 }, { size: 9, role: 'minutes', align: 'end', of: line.node }),
    ],
  };
  return {
    before: 6,
    cells: [
      [numberStrip(line.number, left, line.node, 17)],
      [
        space(2),
        ...prose(line.title, x, width, { ...TEXT, weight: 'strong' }),
        ...prose(line.reason, x, width, { ...SMALL, directions }),
        ...(note === undefined ? [] : [space(1.5), ...prose(noteTold(note), x, width, SMALL)]),
        ...(rescue.length === 0
          ? []
          : [
              space(1.5),
              ...prose(rescueTold(note, rescue), x, width, {
                ...SMALL,
                names: 'regular',
                role: 'rescue',
                directions,
              }),
            ]),
      ],
      options.times ? [space(2), time] : [],
    ],
    below: [ruleStrip(left, right)],
  };
}

function neverReached(
  { assessment, paper }: ListFrame,
  { unreached, blocks }: OrderList,
  directions: ReadonlySet<string>,
): Section[] {
  if (unreached.length === 0) return [];
  const { left, right } = columnsOf(paper);
  const wide = right - left;
  const style = { ...SMALL, directions };
  return [
    {
      heading: () => ({
        before: 16,
        cells: [
          [...prose([{ strong: ORDER.neverReached }], left, wide, { ...HEADING, ink: 'stop' }), space(2)],
        ],
      }),
      rows: [
        ...blocks.map(
          (finding): Row => ({
            before: 3,
            cells: [findingStrips(assessment, finding, left, wide, directions)],
          }),
        ),
        { before: 5, cells: [prose(neverReachedText(assessment, unreached), left, wide, style)] },
      ],
    },
  ];
}
