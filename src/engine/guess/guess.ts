/**
 * Guess resistance: what pupils gain who try codes, or keys, instead of solving what gives them.
 *
 * For every used fastener f that opens with a code or a key, at several stages. Times are those of src/engine/measures.ts, a stage is a
 * set K of sources that are known, and the short cut at f given K (short-cut.ts) says when it can begin and what it skips.
 *
 * A code (f is no latch, takes no key, and its type is known):
 *   sources   = nodes linked to f that are reached and carry an answer, in the order of their finish, equal ones in the order of
 *               play: parts that come at the same time come one after another
 *   stages    = K grows along the sources. It begins with those that finish before the container is at hand; after each that gives
 *               further positions of the code a stage follows, until none is left or a source gives the whole code. If not all that
 *               leads to f is needed, parts are no use: the one stage is at the container's being at hand. When all is known by then
 *               the stage is of one code, and nothing is guessed or skipped. Here and below 'at hand' is the later of the container's
 *               being at hand and the lock's own `atMinute`; a source that finishes in the same minute comes after that stage. There is
 *               no stage where the lock never comes to hand, or a tool that is needed is never had.
 *   positions = those of the link's `at` that the code has and for which the answer has a symbol: a shorter answer gives as many as it
 *               has symbols; a whole answer gives all that the code has, and so none while the lock has no code
 *   given     = K and, where all is needed, the tools that are linked to f: a guess spares thinking, not hands
 *   codes     = how many codes the lock has (FastenerType.codes), for the length that its wheels fix, else that of its code; Infinity
 *               where none can count them, or the length is not known
 *   left      = how many of them agree with the known positions (FastenerType.left); for a word lock whose code is in the word list,
 *               the words that the wheels can spell, as common as the code or commoner, with the known letters in their places
 *   minutes   = (left + 1) / 2 × seconds of a try / 60: the mean of trying in any order without repeating a code
 * A key (f is a key lock, or a key leads to it): one stage; none where no key leads to it, or it can never be tried.
 *   given     = every key that leads to f, and tools, where all is needed; else the key that finishes first
 *   codes     = the key locks of the game; left = those at hand at the stage that are not yet open, f counted
 *   minutes   = as above, a try being one lock
 *
 *   quicker   = the guess pays: begun at the stage it ends before solving would, that is `at` + minutes < finish(f), or, where it skips
 *               steps, before solving would if these were begun only then (`solvedAt`): pupils take parts in any order, and the one that is
 *               left is the one that is guessed. And there is something to gain: it skips a step, or shortens the game by more than the lock
 *               itself takes.
 *   worst     = of the stages that are quicker, else of all: the one with the least minutes ÷ max(minutesSkipped, saved), of equal
 *               ones (nothing gained counts as Infinity) the last
 * Comparisons of minutes are those of compare.ts.
 *
 * Cost: one short cut for each stage; for word locks a pass over the words of that length.
 */
import { fastenerType, trySecondsOf } from '../../fasteners/index.ts';
import { gradeOf, spellable, type WordList } from '../../fasteners/word-list/index.ts';
import { type Game, KINDS, type Kind, type NodeOf } from '../../game/model.ts';
import type { CodeSource, FastenerCode } from '../codes.ts';
import { classesOf, isLonger } from '../compare.ts';
import type { Index, Measures } from '../measures.ts';
import type { Network } from '../network.ts';
import { rowOf } from '../rows.ts';
import { type ShortCut, ShortCuts } from './short-cut.ts';

/** What is counted: codes of the lock, words that it can spell, or key locks to try the key on. */
export type GuessedBy = 'codes' | 'words' | 'locks';

export interface GuessStage {
  /** Minute of play. */
  readonly at: number;
  /** Positions of the code whose symbols are known, from 1, ascending. */
  readonly known: readonly number[];
  /** What has to be reached before: sources that give those, keys, tools. */
  readonly given: readonly Index[];
  readonly by: GuessedBy;
  /** Infinity where none can count them. */
  readonly left: number;
  /** Expected, of trying. */
  readonly minutes: number;
  /** Steps that could not be skipped and now can, ascending. */
  readonly skips: readonly Index[];
  readonly minutesSkipped: number;
  /** Minutes by which the shortest time falls. */
  readonly saved: number;
  /** Guessing beats solving, and there is something to gain. */
  readonly quicker: boolean;
}

export interface Guess {
  readonly node: Index;
  readonly by: 'code' | 'key';
  /** Infinity where none can count them. */
  readonly codes: number;
  readonly trySeconds: number;
  /** In the order of play; none where the lock never comes to hand. */
  readonly stages: readonly GuessStage[];
  readonly worst: GuessStage | undefined;
}

export interface Guesses {
  /** By node: every used fastener that opens with a code or a key. */
  readonly locks: ReadonlyMap<Index, Guess>;
  /** By node: what it skips to come upon a place by chance, for every used place that says so. */
  readonly places: ReadonlyMap<Index, ShortCut>;
  /** For further questions. */
  readonly cuts: ShortCuts;
}

/** Without a word list all codes of word locks count. `codes` are those of the network (codesOf). */
export function guessesOf(
  game: Game,
  network: Network,
  measures: Measures,
  codes: readonly FastenerCode[],
  words?: WordList,
): Guesses {
  const guessing = new Guessing(game, network, measures, codes, words);
  const locks = new Map<Index, Guess>();
  for (const code of codes) {
    const guess = guessing.guess(code);
    if (guess) locks.set(code.node, guess);
  }
  const places = new Map<Index, ShortCut>();
  for (const [node, id] of network.ids.entries()) {
    const place = game.nodes.get(id);
    if (place?.kind !== 'place' || place.byChance !== true) continue;
    places.set(node, guessing.cuts.of(node, [], network.minutes[node] ?? 0));
  }
  return { locks, places, cuts: guessing.cuts };
}

/** Minutes that it takes on average to come upon the one of so many, without trying any twice. */
export function minutesOfTrying(left: number, trySeconds: number): number {
  return (((left + 1) / 2) * trySeconds) / 60;
}

class Guessing {
  readonly cuts: ShortCuts;
  readonly #game: Game;
  readonly #network: Network;
  readonly #measures: Measures;
  readonly #words: WordList | undefined;
  readonly #keyLocks: readonly Index[];

  constructor(
    game: Game,
    network: Network,
    measures: Measures,
    codes: readonly FastenerCode[],
    words: WordList | undefined,
  ) {
    this.cuts = new ShortCuts(network, measures);
    this.#game = game;
    this.#network = network;
    this.#measures = measures;
    this.#words = words;
    this.#keyLocks = codes.filter(({ state }) => state === 'key').map(({ node }) => node);
  }

  /** Undefined for a latch, and for a type that this version does not know. */
  guess(code: FastenerCode): Guess | undefined {
    const lock = this.#game.nodes.get(this.#network.ids[code.node] ?? '');
    if (lock?.kind !== 'fastener') return undefined;
    if (code.state === 'key') return this.#byKey(code, lock);
    return fastenerType(lock.type).opensWith === 'code' ? this.#byCode(code, lock) : undefined;
  }

  #byKey({ node }: FastenerCode, lock: NodeOf<'fastener'>): Guess {
    const keys = this.#needs(node, 'key');
    const given = this.#areAllNeeded(node)
      ? [...keys, ...this.#needs(node, 'tool')]
      : keys.sort((a, b) => this.#finish(a) - this.#finish(b)).slice(0, 1);
    const trySeconds = trySecondsOf(lock);
    const at = this.cuts.begins(node, given);
    const left = this.#keyLocks.filter((other) => other === node || this.#isShutAt(other, at)).length;
    const isTried = keys.length > 0 && at < Number.POSITIVE_INFINITY;
    const stages = isTried ? [this.#stage(node, { known: [], given, by: 'locks', left }, trySeconds)] : [];
    return { node, by: 'key', codes: this.#keyLocks.length, trySeconds, stages, worst: stages[0] };
  }

  /** At hand, and not yet open. */
  #isShutAt(lock: Index, minute: number): boolean {
    return !isLonger(this.#hand(lock), minute) && isLonger(this.#finish(lock), minute);
  }

  #byCode(code: FastenerCode, lock: NodeOf<'fastener'>): Guess {
    const { node, symbols } = code;
    const type = fastenerType(lock.type);
    const length = type.length(lock.hardware) ?? (symbols.length > 0 ? symbols.length : undefined);
    const codes =
      length === undefined ? Number.POSITIVE_INFINITY : type.codes(length, lock.hardware, symbols);
    const trySeconds = trySecondsOf(lock);
    const stages = this.#known(code).map(({ known, given, isAll }): GuessStage => {
      const words = isAll ? undefined : this.#wordsLeft(lock, symbols, known);
      const positions = new Set(known.map((position) => position - 1));
      const left = isAll
        ? 1
        : (words ?? (length === undefined ? codes : type.left(length, lock.hardware, positions, symbols)));
      const by = words === undefined ? 'codes' : 'words';
      const stage = this.#stage(node, { known, given, by, left }, trySeconds);
      return isAll ? { ...stage, skips: [], minutesSkipped: 0, saved: 0, quicker: false } : stage;
    });
    return { node, by: 'code', codes, trySeconds, stages, worst: worstOf(stages) };
  }

  /** Undefined where the code is no word of the list, or there is none. */
  #wordsLeft(
    lock: NodeOf<'fastener'>,
    symbols: readonly string[],
    known: readonly number[],
  ): number | undefined {
    if (lock.type !== 'word' || !this.#words) return undefined;
    const grade = gradeOf(this.#words, symbols.join(''));
    if (grade === undefined) return undefined;
    const { wheel } = fastenerType(lock.type);
    const wheels = symbols.map((_, position) =>
      lock.hardware?.wheels ? (wheel(position, lock.hardware) ?? []) : undefined,
    );
    const letters = new Map(known.map((position) => [position - 1, symbols[position - 1] ?? '']));
    return Math.max(1, spellable(this.#words, wheels, letters, grade).length);
  }

  /** The stages of a code: what is known, and given. */
  #known(code: FastenerCode): { known: readonly number[]; given: readonly Index[]; isAll: boolean }[] {
    const { node, symbols } = code;
    const hand = this.#hand(node);
    if (hand === Number.POSITIVE_INFINITY) return [];
    const allNeeded = this.#areAllNeeded(node);
    const tools = allNeeded ? this.#needs(node, 'tool') : [];
    if (tools.some((tool) => this.#finish(tool) === Number.POSITIVE_INFINITY)) return [];
    const known = new Set<number>();
    let given: readonly Index[] = tools;
    const stages: { known: readonly number[]; given: readonly Index[]; isAll: boolean }[] = [];
    const isAll = () => symbols.length > 0 && known.size >= symbols.length;
    const push = () => stages.push({ known: [...known].sort((a, b) => a - b), given, isAll: isAll() });
    let begun = false;
    for (const source of this.#inOrder(code.sources)) {
      if (source.at !== undefined && !allNeeded) continue;
      if (!begun && !isLonger(hand, this.#finish(source.node))) {
        begun = true;
        push();
      }
      if (isAll()) break;
      const before = known.size;
      for (const position of positionsOf(source, symbols)) known.add(position);
      if (known.size === before) continue;
      given = [...given, source.node];
      if (begun && !isAll()) push();
    }
    if (!begun) push();
    return stages;
  }

  /** Those that are reached, by finish, then as the order of play has them. */
  #inOrder(sources: readonly CodeSource[]): CodeSource[] {
    const reached = sources.filter(({ node }) => this.#measures.reached[node] === 1);
    const classes = classesOf(Float64Array.from(reached, ({ node }) => this.#finish(node)));
    const number = (source: CodeSource) => this.#measures.number[source.node] ?? 0;
    return reached
      .map((source, i) => ({ source, rank: classes[i] ?? 0 }))
      .sort((a, b) => a.rank - b.rank || number(a.source) - number(b.source) || a.source.node - b.source.node)
      .map(({ source }) => source);
  }

  #stage(
    node: Index,
    { known, given, by, left }: Pick<GuessStage, 'known' | 'given' | 'by' | 'left'>,
    trySeconds: number,
  ): GuessStage {
    const minutes = minutesOfTrying(left, trySeconds);
    const cut = this.cuts.of(node, given, minutes);
    const { at, skips, minutesSkipped, saved } = cut;
    const quicker = this.#isQuicker(node, cut, minutes);
    return { at, known, given, by, left, minutes, skips, minutesSkipped, saved, quicker };
  }

  #isQuicker(node: Index, cut: ShortCut, minutes: number): boolean {
    const solved = this.#finish(node);
    const isSooner = isLonger(solved, cut.at + minutes);
    if (cut.skips.length === 0) return isSooner && isLonger(cut.saved, this.#network.minutes[node] ?? 0);
    // Begun later by `at`, solving ends later by no more than that: a guess that takes as long as solving in all is never quicker.
    if (isSooner || !isLonger(solved, minutes)) return isSooner;
    return isLonger(this.cuts.solvedAt(node, cut), cut.at + minutes);
  }

  #finish(node: Index): number {
    return this.#measures.finish[node] ?? Number.POSITIVE_INFINITY;
  }

  /** When a fastener's container is at hand. */
  #hand(lock: Index): number {
    return this.cuts.begins(lock, []);
  }

  #needs(node: Index, kind: Kind): Index[] {
    const number = KINDS.indexOf(kind);
    return Array.from(rowOf(this.#network.needs, node)).filter(
      (need) => this.#network.kinds[need] === number,
    );
  }

  #areAllNeeded(node: Index): boolean {
    return (this.#network.k[node] ?? 0) >= rowOf(this.#network.needs, node).length;
  }
}

/** The positions of the code that a source gives, from 1. */
function positionsOf(source: CodeSource, symbols: readonly string[]): number[] {
  if (source.at === undefined) return symbols.map((_, i) => i + 1);
  return source.at.filter((position, i) => position <= symbols.length && i < source.symbols.length);
}

function worstOf(stages: readonly GuessStage[]): GuessStage | undefined {
  const ease = ({ minutes, minutesSkipped, saved }: GuessStage) => {
    const gain = Math.max(minutesSkipped, saved);
    return gain > 0 ? minutes / gain : Number.POSITIVE_INFINITY;
  };
  let worst: GuessStage | undefined;
  for (const stage of stages) {
    if (!worst || Number(stage.quicker) > Number(worst.quicker)) worst = stage;
    else if (stage.quicker === worst.quicker && ease(stage) <= ease(worst)) worst = stage;
  }
  return worst;
}
