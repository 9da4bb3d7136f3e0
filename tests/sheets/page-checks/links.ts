/** Every link of the game is on the pages: as a line from the one end to the other, or in words at both; never both ways. */
import type { GameLink, LinkId, NodeId } from '../../../src/game/model.ts';
import type { Spot } from '../../../src/sheets/drawing.ts';
import { type Box, distanceTo, type Segment } from './boxes.ts';
import type { Fault } from './fault.ts';
import type { Page } from './page.ts';
import { called, type Used } from './used.ts';

/** A line ends this near to what it means. */
const REACH = 7;
/** Ends of the parts of one line lie this near to each other. */
const JOINED = 1;

/** Distance from the outline of a box. */
function fromOutline(spot: Spot, box: Box): number {
  const outside = distanceTo(spot, box);
  if (outside > 0) return outside;
  return Math.min(spot.x - box.left, box.right - spot.x, spot.y - box.top, box.bottom - spot.y);
}

/** The spot is at the row, plate, bar or box of the node. */
function isAt(page: Page, id: NodeId, spot: Spot): boolean {
  const atArea = page.areas.some(({ mark, box }) => {
    if (mark.of !== id) return false;
    const isTray = mark.role === 'puzzle' || mark.role === 'container' || mark.role === 'place';
    return isTray ? fromOutline(spot, box) <= 3 : distanceTo(spot, box) <= REACH;
  });
  return (
    atArea ||
    [...page.texts, ...page.signs].some(
      ({ mark, box }) =>
        mark.of === id && spot.y >= box.top - 2 && spot.y <= box.bottom + 2 && distanceTo(spot, box) <= REACH,
    )
  );
}

function touch(a: Segment, b: Segment): boolean {
  const nearTo = (spot: Spot, { from, to }: Segment) =>
    distanceTo(spot, {
      left: Math.min(from.x, to.x),
      top: Math.min(from.y, to.y),
      right: Math.max(from.x, to.x),
      bottom: Math.max(from.y, to.y),
    }) <= JOINED;
  return nearTo(a.from, b) || nearTo(a.to, b) || nearTo(b.from, a) || nearTo(b.to, a);
}

/** The parts are one line from end to end, whatever marks they are drawn as. */
function isJoined(segments: readonly Segment[]): boolean {
  const [first, ...others] = segments;
  if (!first) return false;
  const reached = [first];
  const left = new Set(others);
  for (const at of reached) {
    for (const other of left) {
      if (!touch(at, other)) continue;
      left.delete(other);
      reached.push(other);
    }
  }
  return left.size === 0;
}

function drawnFaults(page: Page, used: Used, link: GameLink): Fault[] {
  const lines = page.links.filter(({ mark }) => mark.links?.includes(link.id));
  const segments = lines.flatMap((line) => line.segments);
  const begins = lines.some(({ segments: [first] }) => first && isAt(page, link.from, first.from));
  const ends = lines.some(({ segments: parts }) => {
    const last = parts.at(-1);
    return last !== undefined && isAt(page, link.to, last.to);
  });
  const wrong = [
    ...(begins ? [] : [`begins away from ${called(used, link.from)}`]),
    ...(ends ? [] : [`ends away from ${called(used, link.to)}`]),
    ...(isJoined(segments) ? [] : ['is in pieces']),
    ...(lines.some(({ mark }) => mark.arrow) ? [] : ['has no arrow']),
  ];
  return wrong.map((what) => ({
    kind: 'line without its end',
    page: page.number,
    what: `${link.id} ${what}`,
  }));
}

/** Letters and digits alone, so that line breaks and marks of direction do not count. */
export const letters = (text: string) => text.replace(/[\s\p{Cf}]/gu, '');

/** What a node is called in a reference: a lock by its box too. */
function namesOf(used: Used, id: NodeId): string[] {
  const node = used.nodes.get(id);
  const names = [node?.name ?? ''];
  if (node?.kind === 'fastener')
    return [...names, used.nodes.get(node.on)?.name ?? ''].map(letters).filter(Boolean);
  return names.map(letters);
}

/** What the references at one end say: the number or the name of the other end, and its page when that is another one. */
function tellingFaults(
  pages: readonly Page[],
  used: Used,
  link: GameLink,
  at: NodeId,
  other: NodeId,
): Fault[] {
  return pages.flatMap((page): Fault[] => {
    const texts = page.texts.filter(({ mark }) => mark.of === at && mark.links?.includes(link.id));
    if (texts.length === 0) return [];
    const said = texts.map(({ mark }) => mark.text).join(' ');
    const hasNumber = (number: number | undefined) =>
      number !== undefined && new RegExp(`(?<!\\d)${number}(?!\\d)`).test(said);
    const names =
      hasNumber(used.numbers.get(other)) || namesOf(used, other).some((name) => letters(said).includes(name));
    const wrong = names ? [] : [`names neither number nor name of ${called(used, other)}`];
    const at2 = pages.filter(({ texts: all }) => all.some(({ mark }) => mark.of === other));
    if (!at2.includes(page) && !at2.some(({ number }) => hasNumber(number))) {
      wrong.push(`does not say on which page ${called(used, other)} is`);
    }
    return wrong.map((what) => ({
      kind: 'link told wrong',
      page: page.number,
      what: `${link.id} '${said}' ${what}`,
    }));
  });
}

function linkFaultsOf(pages: readonly Page[], used: Used, link: GameLink): Fault[] {
  const drawn = pages.filter(({ links }) => links.some(({ mark }) => mark.links?.includes(link.id)));
  const isTold = (id: NodeId) =>
    pages.some(({ texts }) => texts.some(({ mark }) => mark.of === id && mark.links?.includes(link.id)));
  const told = [link.from, link.to].filter(isTold);
  const what = `${link.id}: ${called(used, link.from)} to ${called(used, link.to)}`;
  const page = drawn[0]?.number ?? 0;
  if (drawn.length === 0 && told.length === 0) return [{ kind: 'link neither drawn nor told', page, what }];
  if (drawn.length === 0 && told.length === 1) {
    return [
      {
        kind: 'link told at one end',
        page,
        what: `${what}, not at ${link.from === told[0] ? link.to : link.from}`,
      },
    ];
  }
  if (drawn.length > 0 && told.length > 0) return [{ kind: 'link drawn and told', page, what }];
  if (drawn.length > 0) return drawn.flatMap((one) => drawnFaults(one, used, link));
  return [
    ...tellingFaults(pages, used, link, link.from, link.to),
    ...tellingFaults(pages, used, link, link.to, link.from),
  ];
}

export function linkFaults(pages: readonly Page[], used: Used): Fault[] {
  const shown = new Set<LinkId>();
  for (const { links, texts } of pages) {
    for (const { mark } of [...links, ...texts]) for (const id of mark.links ?? []) shown.add(id);
  }
  const unknown = [...shown].filter((id) => !used.links.has(id));
  return [
    ...unknown.map((id): Fault => ({ kind: 'unknown link', page: 0, what: id })),
    ...[...used.links.values()].flatMap((link) => linkFaultsOf(pages, used, link)),
  ];
}

export interface LinkCounts {
  readonly drawn: number;
  readonly told: number;
}

export function countLinks(pages: readonly Page[], used: Used): LinkCounts {
  const drawn = new Set(pages.flatMap(({ links }) => links.flatMap(({ mark }) => mark.links ?? [])));
  return { drawn: drawn.size, told: [...used.links.keys()].filter((id) => !drawn.has(id)).length };
}
