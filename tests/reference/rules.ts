/**
 * A game as rules for a general-purpose solver: something comes when all of one list and at least `k` of another have come.
 * Made from the document, not from the engine's network.
 */
import type { Game } from '../../src/game/model.ts';
import { naiveGame } from '../engine/naive.ts';

export interface Rule {
  readonly head: string;
  readonly all: readonly string[];
  readonly some: readonly string[];
  readonly k: number;
  readonly isStep: boolean;
}

export interface Rules {
  readonly rules: readonly Rule[];
  readonly prizes: readonly string[];
  readonly steps: readonly string[];
}

/** Names are safe in any solver's syntax; `nameOf` tells which node is which. */
export function rulesOf(game: Game): Rules & { readonly nameOf: ReadonlyMap<string, string> } {
  const { nodes, parent, needs, prizes, steps } = naiveGame(game);
  const nameOf = new Map([...nodes.keys()].map((id, i) => [id, `n${i}`]));
  const name = (id: string) => nameOf.get(id) ?? '';
  const isStep = new Set(steps);
  const rules: Rule[] = [];
  for (const node of nodes.values()) {
    const sources = needs.get(node.id) ?? [];
    const closed = node.kind === 'fastener' && node.type !== 'latch' && sources.length === 0;
    const k = node.need === undefined || node.need === 'all' ? sources.length : node.need;
    const above = parent.get(node.id);
    const waiting = {
      all: above === undefined ? [] : [node.kind === 'fastener' ? `hand_${name(above)}` : name(above)],
      some: sources.map(name),
      k: closed ? 1 : k,
    };
    if (node.kind !== 'container') {
      rules.push({ head: name(node.id), ...waiting, isStep: isStep.has(node.id) });
      continue;
    }
    const hand = `hand_${name(node.id)}`;
    const fasteners = [...nodes.values()].filter(
      (other) => other.kind === 'fastener' && other.on === node.id,
    );
    rules.push({ head: hand, ...waiting, isStep: false });
    rules.push({
      head: name(node.id),
      all: [hand, ...fasteners.map(({ id }) => name(id))],
      some: [],
      k: 0,
      isStep: isStep.has(node.id),
    });
  }
  return { rules, prizes: prizes.map(name), steps: steps.map(name), nameOf };
}
