/** Faults of single pages that are so whatever the page is about: overlaps of what is read, edges, sizes, texts covered or cut. */
import { textWidth } from '../../../src/type/text.ts';
import { type Box, grown, holds, inside, lengthOf, markBox, meet } from './boxes.ts';
import type { Fault } from './fault.ts';
import { type Page, spotText } from './page.ts';

/** 10 mm, in points. */
export const EDGE = (10 * 72) / 25.4;
export const SMALLEST = 7.5;

interface Small {
  readonly label: string;
  readonly box: Box;
  readonly of: string | undefined;
  readonly kind: 'text' | 'number' | 'step' | 'tick' | 'plate' | 'sign';
}

function smallThings({ texts, areas, signs }: Page): Small[] {
  const small: Small[] = texts.map(({ mark, box }) => ({
    label: `'${mark.text}' (${mark.role})`,
    box,
    of: mark.of,
    kind: mark.role === 'step' ? 'number' : 'text',
  }));
  for (const { mark, box } of areas) {
    const kind =
      mark.role === 'step' || mark.role === 'tick' || mark.role === 'plate' ? mark.role : undefined;
    if (kind) small.push({ label: `${kind} of ${mark.of ?? 'nothing'}`, box, of: mark.of, kind });
  }
  for (const { mark, box } of signs) {
    small.push({
      label: `sign ${mark.sign} of ${mark.of ?? 'nothing'}`,
      box: grown(box, -0.1 * mark.size),
      of: mark.of,
      kind: 'sign',
    });
  }
  return small;
}

/** What of one node is meant to stand upon each other, and what is written on a plate. */
function belongTogether(a: Small, b: Small): boolean {
  const [plate, other] = a.kind === 'plate' ? [a, b] : [b, a];
  if (plate.kind === 'plate' && other.kind === 'text' && holds(plate.box, other.box)) return true;
  // The number of a team in its box.
  const [tick, number] = a.kind === 'tick' ? [a, b] : [b, a];
  if (tick.kind === 'tick' && number.kind === 'text' && holds(tick.box, number.box)) return true;
  if (a.of !== b.of) return false;
  const kinds = new Set([a.kind, b.kind]);
  return kinds.has('plate') ? kinds.size > 1 : kinds.has('step') && kinds.has('number');
}

function overlaps(page: Page): Fault[] {
  const small = smallThings(page).sort((a, b) => a.box.top - b.box.top);
  return small.flatMap((a, i) => {
    const faults: Fault[] = [];
    for (let j = i + 1; j < small.length; j++) {
      const b = small[j];
      if (!b || b.box.top >= a.box.bottom) break;
      if (meet(a.box, b.box, 0.3) && !belongTogether(a, b)) {
        faults.push({
          kind: 'overlap',
          page: page.number,
          what: `${a.label} and ${b.label} ${spotText(b.box)}`,
        });
      }
    }
    return faults;
  });
}

function edges({ drawing, number }: Page): Fault[] {
  const free = { left: EDGE, top: EDGE, right: drawing.width - EDGE, bottom: drawing.height - EDGE };
  return drawing.marks.flatMap((mark): Fault[] => {
    const box = markBox(mark);
    const over = Math.max(
      free.left - box.left,
      free.top - box.top,
      box.right - free.right,
      box.bottom - free.bottom,
    );
    if (over <= 0.1) return [];
    const label = mark.mark === 'text' ? `'${mark.text}'` : `${mark.mark} of ${mark.of ?? 'nothing'}`;
    return [
      { kind: 'too near the edge', page: number, what: `${label} by ${over.toFixed(1)} ${spotText(box)}` },
    ];
  });
}

function sizes({ texts, number }: Page): Fault[] {
  return texts
    .filter(({ mark }) => mark.size < SMALLEST - 1e-6)
    .map(({ mark }) => ({ kind: 'text too small', page: number, what: `'${mark.text}' ${mark.size}` }));
}

/** The width told must be the width drawn, or all that follows from it is wrong. */
function widths({ texts, number }: Page): Fault[] {
  return texts.flatMap(({ mark }): Fault[] => {
    const { text, size, weight, family, spacing = 0, width, italic = false } = mark;
    const real = textWidth(text, { size, weight, family, spacing, italic });
    if (width >= real - 0.05) return [];
    const what = `'${text}' told ${width.toFixed(2)}, is ${real.toFixed(2)}`;
    return [{ kind: 'text narrower than told', page: number, what }];
  });
}

function covered({ texts, areas, number }: Page): Fault[] {
  return texts.flatMap(({ mark, box, at }) =>
    areas
      .filter((area) => area.at > at && area.mark.fill !== undefined && meet(area.box, box, 0.3))
      .map(
        (area): Fault => ({
          kind: 'text covered',
          page: number,
          what: `'${mark.text}' by ${area.mark.role} of ${area.mark.of ?? 'nothing'} ${spotText(box)}`,
        }),
      ),
  );
}

/** Letters are not as tall as their line: this much of the box is left out above and below. */
const AIR = 0.08;

function linesThroughText({ texts, lines, areas, number }: Page): Fault[] {
  return texts.flatMap(({ mark: text, box, at }) => {
    // A wall behind the circle of a number, or behind a plate.
    const shield = Math.max(
      -1,
      ...areas
        .filter(
          ({ mark, ...area }) =>
            mark.fill !== undefined && area.at < at && holds(area.box, box, 0.05 * text.size),
        )
        .map((area) => area.at),
    );
    const core = {
      ...grown(box, -0.2),
      top: box.top + AIR * text.size,
      bottom: box.bottom - AIR * text.size,
    };
    return lines
      .filter((line) => line.at > shield && line.segments.some((segment) => inside(segment, core)))
      .map(
        ({ mark }): Fault => ({
          kind: 'line through text',
          page: number,
          what: `${mark.role} ${mark.links?.join(' ') ?? mark.of ?? ''} through '${text.text}' (${text.role}) ${spotText(box)}`,
        }),
      );
  });
}

/** Signs, numbers, boxes to tick and plates that are not an end of the line. `ends` gives the nodes that a line joins. */
export function linesThroughSigns(
  page: Page,
  ends: (links: readonly string[]) => ReadonlySet<string>,
): Fault[] {
  const things = smallThings(page).filter(({ kind }) => kind !== 'text' && kind !== 'number');
  return page.links.flatMap(({ mark, segments }) => {
    const own = ends(mark.links ?? []);
    return things
      .filter(({ of, kind }) => of === undefined || !own.has(of) || kind === 'tick')
      .filter(({ box }) =>
        segments.some((segment) => {
          const part = inside(segment, grown(box, -0.5));
          return part !== undefined && (part[1] - part[0]) * lengthOf(segment) > 0.5;
        }),
      )
      .map(
        ({ label, box }): Fault => ({
          kind: 'line through a sign',
          page: page.number,
          what: `${mark.links?.join(' ')} through ${label} ${spotText(box)}`,
        }),
      );
  });
}

/** All that can be said of any sheet. */
export function markFaults(page: Page): Fault[] {
  return [
    ...overlaps(page),
    ...edges(page),
    ...sizes(page),
    ...widths(page),
    ...covered(page),
    ...linesThroughText(page),
  ];
}

/** 'page n of m' on each, counted over the whole print run. */
export function pageNumberFaults(pages: readonly Page[]): Fault[] {
  return pages.flatMap(({ number, texts }): Fault[] => {
    const found = texts.flatMap(({ mark }) => {
      const match = /page (\d+) of (\d+)/i.exec(mark.text);
      return match ? [`${match[1]} of ${match[2]}`] : [];
    });
    const right = `${number} of ${pages.length}`;
    if (found.length === 1 && found[0] === right) return [];
    return [{ kind: 'page number', page: number, what: `says '${found.join(', ')}' and is ${right}` }];
  });
}
