/**
 * Rings in a directed graph given by a function: strongly connected components (Tarjan 1972, 'Depth-first search and linear
 * graph algorithms'), and a shortest ring in one of them, breadth first. Cost: linear; a shortest ring: members times edges.
 */

/** Components of the graph on these vertices, each after all that it leads to. */
export function stronglyConnected(
  vertices: readonly number[],
  leadsTo: (vertex: number) => readonly number[],
): number[][] {
  const known = new Set(vertices);
  const found = new Map<number, number>();
  const lowest = new Map<number, number>();
  const onStack = new Set<number>();
  const stack: number[] = [];
  const components: number[][] = [];
  const lower = (vertex: number, to: number) => {
    if (to < (lowest.get(vertex) ?? to + 1)) lowest.set(vertex, to);
  };
  for (const root of vertices) {
    if (found.has(root)) continue;
    const path: { vertex: number; next: readonly number[]; at: number }[] = [];
    const enter = (vertex: number) => {
      lowest.set(vertex, found.size);
      found.set(vertex, found.size);
      stack.push(vertex);
      onStack.add(vertex);
      path.push({ vertex, next: leadsTo(vertex).filter((other) => known.has(other)), at: 0 });
    };
    enter(root);
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      const other = top.next[top.at++];
      if (other !== undefined) {
        const number = found.get(other);
        if (number === undefined) enter(other);
        else if (onStack.has(other)) lower(top.vertex, number);
        continue;
      }
      path.pop();
      const own = lowest.get(top.vertex) ?? 0;
      const above = path.at(-1);
      if (above) lower(above.vertex, own);
      if (own !== found.get(top.vertex)) continue;
      const component = stack.splice(stack.lastIndexOf(top.vertex));
      for (const member of component) onStack.delete(member);
      components.push(component);
    }
  }
  return components;
}

/** A shortest ring among the members, each leading to the next and the last to the first; the smallest member of it comes first. */
export function shortestRing(
  members: readonly number[],
  leadsTo: (vertex: number) => readonly number[],
): number[] {
  const among = new Set(members);
  const next = new Map(
    members.map((vertex) => [vertex, leadsTo(vertex).filter((other) => among.has(other))]),
  );
  let best: number[] = [];
  for (const start of [...members].sort((a, b) => a - b)) {
    const before = new Map<number, number>();
    // Nothing longer than the best ring so far is looked for.
    let rim = [start];
    for (let length = 1; rim.length > 0 && !before.has(start); length++) {
      if (best.length > 0 && length >= best.length) break;
      const beyond: number[] = [];
      for (const vertex of rim) {
        for (const other of next.get(vertex) ?? []) {
          if (before.has(other)) continue;
          before.set(other, vertex);
          beyond.push(other);
        }
      }
      rim = beyond;
    }
    if (!before.has(start)) continue;
    const ring = [start];
    for (let at = before.get(start); at !== undefined && at !== start; at = before.get(at)) ring.unshift(at);
    ring.unshift(...ring.splice(-1));
    best = ring;
    if (best.length === 2) break;
  }
  return best;
}
