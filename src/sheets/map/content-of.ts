/** What the facilitator map of a game says, with measuring and drawing from one description of each row and bar. */
import type { Assessment } from '../../findings/assess.ts';
import { byCodePoint } from '../../game/compare.ts';
import type { NodeId } from '../../game/model.ts';
import { sidesOf } from '../../map/arrange.ts';
import { playNumbers } from '../../map/place-missing.ts';
import { byFirstUse } from '../first-use.ts';
import type { LayoutOptions } from '../sheet.ts';
import { type Facts, factsOf } from './content/facts.ts';
import { rescueNotes } from './content/rescue.ts';
import { cutTray, traysOf } from './content/trays.ts';
import type { MapContent, PageLink } from './content.ts';
import { barFigure, barWidthFor } from './measure/bar.ts';
import { noteFigure } from './measure/note.ts';
import { trayMeasured } from './measure/tray.ts';

/** The same with what its rows and bars look up when they are drawn. */
export interface DrawableContent extends MapContent {
  readonly facts: Facts;
}

export function contentOf(assessment: Assessment, options: LayoutOptions): DrawableContent {
  const facts = factsOf(assessment, options);
  const numbers = playNumbers(assessment.network, assessment.measures);
  return {
    facts,
    bars: barsOf(assessment),
    trays: traysOf(assessment),
    links: linksOf(assessment),
    sides: sidesOf(assessment.game, numbers),
    numbers,
    notes: options.rescue ? rescueNotes(assessment) : [],
    measureBar: (id, { size, barWidth }, told) => barFigure(facts, id, size, barWidth, told.get(id) ?? []),
    measureTray: (tray, { size, trayWidth }, told) => trayMeasured(facts, tray, size, trayWidth, told),
    leastBarWidth: (id, size) => barWidthFor(facts, id, size),
    measureNote: (note, { size, noteWidth }) => noteFigure(facts, note, size, noteWidth).height,
    cut: cutTray,
  };
}

/** Puzzles in the order of play; those that are never reached last, by what they are needed for. */
function barsOf(assessment: Assessment): NodeId[] {
  const { network, measures, context } = assessment;
  const byUse = byFirstUse(assessment);
  const rank = (node: number) => measures.number[node] || Number.POSITIVE_INFINITY;
  return [...network.ids.keys()]
    .filter((node) => context.kindOf(node) === 'puzzle')
    .sort((a, b) => (rank(a) === rank(b) ? byUse(a, b) : rank(a) - rank(b)))
    .map(context.idOf);
}

function linksOf({ game, network }: Assessment): PageLink[] {
  const links: PageLink[] = [];
  for (const { id, from, to } of game.links.values()) {
    if (network.index.has(from) && network.index.has(to)) links.push({ id, from, to });
  }
  return links.sort((a, b) => byCodePoint(a.id, b.id));
}
