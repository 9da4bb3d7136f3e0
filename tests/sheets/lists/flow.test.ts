/** The paginator: nothing is lost, nothing stands outside the frame, headings keep company. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TextMark } from '../../../src/sheets/drawing.ts';
import { fewestPages, paginate, type Row, type Section, type Strip } from '../../../src/sheets/flow.ts';
import { textMark } from '../../../src/sheets/marks.ts';

const FRAME = { first: 100, others: 50, bottom: 300 };

const strip = (text: string, height = 10): Strip => ({
  height,
  marks: [textMark(text, { x: 0, y: 8 }, { size: 9 })],
});
const row = (text: string, lines = 1, before = 0): Row => ({
  before,
  cells: [Array.from({ length: lines }, (_, i) => strip(`${text}.${i}`))],
});

function textsOf(section: readonly Section[], heads?: Row): TextMark[][] {
  return paginate({ sections: section, ...(heads && { heads }) }, FRAME).map((page) =>
    page.filter((mark): mark is TextMark => mark.mark === 'text'),
  );
}

const said = (pages: readonly TextMark[][]) => pages.map((page) => page.map(({ text }) => text));

describe('fewer pages', () => {
  const rows = (count: number): Section[] => [
    { rows: Array.from({ length: count }, (_, i) => row(`${i}`, 1, 10)) },
  ];

  it('has rows closer where that saves a page', () => {
    // Ten rows with nine spaces of ten points fill the first page; at five points thirteen fit.
    expect(paginate({ sections: rows(12) }, FRAME)).toHaveLength(2);
    expect(fewestPages({ sections: rows(12) }, FRAME)).toHaveLength(1);
  });

  it('leaves them as they are where it saves none', () => {
    expect(fewestPages({ sections: rows(16) }, FRAME)).toEqual(paginate({ sections: rows(16) }, FRAME));
    expect(fewestPages({ sections: rows(8) }, FRAME)).toEqual(paginate({ sections: rows(8) }, FRAME));
  });
});

describe('the paginator', () => {
  it('makes a page even of nothing', () => {
    expect(paginate({ sections: [] }, FRAME)).toEqual([[]]);
  });

  it('begins lower on the first page, and drops the space above what comes first', () => {
    const [first, second] = textsOf([{ rows: [row('a', 20, 5), row('b', 1, 5)] }]);
    expect(first?.map(({ y }) => y)).toEqual(Array.from({ length: 20 }, (_, i) => 108 + 10 * i));
    expect(second?.map(({ y }) => y)).toEqual([58]);
  });

  it('tears no row that fits on a page', () => {
    expect(said(textsOf([{ rows: [row('a', 15), row('b', 8)] }]))).toEqual([
      row('a', 15).cells[0]?.map((_, i) => `a.${i}`),
      row('b', 8).cells[0]?.map((_, i) => `b.${i}`),
    ]);
  });

  it('tears a row that is taller than a page, each of its cells by itself, and what stands below it last', () => {
    const tall: Row = {
      before: 0,
      cells: [Array.from({ length: 50 }, (_, i) => strip(`left ${i}`)), [strip('right 0')]],
      below: [strip('below')],
    };
    const pages = said(textsOf([{ rows: [tall] }]));
    expect(pages.map((page) => page.length)).toEqual([21, 25, 6]);
    expect(pages[0]?.slice(-1)).toEqual(['right 0']);
    expect(pages[2]?.slice(-2)).toEqual(['left 49', 'below']);
  });

  it('places even a strip that no page can hold', () => {
    const huge: Row = {
      before: 0,
      cells: [[strip('huge', 1000)], [strip('beside')]],
      below: [strip('b', 900)],
    };
    expect(said(textsOf([{ rows: [huge, row('after')] }])).flat()).toEqual(
      expect.arrayContaining(['huge', 'beside', 'b', 'after.0']),
    );
  });

  it('repeats the heads of columns on every page, and the heading where its section goes on', () => {
    const section: Section = {
      heading: (continued) => row(continued ? 'Red tin, continued' : 'Red tin'),
      rows: [row('a', 12), row('b', 12)],
    };
    expect(said(textsOf([section], row('heads'))).map((page) => page.slice(0, 3))).toEqual([
      ['heads.0', 'Red tin.0', 'a.0'],
      ['heads.0', 'Red tin, continued.0', 'b.0'],
    ]);
  });

  it('leaves no heading alone at the foot of a page', () => {
    const section: Section = { heading: () => row('Red tin'), rows: [row('b', 10), row('c', 10)] };
    const pages = said(textsOf([{ rows: [row('a', 12)] }, section]));
    expect(pages[0]?.some((text) => text.startsWith('Red tin'))).toBe(false);
    expect(pages[1]?.slice(0, 2)).toEqual(['Red tin.0', 'b.0']);
  });

  it('draws a backdrop under each part, open where it goes on', () => {
    const parts: unknown[] = [];
    paginate(
      {
        sections: [
          {
            heading: () => row('Red tin', 1, 7),
            rows: [row('a', 12), row('b', 12)],
            padding: 5,
            backdrop: (part) => {
              parts.push(part);
              return [];
            },
          },
        ],
      },
      FRAME,
    );
    expect(parts).toEqual([
      { top: 100, bottom: 235, continued: false, continues: true },
      { top: 50, bottom: 185, continued: true, continues: false },
    ]);
  });

  it('loses nothing, keeps the order, and stays within the frame', () => {
    const sections = fc.array(
      fc.record({
        heading: fc.boolean(),
        padding: fc.nat(9),
        rows: fc.array(
          fc.record({ lines: fc.integer({ min: 1, max: 40 }), before: fc.nat(9), below: fc.nat(3) }),
          {
            maxLength: 9,
          },
        ),
      }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(sections, (plans) => {
        const made = plans.map(
          ({ heading, padding, rows }, s): Section => ({
            padding,
            ...(heading && { heading: () => row(`# ${s}`) }),
            rows: rows.map(({ lines, before, below }, r) => ({
              ...row(`${s}/${r}`, lines, before),
              below: Array.from({ length: below }, (_, i) => strip(`${s}/${r}.below ${i}`)),
            })),
          }),
        );
        const wanted = made.flatMap(({ rows }) =>
          rows.flatMap(({ cells, below }) =>
            [...cells.flat(), ...(below ?? [])].flatMap(({ marks }) =>
              marks.map((mark) => (mark.mark === 'text' ? mark.text : '')),
            ),
          ),
        );
        const pages = textsOf(made);
        expect(
          said(pages)
            .flat()
            .filter((text) => !text.startsWith('#')),
        ).toEqual(wanted);
        for (const [page, texts] of pages.entries()) {
          let last = 0;
          for (const { y } of texts) {
            expect(y).toBeGreaterThan(last);
            last = y;
          }
          expect(texts[0]?.y ?? FRAME.bottom).toBeGreaterThanOrEqual(page === 0 ? FRAME.first : FRAME.others);
          expect(last).toBeLessThanOrEqual(FRAME.bottom);
          const [end] = texts.slice(-1);
          const isLastOfAll = page === pages.length - 1;
          const headsNothing = made.some(({ rows }, s) => rows.length === 0 && end?.text === `# ${s}.0`);
          if (!isLastOfAll && !headsNothing) expect(end?.text ?? '').not.toMatch(/^#/);
        }
      }),
      { seed: 12, numRuns: 150 },
    );
  });
});
