/**
 * Another code for a lock that is easily guessed: lock, answers and positions are changed together, so that what leads to the lock still
 * gives its code. The things that pupils read have to follow; that is the teacher's part. Only where the answers serve this lock alone.
 */
import type { CodeSource, FastenerCode } from '../engine/codes.ts';
import type { GuessStage } from '../engine/guess/guess.ts';
import { picksFor } from '../engine/simulation/picks.ts';
import { FASTENER_TYPES, type FastenerType, fastenerType, trySecondsOf } from '../fasteners/index.ts';
import { gradeOf } from '../fasteners/word-list/index.ts';
import type { Edit } from '../game/edits/edit.ts';
import type { NodeId, NodeOf } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Fresh } from './finding.ts';
import { drawnCodes, newCode } from './new-code.ts';
import type { Proposal } from './proposal.ts';

/** A lock with more codes has so many times as many; less is not worth another lock. */
const MANY_TIMES = 4;
/** A code grows by so many symbols at most. */
const MOST_ADDED = 3;
/** Draws until a code is neither weak nor a word. */
const DRAWS = 50;

interface Lock {
  readonly context: Context;
  readonly fastener: NodeOf<'fastener'>;
  readonly type: FastenerType;
  readonly code: FastenerCode;
  readonly stage: GuessStage;
}

/** The most sensible first. Nothing for a lock whose code is not right, or that a key opens. */
export function* recodings(context: Context, id: NodeId, fresh: Fresh): Generator<Proposal> {
  const fastener = context.game.nodes.get(id);
  const code = context.codes().find(({ node }) => context.idOf(node) === id);
  const stage = code && context.guesses().locks.get(code.node)?.worst;
  if (fastener?.kind !== 'fastener' || code?.state !== 'right' || !stage) return;
  const lock: Lock = { context, fastener, type: fastenerType(fastener.type), code, stage };
  if (stage.by === 'words') yield* noWord(lock);
  yield* joined(lock, fresh);
  yield* longer(lock);
  yield* otherTypes(lock);
}

/** A code of as many symbols that is another: for locks that share theirs. Nothing where the code is not right. */
export function* anotherCode(context: Context, id: NodeId): Generator<Proposal> {
  const code = context.codes().find(({ node }) => context.idOf(node) === id);
  if (code?.state !== 'right') return;
  for (const symbols of drawnCodes(context, code, code.symbols.length)) {
    const proposal = newCode(context, code, symbols);
    if (proposal) yield proposal;
    return;
  }
}

/** Letters that make no word. */
function* noWord({ context, code }: Lock): Generator<Proposal> {
  const { words } = context;
  if (!words) return;
  for (const symbols of drawnCodes(context, code, code.symbols.length)) {
    if (gradeOf(words, symbols.join('')) !== undefined) continue;
    const proposal = newCode(context, code, symbols);
    if (proposal) yield proposal;
    return;
  }
}

/** Parts that are known one after another come from one puzzle: first the last of them, then all. */
function* joined({ context, fastener, type, code, stage }: Lock, fresh: Fresh): Generator<Proposal> {
  const parts = code.sources.filter(({ at }) => at !== undefined);
  if (parts.length < 2 || parts.length < code.sources.length) return;
  const known = stage.given.flatMap((node) => parts.filter((part) => part.node === node));
  const unknown = parts.filter((part) => !known.includes(part));
  for (const gathered of [
    [...known.slice(-1), ...unknown],
    [...known, ...unknown],
  ]) {
    const into = gathered.filter(({ node }) => context.kindOf(node) === 'puzzle').at(-1);
    if (!into || gathered.length < 2) continue;
    const others = gathered.filter((part) => part !== into);
    const left = context.without(into.node);
    // What itself needs the puzzle cannot lead to it; what serves another lock stays as it is.
    if (others.some(({ node }) => left[node] !== 1) || !servesOnly(context, code, [into])) continue;
    const positions = gathered.flatMap(({ at }) => at ?? []).sort((a, b) => a - b);
    if (new Set(positions).size < positions.length) continue;
    const isWhole = positions.length === code.symbols.length;
    const answer = type.write(positions.map((position) => code.symbols[position - 1] ?? ''));
    const puzzle = context.idOf(into.node);
    const edits: Edit[] = [
      { type: 'unlink', ids: others.map(({ link }) => link) },
      ...others.flatMap(({ node }): Edit[] => {
        const from = context.idOf(node);
        const isLinked = context.linksTo(puzzle).some((link) => link.from === from);
        return isLinked ? [] : [{ type: 'link', id: fresh.newId(), from, to: puzzle }];
      }),
      { type: 'setFields', id: puzzle, fields: { answer: isWhole ? code.written : answer } },
      { type: 'setLink', id: into.link, at: isWhole ? undefined : positions },
    ];
    const from = others.map(({ node }) => context.idOf(node));
    yield { code: 'joinParts', values: { fastener: fastener.id, puzzle, others: from, answer }, edits };
  }
}

/** Further symbols at the end, from what is found out last; where answers are whole, from each of them. */
function* longer({ context, fastener, type, code, stage }: Lock): Generator<Proposal> {
  if (type.length(fastener.hardware) !== undefined) return;
  const pick = picksFor(`${fastener.id} ${code.written}`);
  const last = code.sources.filter(({ node }) => !stage.given.includes(node)).at(-1);
  for (let added = 1; added <= MOST_ADDED; added++) {
    const symbols = extended(type, code.symbols, added, pick);
    const edits = symbols && recoded(context, code, type, symbols, last);
    if (!symbols || !edits) return;
    const values = { fastener: fastener.id, code: type.write(symbols), answers: answersIn(context, edits) };
    yield { code: 'longerCode', values, edits };
  }
}

/** Undefined where it is not known what else could be shown. */
function extended(
  type: FastenerType,
  symbols: readonly string[],
  added: number,
  pick: (count: number) => number,
): readonly string[] | undefined {
  const isDigits = symbols.every((symbol) => /^\d$/.test(symbol));
  const wheels = Array.from({ length: added }, (_, i) => type.wheel(symbols.length + i));
  for (let draw = 0; draw < DRAWS; draw++) {
    const more = wheels.map((wheel) => {
      const shown = wheel ?? (isDigits ? [...'0123456789'] : []);
      return shown[shown.length > 0 ? pick(shown.length) : 0];
    });
    if (!more.every((symbol) => symbol !== undefined)) return undefined;
    const code = [...symbols, ...more];
    if (type.weak(code) === undefined) return code;
  }
  return undefined;
}

/** Another lock that takes the same code, symbol by symbol, and has many more. */
function* otherTypes({ fastener, code, stage }: Lock): Generator<Proposal> {
  const known = new Set(stage.known.map((position) => position - 1));
  const same = (symbols: readonly string[], own: readonly string[]) =>
    symbols.length === own.length && symbols.every((symbol, i) => symbol === own[i]);
  const rows = FASTENER_TYPES.flatMap((type) => {
    if (type.opensWith !== 'code' || type.type === fastener.type) return [];
    if (!same(type.symbols(code.written), code.symbols) || type.misfits(code.symbols).length > 0) return [];
    const answers = code.sources.map(({ written, symbols }) => ({ written, symbols }));
    if (!answers.every(({ written, symbols }) => same(type.symbols(written), symbols))) return [];
    const left = type.left(code.symbols.length, undefined, known, code.symbols);
    return [{ type, seconds: left * type.trySeconds }];
  });
  const now = stage.left * trySecondsOf(fastener);
  const better = rows.filter(({ seconds }) => seconds >= MANY_TIMES * now);
  for (const { type } of better.sort((a, b) => a.seconds - b.seconds)) {
    yield {
      code: 'otherType',
      values: { fastener: fastener.id, type: type.type },
      edits: [{ type: 'setFields', id: fastener.id, fields: { type: type.type, hardware: undefined } }],
    };
  }
}

/**
 * The lock set to other symbols, and what leads to it giving them: whole answers the whole code, parts their positions; `last` fills
 * the positions that the code has beyond those of now. Undefined where an answer that would change serves something else as well.
 */
function recoded(
  context: Context,
  code: FastenerCode,
  type: FastenerType,
  symbols: readonly string[],
  last?: CodeSource,
): Edit[] | undefined {
  const added = symbols.map((_, i) => i + 1).slice(code.symbols.length);
  const written = type.write(symbols);
  const edits: Edit[] = [{ type: 'setFields', id: context.idOf(code.node), fields: { code: written } }];
  const changed: CodeSource[] = [];
  for (const source of code.sources) {
    const at = source.at && (source === last ? [...source.at, ...added] : source.at);
    const answer = at ? at.map((position) => symbols[position - 1] ?? '') : symbols;
    const isSame =
      answer.length === source.symbols.length && answer.every((one, i) => one === source.symbols[i]);
    if (isSame) continue;
    changed.push(source);
    edits.push({ type: 'setFields', id: context.idOf(source.node), fields: { answer: type.write(answer) } });
    if (at && at.length > (source.at?.length ?? 0)) edits.push({ type: 'setLink', id: source.link, at });
  }
  return servesOnly(context, code, changed) ? edits : undefined;
}

/** No other lock takes an answer of these. */
function servesOnly(context: Context, code: FastenerCode, sources: readonly CodeSource[]): boolean {
  const nodes = new Set(sources.map(({ node }) => node));
  return context
    .codes()
    .every((other) => other === code || other.sources.every(({ node }) => !nodes.has(node)));
}

/** Whose answers the edits change, and to what. */
function answersIn({ game }: Context, edits: readonly Edit[]): { source: NodeId; answer: string }[] {
  return edits.flatMap((edit) => {
    if (edit.type !== 'setFields' || game.nodes.get(edit.id)?.kind === 'fastener') return [];
    const { answer } = edit.fields;
    return typeof answer === 'string' ? [{ source: edit.id, answer }] : [];
  });
}
