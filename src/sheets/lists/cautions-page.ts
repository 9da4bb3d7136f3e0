/** What is to be heeded in this game, drawn: each caution with the things that it concerns and the sources it rests on. */
import { type CautionOfGame, cautionsFor } from '../../cautions/index.ts';
import {
  CAUTION_SHEET,
  cautionConcerns,
  cautionSources,
  cautionText,
  cautionTitle,
} from '../../words/cautions.ts';
import { sayer, sentence } from '../../words/say.ts';
import type { Row } from '../flow.ts';
import { TICK, tickBox } from '../marks.ts';
import { prose } from '../prose.ts';
import { columnsOf, type ListContent, type ListFrame, saidAlone } from './page.ts';
import { ruleStrip, space } from './parts.ts';
import { HEADING, NOTE, SMALL, TEXT } from './type.ts';

/** Kept for the box to be ticked. */
const TICK_ROOM = TICK + 8;
/** Its edge stands out by as much. */
const HALF_A_LINE = 0.5;

export function cautionsPage(frame: ListFrame): ListContent {
  const rows = cautionsFor(frame.assessment.game).map((caution) => cautionRow(frame, caution));
  return {
    name: 'cautions',
    intro: [CAUTION_SHEET.intro],
    flow: { sections: [rows.length > 0 ? { rows } : saidAlone(CAUTION_SHEET.none, frame.paper)] },
  };
}

function cautionRow({ assessment, options, paper }: ListFrame, caution: CautionOfGame): Row {
  const { left, right } = columnsOf(paper);
  const { id } = caution;
  const x = left + (options.ticks ? TICK_ROOM : 0);
  const width = right - x;
  const say = sayer(assessment.game);
  const concerns = cautionConcerns(caution, (ids) => say.names(ids, ids.length));
  return {
    before: 10,
    cells: [
      options.ticks ? [{ height: TICK + 4, marks: [tickBox(left + HALF_A_LINE, 3)] }] : [],
      [
        ...prose([{ strong: cautionTitle(id) }], x, width, HEADING),
        ...prose([cautionText(id)], x, width, TEXT),
        space(2),
        ...prose(sentence({ strong: CAUTION_SHEET.concerns }, ' ', concerns), x, width, {
          ...SMALL,
          names: 'regular',
        }),
        ...prose([cautionSources(id)], x, width, NOTE),
      ],
    ],
    below: [ruleStrip(left, right, 8)],
  };
}
