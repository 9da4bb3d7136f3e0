/** What the analysis says of each node, as far as it is drawn. */
import { stopsTheGame } from '../../src/engine/stops.ts';
import { onlyWith } from '../../src/engine/ties.ts';
import { without } from '../../src/engine/without.ts';
import type { Assessment } from '../../src/findings/assess.ts';
import type { LinkId, NodeId } from '../../src/game/model.ts';
import { same } from '../../src/map/same.ts';
import { HEAT } from '../../src/words/canvas.ts';
import type { Heat, LockState, Look } from './card.ts';
import { scaleEnd } from './scale.ts';

/** Below this a step adds nothing that could be told. */
const NOTHING = 1e-6;

/** The right end of the time overlay's scale in minutes; undefined when no step adds anything. */
export function heatEndOf({ measures }: Assessment): number | undefined {
  const most = measures.drag.reduce((a, b) => Math.max(a, b), 0);
  return measures.solvable && most > NOTHING ? scaleEnd(most) : undefined;
}

/** The tint of every step that adds to the end, and of those that tie. */
export function heatOf({ network, measures }: Assessment): ReadonlyMap<NodeId, Heat> {
  const heat = new Map<NodeId, Heat>();
  if (!measures.solvable) return heat;
  const end = scaleEnd(measures.drag.reduce((a, b) => Math.max(a, b), NOTHING));
  network.ids.forEach((id, index) => {
    const drag = measures.drag[index] ?? 0;
    if (drag > NOTHING) heat.set(id, { share: drag / end, text: HEAT.minutes(drag) });
    else if (measures.tied[index] === 1) {
      const others = onlyWith(network, measures, index).map((other) => measures.number[other] ?? 0);
      heat.set(id, { share: undefined, text: HEAT.onlyWith(others.toSorted((a, b) => a - b)) });
    }
  });
  return heat;
}

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
}

export function looksOf(
  { assessment, heat, fallen }: LookScene,
  before: ReadonlyMap<NodeId, Look>,
): ReadonlyMap<NodeId, Look> {
  const { network, measures, findings } = assessment;
  const culprits = new Set(
    findings.filter(({ level }) => level === 'stops').flatMap(({ nodes }) => nodes.slice(0, 1)),
  );
  const looks = new Map<NodeId, Look>();
  network.ids.forEach((id, index) => {
    const pale = fallen.has(id);
    looks.set(id, {
      number: pale ? 0 : (measures.number[index] ?? 0),
      state: lockState(assessment, index, pale, fallen.size > 0),
      culprit: culprits.has(id) && fallen.size === 0,
      pale,
      heat: heat?.get(id),
    });
  });
  return kept(looks, before);
}

function lockState(
  { game, network, measures }: Assessment,
  index: number,
  pale: boolean,
  lifting: boolean,
): LockState | undefined {
  const node = game.nodes.get(network.ids[index] ?? '');
  if (node?.kind !== 'fastener') return undefined;
  if (pale) return 'staysShut';
  if (lifting || node.leftOut === true || measures.reached[index] === 1) return undefined;
  return stopsTheGame(network, index) ? 'cannotOpen' : 'keptShut';
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
