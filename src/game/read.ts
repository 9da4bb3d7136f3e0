/** From the text of a file to a game, or to a list of what is wrong and where. Nothing in a file is ever executed, and nothing throws. */
import * as z from 'zod/mini';
import { isKnownType } from '../fasteners/index.ts';
import { checkStructure, type Entry } from './check-structure.ts';
import { isObject, type JsonObject, MAX_DEPTH, MAX_LIST } from './json.ts';
import type { GameDocument, GameLink, GameNode, NodeId, Point } from './model.ts';
import type { Named, Note, Problem } from './problem.ts';
import { ProblemList } from './problem-list.ts';
import { FORMAT, fileFrame, fileLink, fileNode, VERSION } from './schema.ts';
import { addShapeProblems, whereIs } from './shape-problems.ts';
import { tidyJson } from './tidy-json.ts';

/**
 * In UTF-16 units. A game of 3,000 nodes takes about 1,000,000, so this leaves room for texts and pictures that later parts
 * put into a file, and is still parsed in well under a second. Larger text is refused before it is looked at.
 */
export const MAX_LENGTH = 20_000_000;

export interface ReadOptions {
  /** Gives an id to a game that comes without one. */
  readonly newId: () => string;
}

export type ReadResult =
  | { readonly ok: true; readonly document: GameDocument; readonly notes: readonly Note[] }
  /** `more`: how many further problems there are than those listed; above some thousands they are no longer looked for. */
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly more: number };

function refused(...problems: readonly Problem[]): ReadResult {
  return { ok: false, problems, more: 0 };
}

function parse(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

/** What tells a game of this version from everything else. */
function frameProblem(raw: unknown): { readonly raw: JsonObject } | Problem {
  if (!isObject(raw)) return { code: 'otherJson' };
  const { format, version } = raw;
  if (format !== FORMAT) return { code: 'otherJson' };
  // Larger than any number is no version at all, and is told as such.
  return typeof version === 'number' && Number.isFinite(version) && version > VERSION
    ? { code: 'newerVersion', version, known: VERSION }
    : { raw };
}

/** The members of a list that have the right shape, each with its place in the file. */
function entries<S extends z.ZodMiniType>(
  raw: JsonObject,
  list: 'nodes' | 'links',
  shape: S,
  problems: ProblemList,
): Entry<z.output<S>>[] {
  const members: unknown = raw[list];
  if (!Array.isArray(members)) return [];
  const right: Entry<z.output<S>>[] = [];
  for (const [index, member] of members.entries()) {
    if (problems.isEnough) break;
    const parsed = z.safeParse(shape, member);
    if (parsed.success) right.push({ index, value: parsed.data });
    else addShapeProblems(raw, parsed.error.issues, [list, index], problems);
  }
  return right;
}

function unknownTypes(nodes: Iterable<GameNode>): Note[] {
  const byType = new Map<string, Named[]>();
  for (const node of nodes) {
    if (node.kind !== 'fastener' || node.type === undefined || isKnownType(node.type)) continue;
    const named = byType.get(node.type) ?? [];
    named.push({ id: node.id, name: node.name, kind: node.kind });
    byType.set(node.type, named);
  }
  return Array.from(byType, ([type, named]) => ({ code: 'unknownType', type, nodes: named }));
}

/**
 * Reads a game. Fields that this version does not know are kept at every level; absent ones stay absent.
 * Ids of a node and of a link may be the same: they are looked up apart.
 */
export function readGame(text: string, { newId }: ReadOptions): ReadResult {
  if (text.length > MAX_LENGTH) {
    return refused({ code: 'tooLarge', length: text.length, limit: MAX_LENGTH });
  }
  /** Some editors put a byte order mark first, which JSON does not allow. */
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const parsed = parse(body);
  if (!parsed) return refused({ code: 'notJson', empty: body.trim() === '' });
  const tidied = tidyJson(parsed.value, { depth: MAX_DEPTH, list: MAX_LIST });
  if (tidied.tooDeep) return refused({ code: 'tooDeep', limit: MAX_DEPTH });
  const checked = frameProblem(parsed.value);
  if ('code' in checked) return refused(checked);
  const { raw } = checked;

  const [long] = tidied.tooLong;
  if (long) {
    const { path, length } = long;
    return refused({ code: 'tooLong', where: whereIs(raw, path), length, limit: MAX_LIST });
  }
  const problems = new ProblemList();
  for (const path of tidied.notFinite) {
    problems.add(() => ({ code: 'notFinite', where: whereIs(raw, path) }));
  }
  const frame = z.safeParse(fileFrame, raw);
  if (!frame.success) addShapeProblems(raw, frame.error.issues, [], problems);
  const nodeEntries = entries(raw, 'nodes', fileNode, problems);
  const linkEntries = entries(raw, 'links', fileLink, problems);
  /** Without a list of nodes, arrows and holders have nothing that they could be held against. */
  if (!problems.isEnough && Array.isArray(raw['nodes']))
    checkStructure(raw, nodeEntries, linkEntries, problems);
  if (!frame.success || !problems.isEmpty) {
    return { ok: false, problems: problems.listed, more: problems.more };
  }

  const { format: _f, version: _v, nodes: _n, links: _l, id, revision, basedOn, ...head } = frame.data;
  const nodes = new Map<NodeId, GameNode>();
  const positions = new Map<NodeId, Point>();
  for (const { value } of nodeEntries) {
    const { at, ...node } = value;
    nodes.set(node.id, node);
    if (at) positions.set(node.id, at);
  }
  const links = new Map<string, GameLink>(linkEntries.map(({ value }) => [value.id, value]));
  const notes = unknownTypes(nodes.values());
  const [first] = tidied.dropped;
  if (first) {
    notes.unshift({ code: 'keysDropped', count: tidied.dropped.length, first: whereIs(raw, first) });
  }
  const provenance = {
    id: id ?? newId(),
    revision: revision ?? 0,
    ...(basedOn === undefined ? {} : { basedOn }),
  };
  return { ok: true, document: { provenance, game: { head, nodes, links, positions } }, notes };
}
