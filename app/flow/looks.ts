/** What the analysis says of each node, as far as it is drawn. */
import { without } from '../../src/engine/without.ts';
import type { Assessment } from '../../src/findings/assess.ts';
import { prizesOn } from '../../src/findings/blame.ts';
import type { Finding, FindingWith } from '../../src/findings/finding.ts';
import type { LinkId, NodeId } from '../../src/game/model.ts';
import { same } from '../../src/map/same.ts';
import type { Heat, LockState, Look, Moment } from './card.ts';

/** What falls when the lifted thing is never found, itself included. */
export function fallenWith({ network }: Assessment, lifted: NodeId | undefined): ReadonlySet<NodeId> {
  const index = lifted === undefined ? undefined : network.index.get(lifted);
  if (index === undefined) return new Set();
  return new Set(without(network, index).map((fallen) => network.ids[fallen] ?? ''));
}

/** The arrows that a finding which stops the game speaks of. */
export function stoppingLinks({ findings }: Assessment): ReadonlySet<LinkId> {
  return new Set(findings.filter(({ level }) => level === 'stops').flatMap(({ links }) => links));
}

export interface LookScene {
  readonly assessment: Assessment;
  readonly heat: ReadonlyMap<NodeId, Heat> | undefined;
  readonly fallen: ReadonlySet<NodeId>;
  /** Steps on the chain that decides the end, while that is shown. */
  readonly chain?: ReadonlySet<NodeId> | undefined;
}

export function looksOf(
  { assessment, heat, fallen, chain }: LookScene,
  before: ReadonlyMap<NodeId, Look>,
): ReadonlyMap<NodeId, Look> {
  const { network, measures, findings } = assessment;
  const stopping = findings.filter(({ level }) => level === 'stops');
  const culprits = new Set(stopping.flatMap(({ nodes }) => nodes.slice(0, 1)));
  const wrong = new Set(
    stopping.flatMap((finding) => (isWrongCode(finding) ? [finding.values.fastener] : [])),
  );
  const costly = costlyLocks(assessment);
  const looks = new Map<NodeId, Look>();
  network.ids.forEach((id, index) => {
    const pale = fallen.has(id);
    looks.set(id, {
      number: pale ? 0 : (measures.number[index] ?? 0),
      state: lockState(assessment, index, pale, fallen.size > 0, wrong, costly),
      culprit: culprits.has(id) && fallen.size === 0,
      pale,
      heat: pale ? undefined : heat?.get(id),
      inChain: !pale && chain?.has(id) === true,
      moment: undefined,
    });
  });
  return kept(looks, before);
}

const atMoments = new WeakMap<Look, WeakMap<Moment, Look>>();

/** The same at a minute of a lesson; the same objects for the same looks and moments, so that only what stands differently is drawn anew. */
export function looksAt(
  looks: ReadonlyMap<NodeId, Look>,
  moments: ReadonlyMap<NodeId, Moment>,
): ReadonlyMap<NodeId, Look> {
  const result = new Map(looks);
  for (const [id, moment] of moments) {
    const look = looks.get(id);
    if (!look) continue;
    const known = atMoments.get(look) ?? new WeakMap<Moment, Look>();
    const at = known.get(moment) ?? { ...look, moment };
    atMoments.set(look, known.set(moment, at));
    result.set(id, at);
  }
  return result;
}

/** What pupils find out does not open the lock. */
type WrongCode = FindingWith<'codeDisagrees' | 'sourcesDisagree' | 'parts'>;

function isWrongCode(finding: Finding): finding is WrongCode {
  return ['codeDisagrees', 'sourcesDisagree', 'parts'].includes(finding.code);
}

/** Locks that are never opened, and at the cost of a prize. */
function costlyLocks({ network, measures, context }: Assessment): ReadonlySet<number> {
  const shut = [...network.ids.keys()].filter(
    (node) => measures.reached[node] !== 1 && context.kindOf(node) === 'fastener',
  );
  const prizes = prizesOn(network, measures.reached, shut);
  return new Set(shut.filter((_, i) => (prizes[i]?.length ?? 0) > 0));
}

function lockState(
  { game, network, measures }: Assessment,
  index: number,
  pale: boolean,
  lifting: boolean,
  wrong: ReadonlySet<NodeId>,
  costly: ReadonlySet<number>,
): LockState | undefined {
  const id = network.ids[index] ?? '';
  if (game.nodes.get(id)?.kind !== 'fastener') return undefined;
  if (pale) return 'staysShut';
  if (lifting) return undefined;
  if (measures.reached[index] === 1) return wrong.has(id) ? 'wrongCode' : undefined;
  return costly.has(index) ? 'cannotOpen' : 'keptShut';
}

/** The same objects as before wherever they say the same. */
function kept(
  fresh: ReadonlyMap<NodeId, Look>,
  before: ReadonlyMap<NodeId, Look>,
): ReadonlyMap<NodeId, Look> {
  const result = new Map<NodeId, Look>();
  let changed = fresh.size !== before.size;
  for (const [id, look] of fresh) {
    const old = before.get(id);
    const keep = old && same(old, look) ? old : look;
    if (keep !== old) changed = true;
    result.set(id, keep);
  }
  return changed ? result : before;
}
