/** A new code for a lock: drawn, or a word that its wheels can show, and set everywhere where it is plain what that means. */
import type { FastenerCode } from '../engine/codes.ts';
import { picksFor } from '../engine/simulation/picks.ts';
import { fastenerType } from '../fasteners/index.ts';
import { normaliseCode } from '../game/codes.ts';
import type { Edit } from '../game/edits/edit.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import { setAnswer, setCode } from './mends.ts';
import type { Proposal } from './proposal.ts';

/**
 * The lock is set to the code, and all that gives it gives the new one, whole or its part. Undefined where that is not plain: a source
 * that another lock listens to as well, a part that does not fit its positions, or positions that the new code does not have.
 */
export function newCode(
  context: Context,
  { node, sources }: FastenerCode,
  symbols: readonly string[],
): Proposal | undefined {
  const fastener = context.idOf(node);
  const lock = context.game.nodes.get(fastener);
  if (lock?.kind !== 'fastener') return undefined;
  const type = fastenerType(lock.type);
  const edits: Edit[] = [...setCode(fastener, type.write(symbols)).edits];
  const changed = new Set<NodeId>();
  for (const source of sources) {
    const id = context.idOf(source.node);
    const locks = context.linksFrom(id).filter(({ to }) => context.game.nodes.get(to)?.kind === 'fastener');
    const own = source.at?.map((position) => symbols[position - 1]) ?? symbols;
    const given = own.filter((symbol) => symbol !== undefined);
    const fits = source.at === undefined || source.symbols.length === given.length;
    if (locks.length > 1 || given.length !== own.length || !fits) return undefined;
    edits.push(...setAnswer(id, type.write(given)).edits);
    changed.add(id);
  }
  return {
    code: 'newCode',
    values: { fastener, code: type.write(symbols), sources: [...changed] },
    edits,
  };
}

/** Then there is hardly another code. */
const DRAWS = 24;

/** Good codes of so many symbols for a lock, none of which another lock has; as many as there are in so many draws. */
export function* drawnCodes(
  context: Context,
  { node, written }: FastenerCode,
  length: number,
): Generator<readonly string[]> {
  const id = context.idOf(node);
  const lock = context.game.nodes.get(id);
  if (lock?.kind !== 'fastener') return;
  const type = fastenerType(lock.type);
  const pick = picksFor(`${id} ${written}`);
  const seen = new Set(context.codes().map(({ code }) => code));
  for (let draw = 0; draw < DRAWS; draw++) {
    const symbols = type.draw(pick, length, lock.hardware);
    const code = normaliseCode(type.write(symbols));
    const isWeak = type.weak(symbols, { hardware: lock.hardware }) !== undefined;
    if (symbols.length === 0 || seen.has(code) || isWeak) continue;
    seen.add(code);
    yield symbols;
  }
}
