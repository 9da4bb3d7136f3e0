/**
 * Another lock that is free in place of one that is short: with the code as it is where it can carry that, else with another code, a legend
 * beside the box and a puzzle that turns what leads to the lock into the new code. No answer changes, so the document's own rule for
 * right codes holds: the puzzle alone leads to the lock, and gives the whole code. A lock that takes a key gets, for a key that opens nothing else, a tag with a code where the key was.
 */
import { parentInUse } from '../../engine/left-out.ts';
import { picksFor } from '../../engine/simulation/picks.ts';
import { fastenerType, type Hardware } from '../../fasteners/index.ts';
import type { Fresh } from '../../findings/finding.ts';
import { codeOf } from '../../game/codes.ts';
import type { Edit } from '../../game/edits/edit.ts';
import type { Estimate, Game, GameLink, GameNode, NodeId, NodeOf } from '../../game/model.ts';
import { legendWords, puzzleWords, tagWords } from '../../words/kit-legend.ts';
import { symbolsFor } from '../fit/suits.ts';
import type { ItemOf } from '../model.ts';
import type { LockNeed } from '../needs.ts';
import type { RemedyWith } from './remedy.ts';
import type { Spots } from './spots.ts';
import { translate } from './translation.ts';

/** What a translation takes. Common practice, no published source. */
const TRANSLATING: Estimate = { low: 1, likely: 2, high: 4 };

/** The fastener as that lock, with that code. What the lock before was like goes. */
function asLock(game: Game, fastener: NodeId, { type, wheels, marks }: ItemOf<'lock'>, code: string): Edit {
  const known = game.nodes.get(fastener);
  const had = known?.kind === 'fastener' ? known.hardware : undefined;
  const own = { ...(wheels && { wheels }), ...(marks !== undefined && { marks }) };
  const hardware = had ? { wheels, marks, trySeconds: undefined } : own;
  const isSaid = had !== undefined || wheels !== undefined || marks !== undefined;
  return { type: 'setFields', id: fastener, fields: { type, code, ...(isSaid ? { hardware } : {}) } };
}

function linksTo(game: Game, id: NodeId): GameLink[] {
  return [...game.links.values()].filter(({ to }) => to === id).sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Codes of all other locks, so that no two get the same. */
function codesBeside(game: Game, fastener: NodeId): Set<string> {
  const codes = new Set<string>();
  for (const { id, kind } of game.nodes.values()) {
    const code = kind === 'fastener' && id !== fastener ? codeOf(game, id) : undefined;
    if (code !== undefined) codes.add(code);
  }
  return codes;
}

/** Undefined where the lock cannot carry the code as it is, or there is none yet. */
export function otherLock(
  game: Game,
  need: LockNeed,
  item: ItemOf<'lock'>,
): RemedyWith<'otherLock'> | undefined {
  const { node } = need;
  const rules = fastenerType(item.type);
  const typed = node.code ?? '';
  const isCode = rules.opensWith === 'code' && fastenerType(need.type).opensWith === 'code';
  const read = rules.read(typed, item);
  if (!isCode || need.type === item.type || typed.trim() === '' || !read.ok) return undefined;
  if (rules.misfits(rules.symbols(read.code), item).length > 0) return undefined;
  return {
    code: 'otherLock',
    values: { fastener: node.id, type: item.type, item: item.id },
    edits: [asLock(game, node.id, item, read.code)],
  };
}

/** Undefined where there is no code yet, or none can be made of it for this lock. */
export function otherCode(
  game: Game,
  need: LockNeed,
  item: ItemOf<'lock'>,
  fresh: Fresh,
  spots: Spots,
): RemedyWith<'otherCode'> | undefined {
  const { node } = need;
  const old = symbolsFor(game, need);
  const rules = fastenerType(item.type);
  if (!old || rules.opensWith !== 'code') return undefined;
  const from = { type: need.type, hardware: node.hardware };
  const found = translate(
    old,
    from,
    { type: item.type, hardware: item },
    codesBeside(game, node.id),
    node.id,
  );
  if (!found) return undefined;
  const code = rules.write(found.code);
  const links = linksTo(game, node.id);
  // Who gives a part that no longer counts would be found for nothing.
  if (found.counted < old.length && links.some(({ at }) => at !== undefined)) return undefined;
  // With fewer needed than lead to it, all go through the puzzle, which then asks for as many.
  const needed = typeof node.need === 'number' ? node.need : undefined;
  const moved = links.filter(({ from: id }) => needed !== undefined || codeOf(game, id) !== undefined);
  const [legend, puzzle] = [fresh.newId(), fresh.newId()];
  const holder = parentInUse(game, node.on);
  const words = legendWords(game, node, need.type, item.type, found);
  const clue: NodeOf<'clue'> = {
    id: legend,
    kind: 'clue',
    ...words,
    ...(holder === undefined ? {} : { in: holder }),
  };
  const translating: NodeOf<'puzzle'> = {
    id: puzzle,
    kind: 'puzzle',
    ...puzzleWords(game, node, need.type, item.type, old, found),
    answer: code,
    minutes: TRANSLATING,
    ...(needed === undefined ? {} : { need: needed }),
  };
  const link = (source: NodeId, to: NodeId): GameLink => ({ id: fresh.newId(), from: source, to });
  const nodes: GameNode[] = [clue, translating];
  return {
    code: 'otherCode',
    values: {
      fastener: node.id,
      type: item.type,
      item: item.id,
      before: fastenerType(need.type).write(old),
      code,
      legend,
      puzzle,
    },
    edits: [
      { type: 'unlink', ids: moved.map(({ id }) => id) },
      {
        type: 'add',
        nodes,
        links: [
          ...moved.map((one) => link(one.from, puzzle)),
          // A puzzle that needs any one of several would do without its legend: the lock asks for it then.
          link(legend, needed === undefined ? puzzle : node.id),
          link(puzzle, node.id),
        ],
        positions: spots.beside(node.on, nodes),
      },
      asLock(game, node.id, item, code),
      ...(needed === undefined
        ? []
        : [{ type: 'setFields', id: node.id, fields: { need: undefined } } as const]),
    ],
  };
}

/** Undefined where the lock does not take one key that opens nothing else. */
export function codeForKey(
  game: Game,
  need: LockNeed,
  item: ItemOf<'lock'>,
  fresh: Fresh,
  spots: Spots,
): RemedyWith<'codeForKey'> | undefined {
  const { node } = need;
  const rules = fastenerType(item.type);
  const keys = linksTo(game, node.id).filter(({ from }) => game.nodes.get(from)?.kind === 'key');
  const [own, ...others] = keys;
  const key = own && game.nodes.get(own.from);
  if (!own || others.length > 0 || key?.kind !== 'key' || rules.opensWith !== 'code') return undefined;
  if ([...game.links.values()].some(({ from, to }) => from === key.id && to !== node.id)) return undefined;
  const code = newCode(item, item, codesBeside(game, node.id), node.id);
  if (!code) return undefined;
  const tag = fresh.newId();
  const nodes: GameNode[] = [
    {
      id: tag,
      kind: 'clue',
      ...tagWords(game, node, item.type, code),
      answer: rules.write(code),
      ...(key.in === undefined ? {} : { in: key.in }),
      ...(key.atMinute === undefined ? {} : { atMinute: key.atMinute }),
      ...(key.need === undefined ? {} : { need: key.need }),
    },
  ];
  const into = linksTo(game, key.id);
  return {
    code: 'codeForKey',
    values: {
      fastener: node.id,
      type: item.type,
      item: item.id,
      code: rules.write(code),
      key: key.id,
      tag,
    },
    edits: [
      { type: 'unlink', ids: [own.id] },
      {
        type: 'add',
        nodes,
        links: [
          ...into.map(({ from }) => ({ id: fresh.newId(), from, to: tag })),
          { id: fresh.newId(), from: tag, to: node.id },
        ],
        positions: spots.beside(node.on, nodes),
      },
      { type: 'leaveOut', ids: [key.id], leftOut: true },
      asLock(game, node.id, item, rules.write(code)),
    ],
  };
}

/** Symbols of a code that nothing leads to yet, where a lock says nothing of its length. Common practice, no source. */
const USUAL_LENGTH = 4;
const DRAWS = 60;

function newCode(
  item: ItemOf<'lock'>,
  hardware: Hardware,
  avoid: ReadonlySet<string>,
  key: string,
): readonly string[] | undefined {
  const rules = fastenerType(item.type);
  const pick = picksFor(key);
  for (let draw = 0; draw < DRAWS; draw++) {
    for (const length of [rules.length(hardware) ?? USUAL_LENGTH, 3]) {
      const code = rules.draw(pick, length, hardware);
      const isGood = code.length > 0 && rules.misfits(code, hardware).length === 0;
      if (isGood && !avoid.has(rules.write(code))) return code;
    }
  }
  return undefined;
}
