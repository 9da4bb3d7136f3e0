/** What a link says at its ends where it is not drawn. */
import type { NodeId } from '../../../game/model.ts';
import { wrap } from '../../../type/text.ts';
import {
  elsewhere,
  inHolder,
  leadsTo,
  leadVerb,
  needed,
  source,
  sourceList,
} from '../../../words/sheet-map.ts';
import { waitsFor } from '../../../words/waits-for.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { broken, type Line, type Piece, signPiece, textLines, textPiece, together } from './pieces.ts';
import type { Type } from './type.ts';

const whereOf = ({ elsewhere: where }: Told) => (where ? elsewhere(where) : undefined);

/** '→ 7' behind the name of a thing: an arrow and the number, and after it on which page that is. */
function numberPieces(told: Told, number: number, of: NodeId, width: number, type: Type): Piece[] {
  const where = whereOf(told);
  const look = { role: 'reference', of, links: [told.link] } as const;
  const arrow = signPiece('leadsTo', type.size, 'ink', 0, of);
  const figure = textPiece(String(number), type.name, look, 0.12 * type.size);
  return [
    together([arrow, figure], 0.5 * type.size),
    ...(where === undefined ? [] : wrap(where, width, type.told)).map((part) =>
      textPiece(part, type.told, look, type.gap),
    ),
  ];
}

/** The steps that a thing is used in: those with a number as pieces, the others as texts. */
export function tellingsByNumber(
  facts: Facts,
  of: NodeId,
  told: readonly Told[],
  width: number,
  type: Type,
): { readonly numbers: readonly Piece[]; readonly others: readonly Told[] } {
  const others: Told[] = [];
  const numbers: { readonly number: number; readonly told: Told }[] = [];
  for (const one of told) {
    const number = one.otherEnd === 'to' ? facts.number(one.other) : 0;
    if (number > 0) numbers.push({ number, told: one });
    else others.push(one);
  }
  numbers.sort((a, b) => a.number - b.number);
  return { numbers: numbers.flatMap((one) => numberPieces(one.told, one.number, of, width, type)), others };
}

/** Before what `at` leads to. */
function verbOf(facts: Facts, at: NodeId, other: NodeId): string {
  const gives = facts.node(at)?.kind === 'puzzle' && facts.isHandedOver(other);
  return leadVerb(facts.node(other)?.kind ?? 'puzzle', gives);
}

/** A lock is spoken of by its box. */
function targetOf(
  facts: Facts,
  other: NodeId,
): { readonly name: string; readonly holder: string | undefined } {
  const node = facts.node(other);
  if (node?.kind === 'fastener') return { name: facts.name(node.on), holder: undefined };
  return { name: facts.name(other), holder: facts.holderName(other) };
}

/** What leads on from a puzzle, or what it waits for and has a number: 'opens 11: Oven safe', 'from 10'. Undefined for a thing that it needs. */
function stepTelling(facts: Facts, at: NodeId, told: Told): string | undefined {
  const { other, otherEnd } = told;
  if (otherEnd === 'to') return targetTelling(facts, at, told);
  if (facts.number(other) === 0 || facts.node(other)?.kind === 'clue') return undefined;
  return sourceList([sourceOf(facts, at, told)]).join('');
}

/** 'opens 11: Oven safe', 'needed to read Tiny label (Cotton box), for 18'. */
function targetTelling(facts: Facts, at: NodeId, told: Told): string {
  const number = facts.number(told.other);
  const { name, holder } = targetOf(facts, told.other);
  const verb = verbOf(facts, at, told.other);
  const isGiven = facts.node(at)?.kind === 'puzzle' && facts.isHandedOver(told.other);
  const uses = number > 0 || isGiven ? [] : facts.usedFor(told.other);
  return leadsTo(verb, number, name, number > 0 ? undefined : holder, whereOf(told), uses);
}

interface Telling {
  readonly text: string;
  readonly told: readonly Told[];
}

/** So many puzzles at one end are told by their numbers alone: their names would make a bar as long as a column. */
const MANY = 3;

/** Puzzles before or after this one, in the order of play, where they are many; else none. */
function manyPuzzles(facts: Facts, told: readonly Told[], end: Told['otherEnd']): readonly Told[] {
  const puzzles = told.filter(
    ({ other, otherEnd }) =>
      otherEnd === end && facts.node(other)?.kind === 'puzzle' && facts.number(other) > 0,
  );
  if (puzzles.length < MANY) return [];
  return puzzles.sort((a, b) => facts.number(a.other) - facts.number(b.other));
}

/** 'from 2 (page 1), 7, 12', 'needed for 20, 25 (page 2)'. */
function manyTelling(facts: Facts, at: NodeId, many: readonly Told[]): string {
  const sources = many.map((one) => {
    const { verb, text } = sourceOf(facts, at, one);
    return { verb: one.otherEnd === 'to' ? verbOf(facts, at, one.other) : verb, text };
  });
  return sourceList(sources).join(' ');
}

/** At a puzzle: '+ Spice chart, Price list (Notice board)', 'opens 11: Oven safe'. Things that lie together are told together. */
function puzzleTellings(facts: Facts, at: NodeId, told: readonly Told[]): Telling[] {
  const groups: { readonly text: string | undefined; readonly told: Told[] }[] = [];
  const byHolder = new Map<string, Told[]>();
  const [from, to] = [manyPuzzles(facts, told, 'from'), manyPuzzles(facts, told, 'to')];
  for (const one of told) {
    const many = [from, to].find((all) => all.includes(one));
    if (many) {
      if (many[0] === one) groups.push({ text: manyTelling(facts, at, many), told: [...many] });
      continue;
    }
    const text = stepTelling(facts, at, one);
    const key = JSON.stringify([facts.holder(one.other), whereOf(one)]);
    const before = text === undefined ? byHolder.get(key) : undefined;
    if (before) {
      before.push(one);
      continue;
    }
    const group = { text, told: [one] };
    if (text === undefined) byHolder.set(key, group.told);
    groups.push(group);
  }
  return groups.map(({ text, told: all }) => {
    const [first] = all;
    const names = all.map(({ other }) => facts.name(other));
    return {
      text: text ?? (first ? needed(names, facts.holderName(first.other), whereOf(first)) : ''),
      told: all,
    };
  });
}

/** What a puzzle tells, in italics, each from a new line. */
export function puzzleLines(
  facts: Facts,
  told: readonly Told[],
  of: NodeId,
  width: number,
  type: Type,
): Line[] {
  return puzzleTellings(facts, of, told).flatMap(({ text, told: all }) =>
    textLines(text, width, type.told, {
      role: 'reference',
      ink: 'ink',
      of,
      links: all.map(({ link }) => link),
    }),
  );
}

interface Source {
  readonly verb: string;
  readonly text: string;
}

/** What a step or thing waits for. Where one has to be in hand for the other, it says since when. */
function sourceOf(facts: Facts, at: NodeId, told: Told): Source {
  const { other } = told;
  const kind = facts.node(other)?.kind ?? 'puzzle';
  const isHandedOver = kind === 'puzzle' && facts.isHandedOver(at);
  const verb = waitsFor(facts.node(at)?.kind ?? 'puzzle', kind, isHandedOver);
  const after = kind === 'tool' || facts.node(at)?.kind === 'clue' ? facts.inHandAfter(other) : 0;
  const text = source(facts.number(other), facts.name(other), facts.holderName(other), after, whereOf(told));
  return { verb, text };
}

/** The lock shows the key's name where others show a code: only where it lies is left to say. */
function isKeyOf(facts: Facts, at: NodeId, other: NodeId): boolean {
  return facts.node(at)?.kind === 'fastener' && facts.node(other)?.kind === 'key';
}

/** 'in Miller's satchel', 'needed to read Tiny label (Cotton box)'. */
function plainTelling(facts: Facts, at: NodeId, told: Told): string {
  if (told.otherEnd === 'from') return inHolder(facts.holderName(told.other), whereOf(told));
  return targetTelling(facts, at, told);
}

/** At all but puzzles: 'from Cube scrap (Lens tin), Garnet scrap (Iron box)', and on lines of their own 'needed to read Tiny label'. */
export function plainLines(
  facts: Facts,
  at: NodeId,
  told: readonly Told[],
  width: number,
  type: Type,
): Line[] {
  const sources: { readonly source: Source; readonly told: Told }[] = [];
  const others: Told[] = [];
  for (const one of told) {
    if (one.otherEnd === 'to' || isKeyOf(facts, at, one.other)) others.push(one);
    else sources.push({ source: sourceOf(facts, at, one), told: one });
  }
  // What is told in one way stands together.
  const verbs = [...new Set(sources.map(({ source: { verb } }) => verb))];
  sources.sort((a, b) => verbs.indexOf(a.source.verb) - verbs.indexOf(b.source.verb));
  const pieces = sourceList(sources.map((one) => one.source)).flatMap((text, i) =>
    wrap(text, width, type.told).map((part) => {
      const link = sources[i]?.told.link;
      const links = link === undefined ? [] : [link];
      return textPiece(part, type.told, { role: 'reference', of: at, links }, type.gap);
    }),
  );
  return [
    ...broken(pieces, width),
    ...tellingLines(others, (one) => plainTelling(facts, at, one), at, width, type),
  ];
}

/** In italics, each from a new line. */
export function tellingLines(
  told: readonly Told[],
  say: (told: Told) => string,
  of: NodeId,
  width: number,
  type: Type,
): Line[] {
  return told.flatMap((one) => {
    const text = say(one);
    return text === ''
      ? []
      : textLines(text, width, type.told, { role: 'reference', ink: 'ink', of, links: [one.link] });
  });
}
