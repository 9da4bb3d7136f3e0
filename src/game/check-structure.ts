/** What a shape cannot say: ids that are one node's or link's alone, ends and holders that exist, no rings, legal links, estimates in order. */
import { inOrder } from './faults.ts';
import { isObject, type JsonObject } from './json.ts';
import { LEGAL_TARGETS } from './links.ts';
import { type GameLink, isHolder, type NodeId } from './model.ts';
import type { Named, Where } from './problem.ts';
import type { ProblemList } from './problem-list.ts';
import type { FileNode } from './schema.ts';
import { whereIs } from './shape-problems.ts';

/** A node or link of the right shape, and its place in the file's list, from 0. */
export interface Entry<T> {
  readonly index: number;
  readonly value: T;
}

function named({ id, name, kind }: FileNode): Named {
  return { id, name, kind };
}

/** Also those of the wrong shape: what points to them points to something. */
function idsOf(raw: JsonObject, list: 'nodes' | 'links'): { readonly index: number; readonly id: string }[] {
  const members: unknown = raw[list];
  if (!Array.isArray(members)) return [];
  return members.flatMap((member: unknown, index) => {
    if (!isObject(member)) return [];
    const { id } = member;
    return typeof id === 'string' ? [{ index, id }] : [];
  });
}

function checkIds(raw: JsonObject, list: 'nodes' | 'links', problems: ProblemList): void {
  const firsts = new Map<string, number>();
  for (const { index, id } of idsOf(raw, list)) {
    const first = firsts.get(id);
    if (first === undefined) firsts.set(id, index);
    else problems.add(() => ({ code: 'idTwice', where: whereIs(raw, [list, index]), first: first + 1 }));
  }
}

/** Nodes of the right shape by id, and the ids of those of the wrong shape, of which nothing more is said. */
interface Known {
  readonly nodes: ReadonlyMap<NodeId, FileNode>;
  readonly broken: ReadonlySet<string>;
}

/** The holder of a thing, or the carrier of a fastener. */
function checkParent(node: FileNode, { nodes, broken }: Known, at: () => Where, problems: ProblemList): void {
  const isFastener = node.kind === 'fastener';
  const id = isFastener ? node.on : node.in;
  if (id === undefined || broken.has(id)) return;
  const holder = nodes.get(id);
  if (!holder) {
    problems.add(() => ({ code: isFastener ? 'carrierMissing' : 'holderMissing', where: at(), id }));
  } else if (isFastener ? holder.kind !== 'container' : !isHolder(holder)) {
    problems.add(() => ({
      code: isFastener ? 'carrierNoContainer' : 'holderHoldsNothing',
      where: at(),
      holder: named(holder),
    }));
  }
}

/** Every ring of holders once, each lying in the next. */
function checkRings({ nodes }: Known, problems: ProblemList): void {
  const seen = new Set<NodeId>();
  for (const start of nodes.values()) {
    const path = new Map<NodeId, FileNode>();
    let node: FileNode | undefined = start;
    while (node && !seen.has(node.id)) {
      seen.add(node.id);
      path.set(node.id, node);
      node = node.in === undefined ? undefined : nodes.get(node.in);
    }
    if (!node || !path.has(node.id)) continue;
    const first = [...path.keys()].indexOf(node.id);
    problems.add(() => ({ code: 'holderRing', ring: [...path.values()].slice(first).map(named) }));
  }
}

function checkLinks(
  raw: JsonObject,
  links: readonly Entry<GameLink>[],
  { nodes, broken }: Known,
  problems: ProblemList,
): void {
  /** For each start, the place in the file of the first link to each end. */
  const firsts = new Map<NodeId, Map<NodeId, number>>();
  for (const { index, value: link } of links) {
    const where = (at = index) => whereIs(raw, ['links', at]);
    const from = nodes.get(link.from);
    const to = nodes.get(link.to);
    for (const end of ['from', 'to'] as const) {
      const id = link[end];
      if (!nodes.has(id) && !broken.has(id)) {
        problems.add(() => ({ code: 'endMissing', where: where(), end, id }));
      }
    }
    if (!from || !to) continue;
    const known = firsts.get(link.from) ?? new Map<NodeId, number>();
    const first = known.get(link.to);
    if (from === to) problems.add(() => ({ code: 'linkToItself', where: where(), node: named(from) }));
    else if (!LEGAL_TARGETS[from.kind].includes(to.kind)) {
      problems.add(() => ({ code: 'linkKinds', where: where(), from: named(from), to: named(to) }));
    } else if (first !== undefined) {
      problems.add(() => ({
        code: 'linkTwice',
        where: where(),
        first: where(first),
        from: named(from),
        to: named(to),
      }));
    }
    firsts.set(link.from, known.set(link.to, first ?? index));
  }
}

export function checkStructure(
  raw: JsonObject,
  nodeEntries: readonly Entry<FileNode>[],
  linkEntries: readonly Entry<GameLink>[],
  problems: ProblemList,
): void {
  const nodes = new Map(nodeEntries.map(({ value }) => [value.id, value]));
  const ids = idsOf(raw, 'nodes').map(({ id }) => id);
  const known = { nodes, broken: new Set(ids.filter((id) => !nodes.has(id))) };
  checkIds(raw, 'nodes', problems);
  checkIds(raw, 'links', problems);
  for (const { index, value: node } of nodeEntries) {
    const at = (field: string) => whereIs(raw, ['nodes', index, field]);
    checkParent(node, known, () => at(node.kind === 'fastener' ? 'on' : 'in'), problems);
    const { minutes } = node;
    if (!minutes || inOrder(minutes)) continue;
    const { low, likely, high } = minutes;
    problems.add(() => ({ code: 'estimates', where: at('minutes'), low, likely, high }));
  }
  checkRings(known, problems);
  checkLinks(raw, linkEntries, known, problems);
}
