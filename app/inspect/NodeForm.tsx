/** The form of one thing, in the order in which a teacher would tell it. */
import { isStep } from '../../src/game/defaults.ts';
import type { GameNode, Kind } from '../../src/game/model.ts';
import { showsCode, subjectsOf } from './about.ts';
import { FormPage, NodeHead } from './FormPage.tsx';
import { Actions } from './parts/Actions.tsx';
import { Answer } from './parts/Answer.tsx';
import { Asks } from './parts/Asks.tsx';
import { ByChance } from './parts/ByChance.tsx';
import { Care } from './parts/Care.tsx';
import { Behind, Contents } from './parts/Contents.tsx';
import { FindingsHere } from './parts/FindingsHere.tsx';
import { Guessed } from './parts/Guessed.tsx';
import { Hands } from './parts/Hands.tsx';
import { HowLong } from './parts/HowLong.tsx';
import { InLesson } from './parts/InLesson.tsx';
import { LiesIn } from './parts/LiesIn.tsx';
import { LockCode } from './parts/LockCode.tsx';
import { NameField } from './parts/NameField.tsx';
import { NeededFor } from './parts/NeededFor.tsx';
import { Needs } from './parts/Needs.tsx';
import { OnMap } from './parts/OnMap.tsx';
import { OpensWith } from './parts/OpensWith.tsx';
import { Quickest } from './parts/Quickest.tsx';
import { Simulated } from './parts/Simulated.tsx';
import { ForTeacher, PupilsRead } from './parts/Texts.tsx';
import { ThisLock } from './parts/ThisLock.tsx';
import { Why } from './parts/Why.tsx';

/** What is looked at, read or worked asks something of a pupil. */
const ASKING: ReadonlySet<Kind> = new Set(['puzzle', 'place', 'clue', 'tool', 'fastener']);

export function NodeForm({ node }: { node: GameNode }) {
  // What pupils read is what a clue or a puzzle is; on other things it is a label.
  const read = node.kind === 'clue' || node.kind === 'puzzle';
  return (
    <FormPage head={<NodeHead node={node} />}>
      <FindingsHere ids={[node.id]} elsewhere={subjectsOf(node)} />
      <NameField node={node} />
      {node.kind === 'fastener' && <OpensWith node={node} />}
      {node.kind === 'fastener' && <ThisLock node={node} />}
      {node.kind === 'fastener' && showsCode(node) && <LockCode node={node} />}
      {node.kind === 'fastener' && <Guessed node={node} />}
      {(node.kind === 'puzzle' || node.kind === 'clue') && <Answer node={node} />}
      {node.kind !== 'place' && node.kind !== 'puzzle' && <LiesIn node={node} />}
      {(node.kind === 'place' || node.kind === 'container') && <Contents node={node} />}
      {node.kind === 'place' && <ByChance node={node} />}
      {node.kind === 'fastener' && <Behind box={node.on} />}
      {read && <PupilsRead node={node} />}
      <Needs node={node} />
      {node.kind !== 'prize' && <NeededFor node={node} />}
      <HowLong node={node} />
      {(isStep(node) || node.hands !== undefined) && <Hands node={node} />}
      <InLesson node={node} />
      {ASKING.has(node.kind) && <Asks node={node} />}
      <Care node={node} />
      {!read && <PupilsRead node={node} />}
      <ForTeacher node={node} />
      <Why node={node} />
      <Quickest node={node} />
      <Simulated node={node} />
      <OnMap id={node.id} />
      <Actions />
    </FormPage>
  );
}
