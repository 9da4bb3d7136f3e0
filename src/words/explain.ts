/** Why a thing is reached ('opens because … because …'), and why it is not. */
import type { Reason } from '../engine/measures.ts';
import type { Assessment } from '../findings/assess.ts';
import type { Kind, NodeId } from '../game/model.ts';
import { findingHeadline } from './findings/index.ts';
import { capital, type Say, sayer, sentence } from './say.ts';
import type { Part, Sentence } from './sentence.ts';

/** So many links of a chain of reasons are told. */
const MOST = 5;

const BECOMES: Readonly<Record<Kind, string>> = {
  place: 'can be searched',
  container: 'opens',
  fastener: 'opens',
  key: 'can be had',
  clue: 'can be read',
  tool: 'can be had',
  puzzle: 'can be solved',
  prize: 'can be had',
};

/** "the team has A and B", "C is solved", "D and E are open". */
function isSo(say: Say, kind: Kind, ids: readonly NodeId[]): Sentence {
  const names = say.names(ids);
  switch (kind) {
    case 'container':
    case 'fastener':
      return sentence(names, ids.length === 1 ? ' is open' : ' are open');
    case 'puzzle':
      return sentence(names, ids.length === 1 ? ' is solved' : ' are solved');
    case 'place':
      return sentence('the team has found ', names);
    case 'key':
    case 'clue':
    case 'tool':
    case 'prize':
      return sentence('the team has ', names);
  }
}

/** One or two sentences; about what is not used today, only that. */
export function explanation(assessment: Assessment, id: NodeId): Sentence[] {
  const say = sayer(assessment.game);
  const index = assessment.network.index.get(id);
  if (index === undefined) {
    return assessment.game.nodes.has(id) ? [sentence(capital(say.the(id)), ' is not used today.')] : [];
  }
  return assessment.measures.reached[index] === 1
    ? whyReached(assessment, say, index)
    : [whyNot(assessment, say, index)];
}

function whyReached(assessment: Assessment, say: Say, index: number): Sentence[] {
  const { context } = assessment;
  const first = context.proofs().reason(index);
  if (!first) return [];
  const subject = capital(say.the(context.idOf(index)));
  const grounds = groundsText(assessment, say, first);
  const becomes = ` ${BECOMES[context.kindOf(index)]}`;
  if (grounds.length === 0) return [sentence(subject, becomes, startText(assessment, index), '.')];
  const chain = chainText(assessment, say, index);
  const main = sentence(subject, becomes, ' because ', grounds, '.');
  return chain.length === 0 ? [main] : [main, chain];
}

/** "the team has A and B and C is solved": everything that its earliest proof uses directly. */
function groundsText({ context }: Assessment, say: Say, reason: Reason): Sentence {
  const groups = new Map<Kind, NodeId[]>();
  for (const node of reason.because) {
    const kind = context.kindOf(node);
    const group = groups.get(kind);
    if (group) group.push(context.idOf(node));
    else groups.set(kind, [context.idOf(node)]);
  }
  const grounds = [...groups].map(([kind, ids]) => isSo(say, kind, ids));
  if (reason.atHand >= 0 && grounds.length === 0) {
    grounds.push(sentence('the team has ', say.name(context.idOf(reason.atHand))));
  }
  return sentence(...grounds.flatMap((ground, i) => [i === 0 ? '' : ' and ', ground]));
}

/** What a thing waited for last, locks told as their boxes: for a box what its last lock waited for, or what brought the box. */
function lastBefore({ context }: Assessment, node: number): number | undefined {
  const proofs = context.proofs();
  const last = (reason: Reason | undefined): number | undefined => reason?.last[0] ?? reason?.because[0];
  let before = last(proofs.reason(node));
  const lock = context.kindOf(node) === 'fastener' ? node : before;
  const isOwnLock = lock !== undefined && context.kindOf(lock) === 'fastener';
  const box = isOwnLock ? context.network.parent[lock] : undefined;
  if (isOwnLock && box === node) before = last(proofs.reason(lock)) ?? box;
  return before !== undefined && before === box ? last(proofs.atHandReason(before)) : before;
}

/** Back along what was waited for last: "A is open because B is solved, because the team has C." */
function chainText(assessment: Assessment, say: Say, from: number): Sentence {
  const { context } = assessment;
  const ids: number[] = [];
  for (
    let node = lastBefore(assessment, from);
    node !== undefined && !ids.includes(node) && ids.length <= MOST;
    node = lastBefore(assessment, node)
  ) {
    ids.push(node);
  }
  if (ids.length < 2) return [];
  const pieces = ids
    .slice(0, MOST)
    .flatMap((node, i): (Part | Sentence)[] => [
      i === 0 ? '' : i === 1 ? ' because ' : ', because ',
      isSo(say, context.kindOf(node), [context.idOf(node)]),
    ]);
  return capital(sentence(...pieces, ids.length > MOST ? ', and so on back to the start.' : '.'));
}

function startText({ network }: Assessment, index: number): string {
  const minute = network.atMinute[index] ?? 0;
  return minute > 0 ? ` from minute ${Math.round(minute * 10) / 10} on` : ' from the start';
}

function whyNot(assessment: Assessment, say: Say, index: number): Sentence {
  const { context, findings, game } = assessment;
  const name = sentence(capital(say.the(context.idOf(index))), ' is never reached.');
  const root = context.blockage(index);
  if (!root) return name;
  const causes = (root.cause === 'ring' ? root.nodes : [root.node]).map(context.idOf);
  const code = { ring: 'ring', closed: 'nothingOpens', missing: 'needTooLarge' }[root.cause];
  const finding = findings.find(
    (one) => one.code === code && one.nodes.some((node) => causes.includes(node)),
  );
  return finding ? sentence(name, ' ', findingHeadline(game, finding)) : name;
}
