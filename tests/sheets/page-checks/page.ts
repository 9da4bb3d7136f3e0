/** A drawing sorted for checking: marks by what they are, each with its box and its place in the order of painting. */
import type { AreaMark, Drawing, LineMark, SignMark, TextMark } from '../../../src/sheets/drawing.ts';
import { areaBox, type Box, type Segment, segmentsOf, signBox, textBox } from './boxes.ts';

interface Painted<M> {
  readonly mark: M;
  readonly box: Box;
  /** What is painted later covers what was there. */
  readonly at: number;
}

export type PaintedText = Painted<TextMark>;
export type PaintedArea = Painted<AreaMark>;
export type PaintedSign = Painted<SignMark>;
export interface PaintedLine {
  readonly mark: LineMark;
  readonly segments: readonly Segment[];
  readonly at: number;
}

export interface Page {
  /** From 1. */
  readonly number: number;
  readonly drawing: Drawing;
  readonly texts: readonly PaintedText[];
  readonly areas: readonly PaintedArea[];
  readonly signs: readonly PaintedSign[];
  readonly lines: readonly PaintedLine[];
  /** What holds things, and bars. */
  readonly trays: readonly PaintedArea[];
  readonly links: readonly PaintedLine[];
}

const TRAYS = new Set(['place', 'container', 'group', 'puzzle']);

export function pageOf(drawing: Drawing, number: number): Page {
  const texts: PaintedText[] = [];
  const areas: PaintedArea[] = [];
  const signs: PaintedSign[] = [];
  const lines: PaintedLine[] = [];
  for (const [at, mark] of drawing.marks.entries()) {
    switch (mark.mark) {
      case 'text':
        texts.push({ mark, at, box: textBox(mark) });
        break;
      case 'area':
        areas.push({ mark, at, box: areaBox(mark) });
        break;
      case 'sign':
        signs.push({ mark, at, box: signBox(mark) });
        break;
      case 'line':
        lines.push({ mark, at, segments: segmentsOf(mark.points) });
        break;
    }
  }
  return {
    number,
    drawing,
    texts,
    areas,
    signs,
    lines,
    trays: areas.filter(({ mark }) => TRAYS.has(mark.role)),
    links: lines.filter(({ mark }) => mark.role === 'link'),
  };
}

/** A spot for a report. */
export function spotText({ left, top }: Box): string {
  return `at ${Math.round(left)}, ${Math.round(top)}`;
}
