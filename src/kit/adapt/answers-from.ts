/** What pupils work out from the text of a thing: its own answer, and those of all that it leads to without another answer between. */
import { codeOf } from '../../game/codes.ts';
import type { Game, NodeId } from '../../game/model.ts';

export interface WorkedOut {
  /** Normalised. */
  readonly answers: readonly string[];
  /** Texts that say what is to be done with it: its own and those of the puzzles. */
  readonly tasks: readonly string[];
}

export function workedOutFrom(game: Game, id: NodeId): WorkedOut {
  const answers = new Set<string>();
  const tasks = new Set<string>();
  const seen = new Set<NodeId>();
  const visit = (at: NodeId) => {
    if (seen.has(at)) return;
    seen.add(at);
    const node = game.nodes.get(at);
    if (!node) return;
    tasks.add(node.text ?? '');
    const answer = codeOf(game, at);
    if (answer !== undefined) answers.add(answer);
    // What an answer opens says nothing new of the text; a clue without one is read together with what it leads to.
    if (answer !== undefined && at !== id) return;
    for (const link of game.links.values()) if (link.from === at) visit(link.to);
  };
  visit(id);
  return { answers: [...answers], tasks: [...tasks] };
}
