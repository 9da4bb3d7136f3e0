/**
 * What to do about a shortage, the most sensible first. Each remedy but `buy` is tried (trial.ts): it is offered where the game that comes of it is as
 * sound as before and lacks less. The order, and of each rank what was tried first:
 *   0 another lock with the code as it is    1 sharing that costs less than CHEAP minutes    2 another lock with another code
 *   3 sharing that costs more                4 the teacher in place of the thing             5 left out today    6 to buy
 * Another lock: only one of which there are enough for all copies; first those that need least of what they can do, and with a new code those that leave it as long as it was.
 * Cost: an assessment and a fitting for each attempt, counted; a simulation of 200 lessons for sharing. Asked when a shortage is looked at.
 */
import { fastenerType } from '../../fasteners/index.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { Fresh } from '../../findings/finding.ts';
import type { NodeId } from '../../game/model.ts';
import { leftOutWith } from '../../helps/leave-out.ts';
import { lockWaste } from '../fit/costs.ts';
import type { Fitting } from '../fit/index.ts';
import { symbolsFor } from '../fit/suits.ts';
import type { Kit } from '../model.ts';
import { needsOf } from '../needs.ts';
import { buy } from './buy.ts';
import { type FreeLock, freeLocks } from './free.ts';
import { codeForKey, otherCode, otherLock } from './other-lock.ts';
import type { Remedy, RemedyCode, Shortage } from './remedy.ts';
import { containerOf, minutesMore, share } from './share.ts';
import { type Spots, spotsIn } from './spots.ts';
import { boxStandIn, haspLocks, lend, lockStandIn } from './stand-in.ts';
import { tried } from './trial.ts';

export {
  noted,
  type Remedy,
  type RemedyCode,
  type RemedyValues,
  type RemedyWith,
  type Shortage,
  shortagesOf,
} from './remedy.ts';

/** Minutes that sharing may cost before another lock is the better way. Own rule. */
const CHEAP = 2;
/** Of one code so many are offered. */
const MOST_OF_A_CODE: Readonly<Record<RemedyCode, number>> = {
  otherLock: 2,
  otherCode: 2,
  codeForKey: 1,
  share: 1,
  standIn: 2,
  lend: 1,
  leaveOut: 2,
  buy: 1,
};
/** Locks of the cupboard that are tried for one that is short. */
const LOCKS_TRIED = 8;

/** Another lock on the fastener, which is then no longer short. */
const CHANGES_LOCK: ReadonlySet<RemedyCode> = new Set<RemedyCode>(['otherLock', 'otherCode', 'codeForKey']);
const WITH_FREE_BOX: ReadonlySet<string> = new Set(['givenAway']);

function* attempts(
  assessment: Assessment,
  kit: Kit,
  fitting: Fitting,
  shortage: Shortage,
  fresh: Fresh,
): Generator<Remedy> {
  const { game } = assessment;
  const spots: Spots = spotsIn(game);
  const needs = needsOf(game, fitting.teams);
  const need =
    shortage.part === 'lock' ? needs.locks.find(({ node }) => node.id === shortage.node) : undefined;
  if (need) {
    const symbols = symbolsFor(game, need);
    const locks = freeLocks(kit, fitting)
      .sort((a, b) => lockWaste(a.item, symbols) - lockWaste(b.item, symbols))
      .slice(0, LOCKS_TRIED);
    for (const { item } of locks) {
      const as = otherLock(game, need, item);
      if (as) yield as;
    }
    // A code that stays as long as it was is as good as the one before; of a longer one a part is lost.
    const isShorter = ({ item }: FreeLock) =>
      (fastenerType(item.type).length(item) ?? Number.POSITIVE_INFINITY) < (symbols?.length ?? 0) ? 1 : 0;
    for (const { item } of [...locks].sort((a, b) => isShorter(a) - isShorter(b))) {
      const as =
        need.type === 'key'
          ? codeForKey(game, need, item, fresh, spots)
          : otherCode(game, need, item, fresh, spots);
      if (as) yield as;
    }
  }
  const shared = share(assessment, shortage, fitting.teams);
  if (shared) yield shared;
  const container = containerOf(assessment, shortage);
  if (need) yield lockStandIn(game, need.node);
  if (shortage.part === 'hasp' && container !== undefined) {
    for (const lock of haspLocks(game, container)) yield lockStandIn(game, lock);
  }
  if (shortage.part === 'tool') yield lend(game, shortage.node);
  if (shortage.part === 'box') yield boxStandIn(game, shortage.node, fresh.newId);
  yield* leftOut(assessment, shortage, container);
  const line = buy(game, kit, needs, shortage, fresh.newId);
  if (line) yield line;
}

/** The thing itself, a lock of those on the hasp, and the box. */
function* leftOut(
  assessment: Assessment,
  { node, part }: Shortage,
  container: NodeId | undefined,
): Generator<Remedy> {
  const things = new Set<NodeId>(
    part === 'hasp' ? haspLocks(assessment.game, node).map(({ id }) => id) : [node],
  );
  if (container !== undefined) things.add(container);
  for (const thing of things) {
    const others = leftOutWith(assessment, thing);
    if (!others) continue;
    yield {
      code: 'leaveOut',
      values: { thing, others },
      edits: [{ type: 'leaveOut', ids: [thing, ...others], leftOut: true }],
    };
  }
}

function rankOf(remedy: Remedy): number {
  switch (remedy.code) {
    case 'otherLock':
      return 0;
    case 'share':
      return (remedy.values.minutes ?? 0) < CHEAP ? 1 : 3;
    case 'otherCode':
    case 'codeForKey':
      return 2;
    case 'standIn':
    case 'lend':
      return 4;
    case 'leaveOut':
      return 5;
    case 'buy':
      return 6;
  }
}

/** A box that another lock still shuts gives nothing away. */
function isStillShut(
  assessment: Assessment,
  { values: { thing } }: Remedy & { readonly code: 'leaveOut' },
): boolean {
  const { game } = assessment;
  const lock = game.nodes.get(thing);
  return lock?.kind === 'fastener' && haspLocks(game, lock.on).length > 1;
}

/** The lock is no longer short, and no other is more so. */
function isSettled(before: Fitting, { short }: Fitting, lock: NodeId): boolean {
  if (short.has(lock)) return false;
  return [...short].every(([node, missing]) => missing <= (before.short.get(node) ?? 0));
}

/** @param fitting of the assessment's game and the kit */
export function remediesFor(
  assessment: Assessment,
  kit: Kit,
  fitting: Fitting,
  shortage: Shortage,
  fresh: Fresh,
): Remedy[] {
  const counts = new Map<RemedyCode, number>();
  const remedies: Remedy[] = [];
  for (const remedy of attempts(assessment, kit, fitting, shortage, fresh)) {
    const count = counts.get(remedy.code) ?? 0;
    if (count >= MOST_OF_A_CODE[remedy.code]) continue;
    let offered = remedy;
    if (remedy.code !== 'buy') {
      const allowed =
        remedy.code === 'leaveOut' && isStillShut(assessment, remedy) ? WITH_FREE_BOX : undefined;
      const trial = tried(assessment, kit, fitting, remedy, allowed);
      if (!trial) continue;
      // With too few of the other lock as well, its code would be changed for nothing.
      if (CHANGES_LOCK.has(remedy.code) && !isSettled(fitting, trial.fitting, shortage.node)) continue;
      if (remedy.code === 'share') {
        const minutes = minutesMore(assessment, trial.after);
        offered = { ...remedy, values: { ...remedy.values, minutes } };
      }
    }
    counts.set(remedy.code, count + 1);
    remedies.push(offered);
  }
  return remedies
    .map((remedy, place) => ({ remedy, rank: rankOf(remedy), place }))
    .sort((a, b) => a.rank - b.rank || a.place - b.place)
    .map(({ remedy }) => remedy);
}
