/** 'What if nobody finds this?': the answer in the head, what falls, and what a teacher does about it in class. */
import { handedOverAt } from '../engine/handed-over.ts';
import type { Index } from '../engine/measures.ts';
import { rowOf } from '../engine/rows.ts';
import { fastenerType } from '../fasteners/index.ts';
import type { Assessment } from '../findings/assess.ts';
import { saidCode } from '../game/codes.ts';
import type { GameNode, Kind, NodeId } from '../game/model.ts';
import { pointTo } from './places.ts';
import { capital, lockLabel, type Say, sayer, sentence } from './say.ts';
import type { Part, Sentence } from './sentence.ts';
import { type Tone, toneOf } from './verdict.ts';

export interface LiftAnswer {
  /** A prize falls. */
  readonly isLost: boolean;
  readonly tone: Tone;
  /** What falls with it, in the order in which it would have been reached; the thing itself is not among them. */
  readonly fallen: readonly NodeId[];
  /** "Without Red tag, Keeper’s chest stays shut." */
  readonly first: Sentence;
  /** What can still be done. */
  readonly second: Sentence;
  /** What else falls; empty when the first sentence says it all. */
  readonly falls: Sentence;
  /** What the teacher does when it happens in class. */
  readonly rescue: Sentence;
}

/** Answers for any used thing; undefined for what is not in the game today. */
export function liftAnswer(assessment: Assessment, id: NodeId): LiftAnswer | undefined {
  const { game, network, measures, context } = assessment;
  const index = network.index.get(id);
  const node = game.nodes.get(id);
  if (index === undefined || !node) return undefined;
  const say = sayer(game);
  if (measures.reached[index] !== 1) {
    return {
      isLost: false,
      tone: toneWithout(assessment, false),
      fallen: [],
      first: sentence(capital(say.name(id)), ' is never reached anyway.'),
      second: [],
      falls: [],
      rescue: [],
    };
  }
  const left = context.without(index);
  const gone = fallenWithout(assessment, index);
  const fallen = gone.map(context.idOf);
  const prizes = fallen.filter((other) => game.nodes.get(other)?.kind === 'prize');
  if (node.kind === 'prize') prizes.unshift(id);
  const isLost = prizes.length > 0;
  const told = firstToFall(assessment, index, gone);
  return {
    isLost,
    tone: toneWithout(assessment, isLost),
    fallen,
    first: withoutSentence(say, node, told),
    second: whatIsLeft(assessment, left, isLost),
    falls: furtherFalls(
      say,
      prizes.filter((prize) => prize !== id && !told.includes(prize)),
      fallen.filter((other) => !told.includes(other) && !prizes.includes(other)),
    ),
    rescue: rescue(say, node, told, handedOver(assessment, index), true),
  };
}

/** The rescue alone, as a page tells it; empty for what is never reached or not in the game today. Without `codes` it says none. */
export function rescueLine(assessment: Assessment, id: NodeId, codes: boolean): Sentence {
  const { game, network, measures } = assessment;
  const index = network.index.get(id);
  const node = game.nodes.get(id);
  if (index === undefined || !node || measures.reached[index] !== 1) return [];
  const fallen = fallenWithout(assessment, index);
  return rescue(
    sayer(game),
    node,
    firstToFall(assessment, index, fallen),
    handedOver(assessment, index),
    codes,
  );
}

/**
 * The same in short, for the edge of a page where the number of the step stands before it: what stays shut without it, and what
 * to do. Of several steps the last says what stays shut and the first what to do.
 * Empty where nothing hangs on it.
 */
export function shortRescue(assessment: Assessment, steps: readonly NodeId[], codes: boolean): Sentence {
  const { game, network, measures } = assessment;
  const [first] = steps;
  const last = steps.at(-1);
  const node = first === undefined ? undefined : game.nodes.get(first);
  const index = last === undefined ? undefined : network.index.get(last);
  if (!node || index === undefined || measures.reached[index] !== 1) return [];
  const say = sayer(game);
  const isOneOfSeveral = hasOthersBeside(assessment, index);
  const told =
    isOneOfSeveral && steps.length > 1
      ? steps.slice(-1)
      : firstToFall(assessment, index, fallenWithout(assessment, index));
  if (told.length === 0) return [];
  const without = steps.length > 1 ? 'Without them ' : 'Without it ';
  return sentence(
    without,
    whatFalls(say, told, 1),
    '. ',
    inShort(assessment, say, node, codes, isOneOfSeveral),
  );
}

/** A lock on a box with several locks: the box says too little of it. */
function hasOthersBeside({ network, context }: Assessment, node: number): boolean {
  const box = network.parent[node] ?? -1;
  return context.kindOf(node) === 'fastener' && box >= 0 && rowOf(network.fasteners, box).length > 1;
}

function inShort(
  assessment: Assessment,
  say: Say,
  node: GameNode,
  codes: boolean,
  isOneOfSeveral: boolean,
): Sentence {
  const answer = codes ? saidCode(say.game, node.id) : undefined;
  const name = say.name(node.id);
  switch (node.kind) {
    case 'place':
      return pointTo(say.game, node.id);
    case 'container':
      return ['Open it for the team.'];
    case 'fastener':
      return sentence(
        isOneOfSeveral ? `Open its ${lockLabel(say.game, node)}` : lockToOpen(node.type),
        ...ending(': ', answer),
      );
    case 'key':
      return ['Give the spare key.'];
    case 'clue':
      return sentence('Give a copy of ', name, ...ending(', or say: ', answer));
    case 'tool':
      return sentence('Lend another ', name, '.');
    case 'puzzle': {
      const index = assessment.network.index.get(node.id) ?? -1;
      const given = alsoGive(say, handedOver(assessment, index), 1);
      return answer === undefined
        ? sentence('Show how the puzzle is solved', given, '.')
        : sentence('Say: ', { code: answer }, given, '.');
    }
    case 'prize':
      return ['Hand it over.'];
  }
}

function lockToOpen(type: string | undefined): string {
  return fastenerType(type).opensWith === 'nothing' ? 'Open the latch' : 'Open the lock';
}

/** What falls with a node, in the order in which it would have been reached. */
function fallenWithout({ network, measures, context }: Assessment, index: number): number[] {
  const left = context.without(index);
  const fallen: number[] = [];
  for (let other = 0; other < network.size; other++) {
    if (other !== index && measures.reached[other] === 1 && left[other] !== 1) fallen.push(other);
  }
  const start = (node: number) => measures.start[node] ?? 0;
  return fallen.sort((a, b) => start(a) - start(b) || a - b);
}

/** A game that cannot be won, or has no prize, is no better without something. How long it takes then is not told. */
function toneWithout(assessment: Assessment, isLost: boolean): Tone {
  if (isLost) return 'stops';
  const tone = toneOf(assessment);
  return tone === 'look' ? 'ok' : tone;
}

/** What is told first: the boxes that stay shut, of one with several locks the lock; else what hangs directly on the thing; a prize only where nothing else falls. */
function firstToFall(assessment: Assessment, lifted: number, gone: readonly number[]): NodeId[] {
  const { network, context } = assessment;
  const fallen = new Set(gone);
  const outer = gone.filter((node) => !fallen.has(network.parent[node] ?? -1));
  const of = (kind: Kind, among: readonly number[]) => among.filter((node) => context.kindOf(node) === kind);
  const direct = (node: number) =>
    node !== lifted &&
    Array.from(network.needs.items.subarray(network.needs.starts[node], network.needs.starts[node + 1])).some(
      (need) => need === lifted || network.parent[need] === lifted,
    );
  const boxOf = (node: number) =>
    context.kindOf(node) === 'fastener' && !hasOthersBeside(assessment, node)
      ? (network.parent[node] ?? node)
      : node;
  const ownBox = (node: number) => (context.kindOf(node) === 'fastener' ? (network.parent[node] ?? -1) : -1);
  const own = context.kindOf(lifted) === 'fastener' ? [network.parent[lifted] ?? -1] : [];
  const near =
    own.length > 0 ? own : [...new Set(gone.filter(direct).map(boxOf))].filter((node) => node !== lifted);
  const choice = [
    near.filter((node) => canBeShut(context.kindOf(node)) && !near.includes(ownBox(node))),
    of('puzzle', near),
    near.filter((node) => context.kindOf(node) !== 'prize'),
    of('container', outer),
    outer.filter((node) => context.kindOf(node) !== 'prize' && context.kindOf(node) !== 'fastener'),
    gone.filter((node) => context.kindOf(node) !== 'fastener'),
    gone,
  ];
  return (choice.find((nodes) => nodes.length > 0) ?? []).map(context.idOf);
}

const canBeShut = (kind: Kind | undefined) => kind === 'container' || kind === 'fastener';

function withoutSentence(say: Say, node: GameNode, told: readonly NodeId[]): Sentence {
  if (node.kind === 'prize')
    return sentence(say.name(node.id), ' is the prize. Without it the game has no end.');
  return sentence({ strong: 'Without ' }, say.name(node.id), ', ', whatFalls(say, told), '.');
}

/** What is said of a prize goes before its name. */
const FALLS: Readonly<Record<Exclude<Kind, 'prize'>, readonly [string, string]>> = {
  place: ['is never found', 'are never found'],
  container: ['stays shut', 'stay shut'],
  fastener: ['stays shut', 'stay shut'],
  key: ['is never had', 'are never had'],
  clue: ['is never read', 'are never read'],
  tool: ['is never had', 'are never had'],
  puzzle: ['cannot be solved', 'cannot be solved'],
};

/** A prize is called by what happens: 'The doors can open'. */
const NOBODY = 'nobody gets to ';

function whatFalls(say: Say, ids: readonly NodeId[], most = 3): Sentence {
  if (ids.length === 0) return ['nothing else is missed'];
  const kinds = new Set(ids.map((id) => say.game.nodes.get(id)?.kind ?? 'clue'));
  const [kind = 'clue'] = kinds;
  if (kind === 'prize' && kinds.size === 1) return sentence(NOBODY, say.names(ids, most));
  const [one, many] =
    kind !== 'prize' && (kinds.size === 1 || [...kinds].every(canBeShut))
      ? FALLS[kind]
      : (['is out of reach', 'are out of reach'] as const);
  return sentence(say.names(ids, most), ` ${ids.length === 1 ? one : many}`);
}

function whatIsLeft(assessment: Assessment, left: Uint8Array, isLost: boolean): Sentence {
  const { network, measures, canBeWon } = assessment;
  // What can be done is counted without a look at codes, so it is not told where one of them stops the game.
  if (measures.solvable && !canBeWon) return ['The game cannot be won anyway.'];
  let steps = 0;
  for (let node = 0; node < network.size; node++) {
    if (network.isStep[node] === 1 && left[node] === 1) steps += 1;
  }
  const all = measures.steps;
  const count: Part = { topic: 'steps', text: `${all} ${all === 1 ? 'step' : 'steps'}` };
  const done: Sentence =
    steps === all ? ['All ', count, ' can still be done.'] : [`${steps} of `, count, ' can still be done.'];
  if (!measures.solvable) return done;
  return sentence(isLost ? 'The game cannot be won then. ' : 'The game can still be won. ', done);
}

function furtherFalls(say: Say, prizes: readonly NodeId[], others: readonly NodeId[]): Sentence {
  const prizeText = prizes.length === 0 ? [] : sentence(capital([NOBODY]), say.names(prizes), '.');
  const shown = others.filter((id) => say.game.nodes.get(id)?.kind !== 'fastener');
  if (shown.length === 0) return prizeText;
  return sentence(
    prizeText,
    prizes.length > 0 ? ' ' : '',
    capital(say.names(shown, 3)),
    shown.length === 1 ? ' falls with it.' : ' fall with it.',
  );
}

/** What a team is given when it has solved the puzzle. */
function handedOver({ network, measures, context }: Assessment, puzzle: Index): NodeId[] {
  return handedOverAt(network, measures, puzzle).map(context.idOf);
}

/** ", and hand over Box b and Key k"; empty when nothing is. */
function alsoGive(say: Say, things: readonly NodeId[], most = things.length): Sentence {
  return things.length === 0 ? [] : sentence(', and hand over ', say.names(things, most));
}

/** By what kind of thing is missing. `given`: what a solved puzzle hands over. */
function rescue(
  say: Say,
  node: GameNode,
  told: readonly NodeId[],
  given: readonly NodeId[],
  codes: boolean,
): Sentence {
  if (told.length === 0 && node.kind !== 'prize') return ['Nothing has to be done: nothing hangs on it.'];
  const answer = codes ? saidCode(say.game, node.id) : undefined;
  const name = say.name(node.id);
  switch (node.kind) {
    case 'place':
      return pointTo(say.game, node.id);
    case 'container':
      return sentence('Open ', name, ' for the team.');
    case 'fastener':
      return sentence('Open ', name, ' for the team', ...ending(': ', answer));
    case 'key': {
      const shut = told.filter((id) => canBeShut(say.game.nodes.get(id)?.kind));
      return shut.length > 0
        ? sentence('Give the team the spare key, or open ', say.names(shut), ' for them.')
        : ['Give the team the spare key.'];
    }
    case 'clue':
      return sentence('Give the team a copy of ', name, ...ending(', or say what it gives: ', answer));
    case 'tool':
      return sentence('Lend the team another ', name, '.');
    case 'puzzle':
      return answer === undefined
        ? sentence('Show the team how ', name, ' is solved', alsoGive(say, given), '.')
        : sentence('Tell the team what ', name, ' gives: ', { code: answer }, alsoGive(say, given), '.');
    case 'prize':
      return ['Hand it over yourself.'];
  }
}

/** The end of a sentence that says a code, where there is one. */
function ending(before: string, answer: string | undefined): Part[] {
  return answer === undefined ? ['.'] : [before, { code: answer }, '.'];
}
