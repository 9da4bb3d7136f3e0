/** What a shape cannot say: ids that are one node's or link's alone, ends and holders that exist, no rings, legal links, estimates in order. */
import { inOrder } from './faults.ts';
import { isObject, type JsonObject } from './json.ts';
import { LEGAL_TARGETS } from './links.ts';
import { type GameLink, isHolder, type NodeId } from './model.ts';
import type { Named, Problem, Where } from './problem.ts';
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

function idProblems(raw: JsonObject, list: 'nodes' | 'links'): Problem[] {
  const firsts = new Map<string, number>();
  const problems: Problem[] = [];
  for (const { index, id } of idsOf(raw, list)) {
    const first = firsts.get(id);
    if (first === undefined) firsts.set(id, index);
    else problems.push({ code: 'idTwice', where: whereIs(raw, [list, index]), first: first + 1 });
  }
  return problems;
}

/** Of the holder or carrier of one node. `broken`: ids of nodes whose shape is wrong, of which nothing more is said. */
function parentProblem(
  node: FileNode,
  nodes: ReadonlyMap<NodeId, FileNode>,
  broken: ReadonlySet<string>,
  where: (field: string) => Where,
): Problem[] {
  const onContainer = node.kind === 'fastener';
  const id = onContainer ? node.on : node.in;
  if (id === undefined || broken.has(id)) return [];
  const holder = nodes.get(id);
  const at = where(onContainer ? 'on' : 'in');
  if (!holder) return [{ code: onContainer ? 'carrierMissing' : 'holderMissing', where: at, id }];
  if (onContainer) {
    return holder.kind === 'container'
      ? []
      : [{ code: 'carrierNoContainer', where: at, holder: named(holder) }];
  }
  return isHolder(holder) ? [] : [{ code: 'holderHoldsNothing', where: at, holder: named(holder) }];
}

/** Every ring of holders once, each lying in the next. */
function ringProblems(nodes: ReadonlyMap<NodeId, FileNode>): Problem[] {
  const problems: Problem[] = [];
  const seen = new Set<NodeId>();
  for (const start of nodes.values()) {
    const path = new Map<NodeId, Named>();
    let node: FileNode | undefined = start;
    while (node && !seen.has(node.id)) {
      seen.add(node.id);
      path.set(node.id, named(node));
      node = node.in === undefined ? undefined : nodes.get(node.in);
    }
    if (!node || !path.has(node.id)) continue;
    const ids = [...path.keys()];
    problems.push({ code: 'holderRing', ring: [...path.values()].slice(ids.indexOf(node.id)) });
  }
  return problems;
}

function linkProblems(
  raw: JsonObject,
  links: readonly Entry<GameLink>[],
  nodes: ReadonlyMap<NodeId, FileNode>,
  broken: ReadonlySet<string>,
): Problem[] {
  const problems: Problem[] = [];
  const targets = new Map<NodeId, Map<NodeId, Where>>();
  for (const { index, value: link } of links) {
    const where = whereIs(raw, ['links', index]);
    const from = nodes.get(link.from);
    const to = nodes.get(link.to);
    for (const end of ['from', 'to'] as const) {
      const id = link[end];
      if (!nodes.has(id) && !broken.has(id)) problems.push({ code: 'endMissing', where, end, id });
    }
    if (!from || !to) continue;
    const known = targets.get(link.from) ?? new Map<NodeId, Where>();
    const first = known.get(link.to);
    if (from === to) problems.push({ code: 'linkToItself', where, node: named(from) });
    else if (!LEGAL_TARGETS[from.kind].includes(to.kind)) {
      problems.push({ code: 'linkKinds', where, from: named(from), to: named(to) });
    } else if (first) {
      problems.push({ code: 'linkTwice', where, first, from: named(from), to: named(to) });
    }
    targets.set(link.from, known.set(link.to, first ?? where));
  }
  return problems;
}

export function checkStructure(
  raw: JsonObject,
  nodeEntries: readonly Entry<FileNode>[],
  linkEntries: readonly Entry<GameLink>[],
): Problem[] {
  const nodes = new Map(nodeEntries.map(({ value }) => [value.id, value]));
  const broken = new Set(
    idsOf(raw, 'nodes')
      .map(({ id }) => id)
      .filter((id) => !nodes.has(id)),
  );
  const ofNodes = nodeEntries.flatMap(({ index, value: node }): Problem[] => {
    const where = (field: string) => whereIs(raw, ['nodes', index, field]);
    const { minutes } = node;
    const estimates: Problem[] =
      minutes && !inOrder(minutes)
        ? [
            {
              code: 'estimates',
              where: where('minutes'),
              low: minutes.low,
              likely: minutes.likely,
              high: minutes.high,
            },
          ]
        : [];
    return [...parentProblem(node, nodes, broken, where), ...estimates];
  });
  return [
    ...idProblems(raw, 'nodes'),
    ...idProblems(raw, 'links'),
    ...ofNodes,
    ...ringProblems(nodes),
    ...linkProblems(raw, linkEntries, nodes, broken),
  ];
}
