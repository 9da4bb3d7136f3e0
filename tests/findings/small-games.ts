/** A small game that can be won, and changes to it: what the tests of the findings start from. */
import { expect } from 'vitest';
import { type Assessment, assess } from '../../src/findings/assess.ts';
import type { Finding, FindingCode, FindingWith, Fresh } from '../../src/findings/finding.ts';
import type { Proposal, ProposalCode } from '../../src/findings/proposal.ts';
import { proposalsFor } from '../../src/findings/propose.ts';
import type { Edit } from '../../src/game/edits/edit.ts';
import { applyEdits, applyPatchesTo } from '../../src/game/edits/index.ts';
import type { Game, Kind, NodeId } from '../../src/game/model.ts';
import { gameOf, type NodeDraft } from '../game-of.ts';

/** A note on the shelf gives the puzzle, its answer opens the tin, the key in it opens the chest with the prize. */
export const WINNABLE: readonly NodeDraft[] = [
  { id: 'shelf', kind: 'place' },
  { id: 'note', kind: 'clue', in: 'shelf' },
  { id: 'sums', kind: 'puzzle', answer: '472' },
  { id: 'tin', kind: 'container' },
  { id: 'wheels', kind: 'fastener', on: 'tin', name: 'Lock', type: 'number', code: '472' },
  { id: 'tag', kind: 'key', in: 'tin' },
  { id: 'chest', kind: 'container' },
  { id: 'padlock', kind: 'fastener', on: 'chest', name: 'Lock', type: 'key' },
  { id: 'map', kind: 'prize', in: 'chest' },
];
export const WINNABLE_LINKS = ['note>sums', 'sums>wheels', 'tag>padlock'];

/** Fields of a node; undefined takes one away. */
export interface Change {
  readonly id: NodeId;
  readonly kind: Kind;
  readonly [field: string]: unknown;
}

function changed(base: NodeDraft | undefined, { id, kind, ...fields }: Change): NodeDraft {
  const all = Object.entries({ ...base, ...fields }).filter(([, value]) => value !== undefined);
  return { ...Object.fromEntries(all), id, kind };
}

/** The small game with some nodes changed or added by id, and links added or (with a leading '-') dropped. */
export function winnable(changes: readonly Change[] = [], links: readonly string[] = []): Game {
  const byId = new Map(WINNABLE.map((node) => [node.id, node]));
  for (const change of changes) byId.set(change.id, changed(byId.get(change.id), change));
  const dropped = new Set(links.filter((link) => link.startsWith('-')).map((link) => link.slice(1)));
  const added = links.filter((link) => !link.startsWith('-'));
  return gameOf([...byId.values()], [...WINNABLE_LINKS.filter((link) => !dropped.has(link)), ...added]);
}

export function freshIds(): Fresh {
  let count = 0;
  return {
    newId: () => {
      count += 1;
      return `fresh-${count}`;
    },
    nameOf: (kind) => `New ${kind}`,
  };
}

export function codesIn(game: Game): FindingCode[] {
  return assess(game).findings.map(({ code }) => code);
}

function hasCode<C extends FindingCode>(finding: Finding, code: C): finding is FindingWith<C> {
  return finding.code === code;
}

/** The only finding of this code. */
export function only<C extends FindingCode>(assessment: Assessment, code: C): FindingWith<C> {
  const found = assessment.findings.filter((finding): finding is FindingWith<C> => hasCode(finding, code));
  const [first, ...more] = found;
  if (!first || more.length > 0) {
    throw new Error(
      `${found.length} findings of ${code}, among ${assessment.findings.map((one) => one.code)}`,
    );
  }
  return first;
}

export function offered(game: Game, code: FindingCode): Proposal[] {
  const assessment = assess(game);
  return proposalsFor(assessment, only(assessment, code), freshIds());
}

export function edited(game: Game, edits: readonly Edit[]): Game {
  const applied = applyEdits(game, edits);
  if (!applied.ok) throw new Error(`refused: ${JSON.stringify(applied.refusal)}`);
  expect(applyPatchesTo(applied.game, applied.inverse)).toEqual(game);
  return applied.game;
}

/** Takes the proposal of this code, and sees that undo would bring the game back. */
export function mended(game: Game, code: FindingCode, by: ProposalCode): Game {
  const proposals = offered(game, code);
  const proposal = proposals.find((one) => one.code === by);
  if (!proposal) throw new Error(`${by} is not among ${proposals.map((one) => one.code)}`);
  return edited(game, proposal.edits);
}
