/**
 * Whether a remedy may be offered. Its edits apply; the changed game can be won, or, where it could not before, nothing stops it in a new
 * way; every code that was right still is, if its lock is used and still takes a code; nothing new is to be said of the game but what comes with any lock
 * (TOLERATED); and less is missing than before.
 */
import { type Assessment, assess } from '../../findings/assess.ts';
import { identityOf } from '../../findings/finding.ts';
import { applyEdits } from '../../game/edits/index.ts';
import type { NodeId } from '../../game/model.ts';
import { type Fitting, fitKit } from '../fit/index.ts';
import type { Kit } from '../model.ts';
import type { Remedy } from './remedy.ts';

/** The game without its shortage is worth these: they weigh less than a lesson without a lock. */
const TOLERATED: ReadonlySet<string> = new Set([
  'weakCode',
  'easilyGuessed',
  'foundByChance',
  'opensAnother',
  'keyOpensSeveral',
  'noOtherWay',
]);

export interface Tried {
  readonly after: Assessment;
  readonly fitting: Fitting;
}

function statesOf({ context }: Assessment): Map<NodeId, string> {
  return new Map(context.codes().map(({ node, state }) => [context.idOf(node), state]));
}

/** @param allowed further findings that may be new */
export function tried(
  before: Assessment,
  kit: Kit,
  fitting: Fitting,
  remedy: Pick<Remedy, 'edits'>,
  allowed: ReadonlySet<string> = new Set(),
): Tried | undefined {
  const applied = applyEdits(before.game, remedy.edits);
  if (!applied.ok) return undefined;
  const next = fitKit(applied.game, kit, {
    teams: fitting.teams,
    pins: fitting.pins,
    haspPins: fitting.haspPins,
    previous: fitting,
  });
  if (next.missing >= fitting.missing) return undefined;
  const after = assess(applied.game);
  if (before.canBeWon && !after.canBeWon) return undefined;
  const known = new Set(before.findings.map(identityOf));
  const isBad = after.findings.some(
    (finding) =>
      !known.has(identityOf(finding)) &&
      (finding.level === 'stops' || !(TOLERATED.has(finding.code) || allowed.has(finding.code))),
  );
  if (isBad) return undefined;
  const states = statesOf(after);
  for (const [lock, state] of statesOf(before)) {
    const now = states.get(lock);
    if (state === 'right' && now !== undefined && now !== 'right' && now !== 'latch') return undefined;
  }
  return { after, fitting: next };
}
