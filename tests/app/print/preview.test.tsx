/** The preview as a whole: whatever is chosen, the pages that stand in the end are those of the choice; pictures, and calling them off. */
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { answers } from '../../../app/print/answers.ts';
import { firstOptions } from '../../../app/print/options.ts';
import PrintPreview from '../../../app/print/PrintPreview.tsx';
import type { Sheet, SheetOptions } from '../../../src/sheets/sheet.ts';
import { printedAt } from '../../../src/words/print.ts';
import { openGame, theGame } from '../open-game.ts';
import { LayoutWorker } from './layout-workers.ts';
import { smallGame } from './small-game.ts';

/** Typefaces need a browser; here they come when a test says so. */
const faces = vi.hoisted(() => ({ embedded: async () => '' }));
vi.mock('../../../app/print/faces.ts', () => ({
  FacesLost: class extends Error {},
  loadFaces: async () => {},
  embeddedFaces: () => faces.embedded(),
  fontOf: () => '',
}));

/** Everything is in view. */
class AllInView {
  #tell: (entries: readonly { readonly isIntersecting: boolean }[]) => void;
  constructor(tell: (entries: readonly { readonly isIntersecting: boolean }[]) => void) {
    this.#tell = tell;
  }
  observe() {
    this.#tell([{ isIntersecting: true }]);
  }
  disconnect() {}
}

const NOW = new Date('2026-11-25T13:40:00Z').getTime();
const FIRST = firstOptions('en-GB');

let saved: { readonly name: string; readonly content: Promise<string> }[] = [];

beforeEach(() => {
  localStorage.clear();
  faces.embedded = async () => '';
  vi.stubGlobal('Worker', LayoutWorker);
  vi.stubGlobal('IntersectionObserver', AllInView);
  vi.spyOn(Date, 'now').mockReturnValue(NOW);
  vi.spyOn(navigator, 'language', 'get').mockReturnValue('en-GB');
  saved = [];
  let content = new Blob();
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    if (blob instanceof Blob) content = blob;
    return 'blob:saved';
  });
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, content: content.text() });
  });
  openGame(smallGame());
});
afterEach(() => {
  cleanup();
  LayoutWorker.close();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

function sheetsFor(options: SheetOptions): readonly Sheet[] {
  const last = [...answers({ game: theGame(), options, printing: { date: printedAt(NOW) } })].at(-1);
  if (!last || 'failed' in last) throw new Error('the game cannot be laid out');
  return last.sheets;
}

/** The paper of each page, and what is written on it. */
function wanted(options: SheetOptions) {
  return sheetsFor(options).flatMap(({ paper, pages }) =>
    pages.map(({ marks }) => ({
      paper: `${paper.name} ${paper.orientation}`,
      texts: marks.flatMap((mark) => (mark.mark === 'text' ? [mark.text] : [])),
    })),
  );
}

const NAMES = new Map([
  ['a4-portrait', 'A4 portrait'],
  ['a4-landscape', 'A4 landscape'],
  ['letter-portrait', 'Letter portrait'],
  ['letter-landscape', 'Letter landscape'],
]);

function shown() {
  const pages = within(screen.getByRole('region', { name: 'Pages', hidden: true }));
  return pages.queryAllByRole('figure', { hidden: true }).map((page) => ({
    paper: NAMES.get(page.dataset['paper'] ?? ''),
    texts: Array.from(page.querySelectorAll('text'), ({ textContent }) => textContent),
  }));
}

const status = () => screen.getByRole('status', { hidden: true }).textContent;

const ready = () => waitFor(() => expect(status()).toMatch(/^\d+ pages?\.$/), { timeout: 30_000 });

/** Pages are drawn a moment after they are known. */
const stands = (options: SheetOptions) => waitFor(() => expect(shown()).toEqual(wanted(options)));

const CHOICES: readonly (readonly [string, Partial<SheetOptions>])[] = [
  ['US Letter', { paper: 'Letter' }],
  ['Landscape', { orientation: 'landscape' }],
  ['Minutes', { times: false }],
  ['If stuck', { rescue: false }],
  ['Ticks', { ticks: false }],
  ['What is hidden where', { sheets: ['map', 'cautions', 'codes', 'contents', 'order'] }],
  ['Codes and answers', { codes: false }],
];

test('each choice asks for pages, and those of the choice stand in the end; reopened, it is as it was left', async () => {
  const preview = render(<PrintPreview />);
  await ready();
  await stands(FIRST);
  let options = FIRST;
  for (const [label, choice] of CHOICES) {
    const before = shown();
    options = { ...options, ...choice };
    fireEvent.click(screen.getByLabelText(label, { selector: 'input' }));
    await ready();
    await stands(options);
    expect(shown(), label).not.toEqual(before);
  }
  expect(LayoutWorker.all).toHaveLength(CHOICES.length + 1);
  expect(LayoutWorker.all.filter(({ ended }) => !ended)).toEqual([]);
  const codes = screen.getByLabelText<HTMLInputElement>('Codes of all locks', { selector: 'input' });
  expect([codes.checked, codes.disabled]).toEqual([false, true]);

  preview.unmount();
  render(<PrintPreview />);
  await ready();
  await stands(options);
});

test('choices made faster than pages come: the newest stands', async () => {
  render(<PrintPreview />);
  for (const [label] of CHOICES) fireEvent.click(screen.getByLabelText(label, { selector: 'input' }));
  await ready();
  const last = Object.assign({}, FIRST, ...CHOICES.map(([, choice]) => choice));
  await stands(last);
});

test('the map is saved as a picture of what is chosen', async () => {
  render(<PrintPreview />);
  fireEvent.click(screen.getByLabelText('Ticks'));
  await ready();
  fireEvent.click(screen.getByRole('button', { name: 'Map as SVG', hidden: true }));
  await waitFor(() => expect(saved).toHaveLength(1), { timeout: 30_000 });
  const [file] = saved;
  expect(file?.name).toMatch(/map\.svg$/);
  const [map] = wanted({ ...FIRST, ticks: false, sheets: ['map'] });
  const svg = new DOMParser().parseFromString((await file?.content) ?? '', 'image/svg+xml');
  expect(Array.from(svg.querySelectorAll('text'), ({ textContent }) => textContent)).toEqual(map?.texts);
  await ready();
});

test('closed while a picture is made, the preview ends the worker, and nothing is saved', async () => {
  const preview = render(<PrintPreview />);
  await ready();
  fireEvent.click(screen.getByRole('button', { name: 'Map as SVG', hidden: true }));
  expect(status()).toBe('The picture is being made.');
  const worker = LayoutWorker.all.at(-1);
  expect(worker?.questions[0]?.options.sheets).toEqual(['map']);
  preview.unmount();
  expect(worker?.ended).toBe(true);
  await new Promise((rest) => setTimeout(rest, 100));
  expect(saved).toEqual([]);
});

test('nor is anything saved when it is closed while the typefaces of the picture come', async () => {
  let come: ((rules: string) => void) | undefined;
  faces.embedded = () => new Promise((resolve) => (come = resolve));
  const preview = render(<PrintPreview />);
  await ready();
  fireEvent.click(screen.getByRole('button', { name: 'Map as SVG', hidden: true }));
  await waitFor(() => expect(come).toBeDefined(), { timeout: 30_000 });
  preview.unmount();
  come?.('');
  await new Promise((rest) => setTimeout(rest, 100));
  expect(saved).toEqual([]);
});
