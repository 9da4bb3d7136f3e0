/**
 * Whether a change may be made: its edits apply, the changed game can be won, every code that was right still is, there is nothing new to be said of
 * the game, so that no suggestion brings up what the next look would object to, and no step that could not be skipped before is made idle by it.
 */
import { type Assessment, assess } from '../findings/assess.ts';
import { identityOf } from '../findings/finding.ts';
import { applyEdits } from '../game/edits/index.ts';
import type { NodeId } from '../game/model.ts';
import type { Help } from './help.ts';

function rightCodes({ context }: Assessment): Set<NodeId> {
  const right = context.codes().filter(({ state }) => state === 'right');
  return new Set(right.map(({ node }) => context.idOf(node)));
}

/** Moving a key forward past three puzzles would save time too: that is no help, and the puzzles would stand there for nothing. */
function skipsSteps(before: Assessment, after: Assessment, { code }: Pick<Help, 'code'>): boolean {
  // Asking for fewer means to let one be skipped.
  if (code === 'askForFewer') return false;
  return before.network.ids.some((id, step) => {
    const now = after.network.index.get(id);
    return before.measures.mustDo[step] === 1 && now !== undefined && after.measures.mustDo[now] !== 1;
  });
}

/** The changed game; undefined where the change may not be made. */
export function changed(before: Assessment, help: Help): Assessment | undefined {
  const applied = applyEdits(before.game, help.edits);
  if (!applied.ok) return undefined;
  const after = assess(applied.game);
  if (!after.canBeWon || skipsSteps(before, after, help)) return undefined;
  const known = new Set(before.findings.map(identityOf));
  if (after.findings.some((finding) => !known.has(identityOf(finding)))) return undefined;
  const right = rightCodes(after);
  const isLost = (id: NodeId) => after.network.index.has(id) && !right.has(id);
  return [...rightCodes(before)].some(isLost) ? undefined : after;
}
