/** Where in a form a finding is told: beside what it is about, else at its head. */

import { fastenerType } from '../../src/fasteners/index.ts';
import type { Finding } from '../../src/findings/finding.ts';
import type { GameNode } from '../../src/game/model.ts';

export type Subject = 'code' | 'guess' | 'chance';

const ABOUT: ReadonlyMap<string, Subject> = new Map([
  ['codeDisagrees', 'code'],
  ['sourcesDisagree', 'code'],
  ['parts', 'code'],
  ['codeDoesNotFit', 'code'],
  ['weakCode', 'code'],
  ['codeUnknown', 'code'],
  ['sameCode', 'code'],
  ['opensAnother', 'code'],
  ['easilyGuessed', 'guess'],
  ['keyOpensSeveral', 'guess'],
  ['foundByChance', 'chance'],
]);

export function subjectOf({ code }: Pick<Finding, 'code'>): Subject | undefined {
  return ABOUT.get(code);
}

/** A key lock or a latch has no code to show, unless the file gives it one. */
export function showsCode(node: GameNode): boolean {
  if (node.kind === 'puzzle' || node.kind === 'clue') return true;
  if (node.kind !== 'fastener') return false;
  const { opensWith } = fastenerType(node.type);
  return node.code !== undefined || (opensWith !== 'key' && opensWith !== 'nothing');
}

/** What the form of this node has a place for. */
export function subjectsOf(node: GameNode): readonly Subject[] {
  const code: readonly Subject[] = showsCode(node) ? ['code'] : [];
  if (node.kind === 'fastener') return [...code, 'guess'];
  return node.kind === 'place' ? ['chance'] : code;
}
