/** The pages of the facilitator map from what it says and where everything is. Without the foot, which knows how many pages there are in all. */
import { rowOf } from '../../engine/rows.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { Side } from '../../map/layout.ts';
import { continuedFrom, continuedOn, NUMBERS_SAID, notBeside } from '../../words/sheet-map.ts';
import type { Drawing, Mark, Spot } from '../drawing.ts';
import { FOOT_HEIGHT } from '../foot.ts';
import { moved, movedDown, rule } from '../marks.ts';
import type { Paper } from '../paper.ts';
import type { LayoutOptions } from '../sheet.ts';
import { lockSign, type SignName } from '../signs.ts';
import type { Elsewhere, Tray } from './content.ts';
import type { DrawableContent } from './content-of.ts';
import { headingMarks, headingOf } from './draw/heading.ts';
import { legendLines, legendUses, type Uses } from './draw/legend.ts';
import { lineMarks } from './draw/lines.ts';
import { barFigure } from './measure/bar.ts';
import { noteFigure } from './measure/note.ts';
import type { Line } from './measure/pieces.ts';
import { type Continuation, trayFigure } from './measure/tray.ts';
import type { Frame, MapPlan, PlannedPage, PlannedPart } from './plan.ts';

/** From line to line of the legend, and between it and the map. */
const LEGEND_LINE = 13.5;
const HEAD_GAP = 9;
/** Half of the thickest wall: what stands at the margin prints nothing beyond it. */
const WALL = 1.2;

/** Room for the map on the paper: as much is kept at the top as heading and legend can ever take there. */
export function frameOf(content: DrawableContent, options: LayoutOptions, paper: Paper): Frame {
  const { facts } = content;
  const heading = headingOf(facts.assessment, options);
  const width = paper.width - 2 * paper.margin;
  const all = usesAtMost(facts.assessment, options);
  const legend = (remarks: readonly string[]) =>
    legendLines(all, heading.teams, remarks, width).length * LEGEND_LINE + HEAD_GAP;
  const widest = [...content.numbers.values()].sort((a, b) => b - a);
  const remarks = [heading.leftOut, options.rescue ? notBeside(widest.slice(0, NUMBERS_SAID)) : ''];
  return {
    width: paper.width,
    height: paper.height - FOOT_HEIGHT,
    margin: paper.margin + WALL,
    headFirst: headingMarks(heading, 0, width, true).height + legend(said(remarks)),
    headOther: headingMarks(heading, 0, width, false).height + legend([]),
  };
}

const said = (texts: readonly string[]) => texts.filter((text) => text !== '');

function usesAtMost({ game, network, measures }: Assessment, options: LayoutOptions): Uses {
  const signs = new Set<SignName>();
  for (const id of network.index.keys()) {
    const node = game.nodes.get(id);
    if (node?.kind === 'fastener') signs.add(lockSign(node.type));
    else if (
      node &&
      (node.kind === 'key' || node.kind === 'clue' || node.kind === 'tool' || node.kind === 'prize')
    )
      signs.add(node.kind);
  }
  return {
    signs,
    hasPlaces: true,
    hasBoxes: true,
    hasSteps: measures.steps > 0,
    hasUnreached: [...network.index.values()].some((node) => measures.reached[node] !== 1),
    hasHidden: true,
    hasHasps: [...network.index.values()].some((node) => rowOf(network.fasteners, node).length > 1),
    hasTicks: options.ticks,
    told: measures.steps,
  };
}

export function drawMap(
  content: DrawableContent,
  plan: MapPlan,
  options: LayoutOptions,
  paper: Paper,
): Drawing[] {
  const { facts } = content;
  const heading = headingOf(facts.assessment, options);
  const width = paper.width - 2 * paper.margin;
  const continuations = continuationsOf(plan);
  const steps = plan.unplaced.flatMap((note) => note.steps.map(facts.number)).sort((a, b) => a - b);
  return plan.pages.map((page, i) => {
    const marks = pageMarks(content, plan, page, continuations);
    const head = headingMarks(heading, paper.margin, width, i === 0);
    const remarks = i === 0 ? said([heading.leftOut, steps.length > 0 ? notBeside(steps) : '']) : [];
    const legend = legendLines(legendUses(marks), heading.teams, remarks, width);
    return {
      width: paper.width,
      height: paper.height,
      marks: [
        ...head.marks.map((mark) => movedDown(mark, paper.margin)),
        ...legendMarks(legend, paper.margin, paper.margin + head.height),
        ...halfRule(page, paper),
        ...marks,
      ],
    };
  });
}

function legendMarks(lines: readonly Line[], x: number, top: number): Mark[] {
  return lines.flatMap((line, i) => line.marks.map((mark) => moved(mark, x, top + (i + 0.5) * LEGEND_LINE)));
}

/** Between the halves of a book. */
function halfRule({ parts }: PlannedPage, paper: Paper): Mark[] {
  const [left, right] = parts;
  if (!left || !right) return [];
  const x = (left.x + left.width + right.x) / 2;
  const tops = parts.flatMap(({ bars, trays }) => [...bars, ...trays].map(({ y }) => y));
  const top = Math.min(...tops, paper.height / 2);
  return [rule({ x, y: top }, { x, y: paper.height - paper.margin - FOOT_HEIGHT }, 0.8, 'hair', [1, 3])];
}

function pageMarks(
  content: DrawableContent,
  plan: MapPlan,
  page: PlannedPage,
  continuations: ReadonlyMap<Tray, Continuation>,
): Mark[] {
  return page.parts.flatMap((part) => partMarks(content, plan, part, continuations));
}

function partMarks(
  { facts }: DrawableContent,
  { told }: MapPlan,
  { metrics, bars, trays, lines, notes }: PlannedPart,
  continuations: ReadonlyMap<Tray, Continuation>,
): Mark[] {
  const { size, trayWidth, barWidth, noteWidth } = metrics;
  const reach = new Map<string, number>();
  const marks: Mark[] = [];
  const add = (from: readonly Mark[], at: Spot) => {
    for (const mark of from) marks.push(moved(mark, at.x, at.y));
  };
  for (const { tray, side, x, y } of trays) {
    const continuation = continuations.get(tray);
    const figure = trayFigure(facts, tray, side, size, trayWidth, told, continuation);
    for (const [id, at] of figure.reach) reach.set(id, x + at);
    add(figure.marks, { x, y });
  }
  for (const bar of bars) add(barFigure(facts, bar.id, size, barWidth, told.get(bar.id) ?? []).marks, bar);
  marks.push(...lineMarks(lines, (id) => reach.get(id)));
  for (const placed of notes) add(noteFigure(facts, placed.note, size, noteWidth).marks, placed);
  return marks;
}

interface Located {
  readonly tray: Tray;
  /** Rows of the whole before it. */
  readonly before: number;
  readonly page: number;
  readonly side: Side | undefined;
}

/** Where each part of a tray that was cut goes on. */
function continuationsOf({ pages }: MapPlan): Map<Tray, Continuation> {
  const parts = new Map<string, Located[]>();
  for (const [i, page] of pages.entries()) {
    for (const [h, part] of page.parts.entries()) {
      const side = page.parts.length > 1 ? (h === 0 ? 'left' : 'right') : undefined;
      for (const { tray } of part.trays) {
        if (!tray.cutFrom) continue;
        const { whole, before } = tray.cutFrom;
        const list = parts.get(whole) ?? [];
        list.push({ tray, before, page: i + 1, side });
        parts.set(whole, list);
      }
    }
  }
  const found = new Map<Tray, Continuation>();
  for (const list of parts.values()) {
    list.sort((a, b) => a.before - b.before);
    for (const [i, part] of list.entries()) {
      found.set(part.tray, {
        from: continuedFrom(placeOf(part, list[i - 1])),
        on: continuedOn(placeOf(part, list[i + 1])),
      });
    }
  }
  return found;
}

function placeOf(here: Located, there: Located | undefined): Elsewhere | undefined {
  if (!there) return undefined;
  if (there.page !== here.page) return { page: there.page };
  return there.side !== undefined && there.side !== here.side ? { half: there.side } : undefined;
}
