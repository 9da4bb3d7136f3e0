import { describe, expect, it } from 'vitest';
import { IN_COLOUR, IN_GREY } from '../../src/sheets/colour.ts';
import type { AreaMark, Drawing, LineMark, Mark, TextMark } from '../../src/sheets/drawing.ts';
import { paperOf } from '../../src/sheets/paper.ts';
import { sizeOfPages, svgOf, svgOfPages } from '../../src/sheets/svg.ts';

const text: TextMark = {
  mark: 'text',
  role: 'name',
  text: 'Green tin',
  x: 40,
  y: 50,
  align: 'start',
  width: 42,
  size: 9,
  weight: 'regular',
  family: 'words',
  ink: 'ink',
};

const line: LineMark = {
  mark: 'line',
  role: 'link',
  points: [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 20 },
  ],
  width: 1,
  ink: 'second',
};

const page = (...marks: readonly Mark[]): Drawing => ({ ...paperOf('A4', 'portrait'), marks });
const colour = (...marks: readonly Mark[]) => svgOf(page(...marks), { colour: true });
const paths = (svg: string) => [...svg.matchAll(/<path d="([^"]*)"/g)].map(([, d]) => d);

describe('a drawing as SVG', () => {
  it('is as large as the paper: ISO 216 and ANSI/ASME Y14.1, in millimetres', () => {
    expect(colour()).toContain('width="210mm" height="297mm" viewBox="0 0 595.2756 841.8898"');
    const letter = svgOf({ ...paperOf('Letter', 'landscape'), marks: [] }, { colour: true });
    expect(letter).toContain('width="279.4mm" height="215.9mm" viewBox="0 0 792 612"');
  });

  it('keeps every text whole, whatever signs it has', () => {
    const svg = colour({ ...text, text: '<b>"A" & B</b> ]]> \u0000\ud800' });
    expect(svg).toContain('>&lt;b&gt;&quot;A&quot; &amp; B&lt;/b&gt; ]]&gt; \ufffd\ufffd</text>');
  });

  it('needs no inline style, so that a strict policy lets it pass', () => {
    const svg = colour(text, line, { ...text, family: 'codes', weight: 'strong', spacing: 1, italic: true });
    expect(svg).not.toMatch(/ style=|<style|<script|href/);
    expect(svg).toContain('font-family="Atkinson Hyperlegible Mono, monospace"');
    expect(svg).toMatch(/font-weight="680" font-style="italic" letter-spacing="1"/);
  });

  it('fits a text to its measure only where the bundled typefaces lack a sign', () => {
    expect(colour(text)).not.toContain('textLength');
    expect(colour({ ...text, text: 'Tin \u{1f511}' })).toContain('textLength="42"');
    const narrow = (width: number) =>
      svgOf(page({ ...text, text: 'Tin \u{1f511}' }), { colour: true, naturalWidth: () => width });
    expect(narrow(30)).toContain('textLength="30"');
    expect(narrow(50)).toContain('textLength="42"');
  });

  it('lets a name that is written from right to left begin at its right and stay in its place', () => {
    const name = { ...text, text: '(א) תיבה!' };
    expect(colour(name)).toMatch(/text-anchor="end" direction="rtl"/);
    expect(colour({ ...name, align: 'end' })).not.toContain('text-anchor');
    expect(colour({ ...name, text: 'Tin תיבה' })).not.toContain('rtl');
  });

  it('turns corners in arcs that touch both sides', () => {
    expect(paths(colour({ ...line, rounded: 3 }))).toEqual(['M0 0L7 0A3 3 0 0 1 10 3L10 20']);
    const short: LineMark = { ...line, rounded: 30 };
    expect(paths(colour(short))).toEqual(['M0 0L5 0A5 5 0 0 1 10 5L10 20']);
  });

  it('makes a circle of a square whose corners are rounded by half its side', () => {
    const circle: AreaMark = {
      mark: 'area',
      role: 'step',
      corners: [
        { x: 0, y: 0 },
        { x: 8, y: 0 },
        { x: 8, y: 8 },
        { x: 0, y: 8 },
      ],
      rounded: 4,
      fill: 'ink',
    };
    expect(paths(colour(circle))).toEqual([
      'M0 4A4 4 0 0 1 4 0L4 0A4 4 0 0 1 8 4L8 4A4 4 0 0 1 4 8L4 8A4 4 0 0 1 0 4Z',
    ]);
  });

  it('puts a casing under its line, and the head on its last point', () => {
    const [casing, drawn, head] = paths(colour({ ...line, casing: 2, arrow: true, dash: [2, 1] }));
    expect(drawn).toBe('M0 0L10 0L10 20');
    expect(casing).toBe('M1.5 0L10 0L10 18.5');
    expect(head).toBe('M7.24 15.4L10 20L12.76 15.4');
    const svg = colour({ ...line, casing: 2, arrow: true, dash: [2, 1] });
    expect(svg.indexOf('stroke-width="5"')).toBeLessThan(svg.indexOf('stroke-width="1"'));
    expect(svg.match(/stroke-dasharray="2 1"/g)).toHaveLength(1);
  });

  it('survives lines of one point, and of the same point twice', () => {
    const spot = { x: 5, y: 5 };
    expect(paths(colour({ ...line, points: [spot], arrow: true, rounded: 3 }))).toEqual(['M5 5']);
    expect(paths(colour({ ...line, points: [spot, spot, spot], arrow: true, rounded: 3 }))).toEqual([
      'M5 5L5 5L5 5',
    ]);
  });

  it('has only greys when it is grey', () => {
    const marks: Mark[] = [text, { ...line, ink: 'stop' }, { ...line, ink: 'metal' }];
    const used = (svg: string) => new Set(svg.match(/#[0-9a-f]{6}/g));
    expect(used(svgOf(page(...marks), { colour: false }))).toEqual(
      new Set([IN_GREY.paper, IN_GREY.ink, IN_GREY.stop, IN_GREY.metal]),
    );
    expect(used(colour(...marks))).toEqual(
      new Set([IN_COLOUR.paper, IN_COLOUR.ink, IN_COLOUR.stop, IN_COLOUR.metal]),
    );
  });

  it('holds several pages below one another, each true to size', () => {
    const pages = [page(text), { ...paperOf('A4', 'landscape'), marks: [line] }];
    const svg = svgOfPages(pages, { colour: true, title: 'Tin & key', css: 'text > tspan {}' });
    const { width, height } = sizeOfPages(pages);
    expect(width).toBeCloseTo((297 / 25.4) * 72, 6);
    expect(height).toBeCloseTo(((297 + 210) / 25.4) * 72 + 12, 6);
    expect(svg).toContain('<title>Tin &amp; key</title><style>text &gt; tspan {}</style>');
    expect(svg).toContain('translate(0 853.8898)');
    expect(svg.match(/<rect /g)).toHaveLength(2);
  });
});
