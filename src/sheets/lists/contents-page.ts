/** What lies in what, drawn: each box as a tray with what belongs in it, then its locks. */
import { lessonOf } from '../../game/defaults.ts';
import type { NodeId } from '../../game/model.ts';
import {
  boxTold,
  cautionTold,
  INTRO,
  KEYS_AT_HAND,
  lockShut,
  NO_BOXES,
  PACKING,
  thingText,
  whereText,
} from '../../words/lists.ts';
import { sayer } from '../../words/say.ts';
import { copiesOf, ownCopies } from '../copies.ts';
import type { Row, Section } from '../flow.ts';
import { type LockEntry, lockEntries } from '../locks.ts';
import { prose } from '../prose.ts';
import { type BoxEntry, boxEntries } from './contents.ts';
import { noteOf } from './notes.ts';
import { columnsOf, type ListContent, type ListFrame, saidAlone } from './page.ts';
import { findingStrips, space, tickStrip } from './parts.ts';
import { plateStrips, rightOf } from './plate.ts';
import { thingRow } from './thing-row.ts';
import { boxBackdrop, headingRow, setTicks, ticksFor } from './trays.ts';
import { NOTE, TRAY_PAD } from './type.ts';
import { nearestOf, whereaboutsOf } from './whereabouts.ts';

export function contentsPage(frame: ListFrame): ListContent {
  const { assessment, options, paper } = frame;
  const { game } = assessment;
  const { teams } = lessonOf(game);
  const locks = new Map(lockEntries(assessment).map((entry) => [entry.lock, entry]));
  const notes = noteOf(assessment, options.codes);
  const entries = boxEntries(assessment);
  const sections = entries.map((entry) => boxSection(frame, entry, locks, notes));
  const fewer = entries.some(({ box, things }) =>
    [box, ...things].some((id) => copiesOf(game, id) !== undefined),
  );
  return {
    name: 'contents',
    intro: [INTRO.contents(teams, ticksFor(teams, options.ticks), fewer), [KEYS_AT_HAND]],
    flow: { sections: sections.length > 0 ? sections : [saidAlone(NO_BOXES, paper)] },
  };
}

/** Of the plates in a box. */
const PLATE_WIDTH = 168;

function boxSection(
  { assessment, options, paper }: ListFrame,
  { box, things, boxes, locks, shutIn }: BoxEntry,
  lockOf: ReadonlyMap<NodeId, LockEntry>,
  notes: (id: NodeId) => string | undefined,
): Section {
  const { game } = assessment;
  const columns = columnsOf(paper);
  const left = columns.left + TRAY_PAD;
  const right = columns.right - TRAY_PAD;
  const { teams } = lessonOf(game);
  const ticksOf = (id: NodeId) => setTicks(teams, right, options.ticks, copiesOf(game, id));

  const thing = (id: NodeId, told: string, note: string | undefined) =>
    thingRow(assessment, { id, told, note, left, ticks: ticksOf(id) });
  const contents = [
    ...things.map((id) => thing(id, thingText(assessment, id), notes(id))),
    ...boxes.map((id) => thing(id, PACKING.packed(ownCopies(game, id)), undefined)),
  ];
  const nothing: Row = { before: 3, cells: [prose([PACKING.empty], left, right - left, NOTE)] };

  const plates = new Map(
    locks.map((id) => [
      id,
      plateStrips(assessment, id, options.codes ? lockOf.get(id)?.setting : undefined, left, PLATE_WIDTH),
    ]),
  );
  const text = Math.max(...[...plates.values()].flat().map(rightOf)) + 10;
  const lock = (id: NodeId): Row => {
    const setting = lockOf.get(id)?.setting;
    const keys = setting?.set === 'key' ? setting.keys : [];
    const told = lockShut(
      assessment,
      id,
      keys.map((key) => ({ key, where: whereText(assessment, nearestOf(whereaboutsOf(assessment, key))) })),
    );
    const ticks = ticksOf(id);
    return {
      before: 5,
      cells: [
        plates.get(id) ?? [],
        [space(4), ...prose(told, text, ticks.left - 8 - text, NOTE)],
        [space(3), tickStrip(ticks, id)],
      ],
    };
  };
  const rings = shutIn.map(
    (finding): Row => ({
      before: 4,
      cells: [findingStrips(assessment, finding, left, right - left)],
    }),
  );

  const note = notes(box);
  const told = [
    boxTold(whereText(assessment, whereaboutsOf(assessment, box)), copiesOf(game, box), note),
    cautionTold(game, box),
  ];
  const heading = { name: sayer(game).name(box), told, left, right };
  return {
    heading: (continued) => headingRow(heading, continued),
    rows: [...(contents.length > 0 ? contents : [nothing]), ...locks.map(lock), ...rings],
    backdrop: boxBackdrop(columns.left, columns.right, box),
    padding: 9,
  };
}
