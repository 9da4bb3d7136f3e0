/** What is hidden where, drawn: each place as its tray, with the spot in the teacher's words. */
import type { Assessment } from '../../findings/assess.ts';
import { lessonOf } from '../../game/defaults.ts';
import type { NodeId } from '../../game/model.ts';
import { hidingCautions, SEE_CAUTIONS } from '../../words/cautions.ts';
import {
  cautionTold,
  givenAfter,
  HIDDEN,
  INTRO,
  NOTHING_HIDDEN,
  placeShared,
  spotCaption,
  spotOpens,
  thingText,
} from '../../words/lists.ts';
import { sayer } from '../../words/say.ts';
import { plain } from '../../words/sentence.ts';
import { copiesOf, ownCopies } from '../copies.ts';
import type { Section } from '../flow.ts';
import { plainText, prose } from '../prose.ts';
import { type SpotEntry, spotEntries } from './hidden.ts';
import { noteOf } from './notes.ts';
import { columnsOf, type ListContent, type ListFrame, saidAlone } from './page.ts';
import { numberStrip } from './parts.ts';
import { thingRow } from './thing-row.ts';
import { groupBackdrop, headingRow, placeBackdrop, setTicks, type TrayHeading, ticksFor } from './trays.ts';
import { HEADING, NOTE, TRAY_PAD } from './type.ts';
import { whereaboutsOf } from './whereabouts.ts';

export function hiddenPage(frame: ListFrame): ListContent {
  const { assessment, options, paper } = frame;
  const notes = noteOf(assessment, options.codes);
  const { teams } = lessonOf(assessment.game);
  const entries = spotEntries(assessment);
  const sections = entries.map((entry) => spotSection(frame, entry, notes));
  const fewer = entries.some(({ things }) =>
    things.some((id) => copiesOf(assessment.game, id) !== undefined),
  );
  const later = entries.some(({ spot }) => 'caption' in spot && spot.caption === 'given');
  return {
    name: 'hidden',
    intro: [
      INTRO.hidden(teams, ticksFor(teams, options.ticks), fewer, later),
      // Free ways out are said whichever sheets are printed.
      plainText(options.sheets.includes('cautions') ? SEE_CAUTIONS : hidingCautions()),
    ],
    flow: { sections: sections.length > 0 ? sections : [saidAlone(NOTHING_HIDDEN, paper)] },
  };
}

function spotSection(frame: ListFrame, entry: SpotEntry, notes: (id: NodeId) => string | undefined): Section {
  const { assessment, options, paper } = frame;
  const columns = columnsOf(paper);
  const left = columns.left + TRAY_PAD;
  const right = columns.right - TRAY_PAD;
  const { game } = assessment;
  const { teams } = lessonOf(game);
  const rows = entry.things.map((id) => {
    const ticks = setTicks(teams, right, options.ticks, copiesOf(game, id));
    return thingRow(assessment, { id, told: toldOf(assessment, id), note: notes(id), left, ticks });
  });
  const nothing = { before: 3, cells: [prose([HIDDEN.empty], left, right - left, NOTE)] };
  const heading: TrayHeading = { ...headOf(assessment, entry, notes, left), left, right };
  const { spot } = entry;
  return {
    heading: (continued) => headingRow(heading, continued),
    rows: rows.length > 0 ? rows : [nothing],
    backdrop:
      'place' in spot
        ? placeBackdrop(columns.left, columns.right, spot.place, entry.openers.length > 0)
        : groupBackdrop(columns.left, columns.right),
    padding: 9,
  };
}

function headOf(
  assessment: Assessment,
  entry: SpotEntry,
  notes: (id: NodeId) => string | undefined,
  left: number,
): Pick<TrayHeading, 'name' | 'mark' | 'told'> {
  const { spot } = entry;
  if ('caption' in spot) return { name: [{ strong: spotCaption(spot.caption) }], told: [] };
  const { game, network, measures } = assessment;
  const number = measures.number[network.index.get(spot.place) ?? -1] ?? 0;
  const note = notes(spot.place);
  return {
    name: sayer(game).name(spot.place),
    ...(number > 0 && { mark: { width: 24, strip: numberStrip(number, left, spot.place, HEADING.leading) } }),
    told: [
      ...(note === undefined ? [] : [plainText(note)]),
      placeShared(ownCopies(game, spot.place)),
      cautionTold(game, spot.place),
      spotOpens(assessment, entry),
    ],
  };
}

/** What it is, and for what the teacher keeps, when it is handed over. */
function toldOf(assessment: Assessment, id: NodeId): string {
  const { holders, givenBy } = whereaboutsOf(assessment, id);
  const what = thingText(assessment, id);
  return holders.length === 0 && givenBy.length > 0
    ? `${what}, ${plain(givenAfter(assessment, givenBy))}`
    : what;
}
