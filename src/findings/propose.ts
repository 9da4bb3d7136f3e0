/**
 * Proposals for a finding, each of them tried: the edits are applied and the game that results is assessed. Only what settles its
 * finding and stops the game in no new way is offered; what is only worth a look is not traded for something else that is. Costs an assessment for each attempt, so it runs when a finding is shown.
 */
import { applyEdits } from '../game/edits/index.ts';
import type { Game } from '../game/model.ts';
import { type Assessment, assess } from './assess.ts';
import { type Finding, type Fresh, identityOf } from './finding.ts';
import { RULES } from './index.ts';
import type { Proposal } from './proposal.ts';

/** So many are offered at most, and so many tried. */
const OFFERED = 3;
const TRIED = 12;

function stopping(assessment: Assessment): Set<string> {
  return new Set(assessment.findings.filter(({ level }) => level === 'stops').map(identityOf));
}

function settles(before: Assessment, finding: Finding, proposal: Proposal): boolean {
  const applied = applyEdits(before.game, proposal.edits);
  if (!applied.ok) return false;
  const after = assess(applied.game, before.context.words);
  const identity = identityOf(finding);
  if (after.findings.some((other) => identityOf(other) === identity)) return false;
  if (finding.level === 'look') {
    const told = new Set(before.findings.map(identityOf));
    if (!after.findings.every((other) => told.has(identityOf(other)))) return false;
  }
  const stopsBefore = stopping(before);
  return [...stopping(after)].every((other) => stopsBefore.has(other));
}

/** One box and one hiding place to put a thing in are enough; of new codes there may be several; else a further proposal does something else. */
function wayOf(game: Game, proposal: Proposal): string {
  if (proposal.code === 'newCode') return `${proposal.code} ${proposal.values.code}`;
  if (proposal.code !== 'putIn') return proposal.code;
  return `${proposal.code} ${game.nodes.get(proposal.values.holder)?.kind}`;
}

/** The most sensible first; empty when nothing mechanical helps. */
export function proposalsFor(assessment: Assessment, finding: Finding, fresh: Fresh): Proposal[] {
  const rule = RULES.find(({ code }) => code === finding.code);
  if (!rule) return [];
  const proposals: Proposal[] = [];
  const ways = new Set<string>();
  let tried = 0;
  for (const proposal of rule.mends(assessment.context, finding, fresh)) {
    const way = wayOf(assessment.game, proposal);
    if (ways.has(way)) continue;
    if (proposals.length >= OFFERED || tried >= TRIED) break;
    tried += 1;
    if (!settles(assessment, finding, proposal)) continue;
    proposals.push(proposal);
    ways.add(way);
  }
  return proposals;
}
