/** Whether an adaptation may be made: it applies, every code and answer stays as it is, and nothing new stops the game. */
import { type Assessment, assess } from '../../findings/assess.ts';
import { identityOf } from '../../findings/finding.ts';
import { writtenCode } from '../../game/codes.ts';
import type { Edit } from '../../game/edits/edit.ts';
import { applyEdits } from '../../game/edits/index.ts';
import type { Game, NodeId } from '../../game/model.ts';

function codesKept(before: Game, after: Game): boolean {
  return [...before.nodes.keys()].every(
    (id) => writtenCode(before, id)?.typed === writtenCode(after, id)?.typed,
  );
}

/** Of those that are still used: none that was right is wrong or unknown. */
function rightKept(before: Assessment, after: Assessment): boolean {
  const rightOf = ({ context }: Assessment) =>
    new Set<NodeId>(
      context
        .codes()
        .filter(({ state }) => state === 'right')
        .map(({ node }) => context.idOf(node)),
    );
  const right = rightOf(after);
  return [...rightOf(before)].every((id) => !after.network.index.has(id) || right.has(id));
}

/** The game after it, assessed; undefined where it may not be made. */
export function adapted(before: Assessment, edits: readonly Edit[]): Assessment | undefined {
  const applied = applyEdits(before.game, edits);
  if (!applied.ok || !codesKept(before.game, applied.game)) return undefined;
  const after = assess(applied.game);
  const known = new Set(before.findings.filter(({ level }) => level === 'stops').map(identityOf));
  const isStopped = after.findings.some(
    (finding) => finding.level === 'stops' && !known.has(identityOf(finding)),
  );
  return isStopped || !rightKept(before, after) ? undefined : after;
}

/** The same, and there is nothing to be said of the game that was not said before. */
export function adaptedUnremarked(before: Assessment, edits: readonly Edit[]): Assessment | undefined {
  const after = adapted(before, edits);
  const known = new Set(before.findings.map(identityOf));
  return after?.findings.every((finding) => known.has(identityOf(finding))) ? after : undefined;
}
