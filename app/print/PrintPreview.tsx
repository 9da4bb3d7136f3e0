/** The print preview: the pages themselves, as large as on paper where there is room, and beside them what is chosen for them. */
import { useEffect, useId, useRef, useState } from 'react';
import type { Drawing } from '../../src/sheets/drawing.ts';
import { type SheetOptions, sheetsOf } from '../../src/sheets/sheet.ts';
import { PRINT, PRINT_STATUS, pageName, printedAt } from '../../src/words/print.ts';
import { MAP_PICTURES } from '../../src/words/print-command.ts';
import { SHEET_TITLES } from '../../src/words/sheets.ts';
import { isMac, isPressed } from '../commands/keyboard.ts';
import { useGame } from '../store/game.ts';
import { loadFaces } from './faces.ts';
import { type PictureFormat, saveMap } from './map-file.ts';
import { Options } from './Options.tsx';
import { closePrint } from './open.ts';
import { rememberedOptions, rememberOptions } from './options.ts';
import { Page } from './Page.tsx';
import { copiesOf, printPages } from './printed.ts';
import { usePages } from './usePages.ts';
import { WaitingPage } from './WaitingPage.tsx';
import '../shell/full-page.css';
import './print-preview.css';
import './printed.css';
import './sheet-text.css';

function statusOf(state: ReturnType<typeof usePages>['state'], pages: number, chosen: number): string {
  if (chosen === 0) return PRINT_STATUS.noSheet;
  if (state === 'failed') return PRINT_STATUS.failed;
  if (state === 'starting') return PRINT_STATUS.starting;
  return state === 'ready' ? PRINT_STATUS.ready(pages) : PRINT_STATUS.improving(pages);
}

async function printNow(pages: readonly Drawing[]): Promise<void> {
  await loadFaces(pages);
  window.print();
}

export default function PrintPreview() {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const mat = useRef<HTMLElement>(null);
  const printButton = useRef<HTMLButtonElement>(null);
  const game = useGame((state) => state.game);
  const [printing] = useState(() => ({ date: printedAt(Date.now()) }));
  const [options, setOptions] = useState(rememberedOptions);
  const [saving, setSaving] = useState(false);
  const [wanted, setWanted] = useState(false);
  const [problem, setProblem] = useState<string>();
  const { sheets, state } = usePages(game, options, printing);
  const pages = sheets.flatMap((sheet) => sheet.pages);
  // What is still shown of an earlier choice is not printed: it may have codes that this one leaves out.
  const isCurrent = state === 'improving' || state === 'ready';

  useEffect(() => {
    const element = dialog.current;
    if (!element?.open) element?.showModal();
    printButton.current?.focus();
    return () => element?.close();
  }, []);

  const printed = useRef<() => readonly Node[]>(() => []);
  useEffect(() => {
    printed.current = () => {
      const shown = mat.current?.querySelectorAll('.print-page') ?? [];
      if (!isCurrent) return [];
      const drawings = sheets.flatMap((sheet) => sheet.pages);
      return copiesOf(shown, drawings, options.colour);
    };
  }, [sheets, isCurrent, options.colour]);
  useEffect(() => printPages(() => printed.current()), []);

  const change = (changed: Partial<SheetOptions>) => {
    const next = { ...options, ...changed };
    setOptions(next);
    rememberOptions(next);
    setProblem(undefined);
  };
  const chosen = sheetsOf(options);
  const canPrint = chosen.length > 0 && (pages.length > 0 || state === 'starting');
  const isComing = state === 'starting' || state === 'improving';
  /** Pressed before the last layout is there, it is kept until then; pressed again, taken back. */
  const print = () => {
    if (canPrint && isComing) setWanted(!wanted);
    else if (canPrint) void printNow(pages);
  };
  useEffect(() => {
    if (!wanted || (isComing && canPrint)) return;
    setWanted(false);
    if (canPrint) void printNow(sheets.flatMap((sheet) => sheet.pages));
  }, [wanted, isComing, canPrint, sheets]);

  const saver = useRef<AbortController>(undefined);
  useEffect(() => () => saver.current?.abort(), []);
  const save = async (format: PictureFormat) => {
    const controller = new AbortController();
    saver.current = controller;
    const { signal } = controller;
    setSaving(true);
    setProblem(undefined);
    // Numbered right only when nothing else is printed with it.
    const shown = state === 'ready' && sheets.every(({ name }) => name === 'map') ? pages : undefined;
    const why = await saveMap(format, game, options, { pages: shown, signal });
    if (signal.aborted) return;
    setProblem(why);
    setSaving(false);
  };

  const [first] = chosen;
  const isWaiting = pages.length === 0 && state === 'starting' && first !== undefined;
  const laidOut = wanted ? PRINT_STATUS.wanted : statusOf(state, pages.length, chosen.length);
  const status = saving ? MAP_PICTURES.making : laidOut;
  return (
    <dialog
      ref={dialog}
      className="full-page print-preview"
      aria-labelledby={id}
      onCancel={closePrint}
      onKeyDown={(event) => {
        if (!isPressed('Mod+P', event.nativeEvent, isMac())) return;
        event.preventDefault();
        print();
      }}
    >
      <header className="full-page-head print-head">
        <h2 id={id}>{PRINT.title}</h2>
        <p
          className={isWaiting && !saving && !wanted ? 'print-status print-status-heard' : 'print-status'}
          role="status"
        >
          {problem ?? status}
        </p>
        <button type="button" className="button" disabled={saving} onClick={() => void save('svg')}>
          {MAP_PICTURES.svg}
        </button>
        <button type="button" className="button" disabled={saving} onClick={() => void save('png')}>
          {MAP_PICTURES.png}
        </button>
        <button type="button" className="button" onClick={closePrint}>
          {PRINT.close}
        </button>
        <button
          ref={printButton}
          type="button"
          className="button button-main button-large"
          disabled={!canPrint}
          onClick={print}
        >
          {wanted ? PRINT.printsLater : PRINT.print}
        </button>
      </header>
      <section
        ref={mat}
        className="print-mat"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is to be reached by keys (WCAG 2.2, 2.1.1)
        tabIndex={0}
        aria-label={PRINT.pages}
        aria-busy={state !== 'ready'}
      >
        {isWaiting && <WaitingPage options={options} first={first} />}
        {sheets.map(({ name, paper, pages }) => (
          <div key={name}>
            {pages.map((drawing, i) => (
              <Page
                // biome-ignore lint/suspicious/noArrayIndexKey: a page is what stands in this place
                key={i}
                drawing={drawing}
                paper={paper}
                colour={options.colour}
                name={pageName(SHEET_TITLES[name], i + 1, pages.length)}
              />
            ))}
          </div>
        ))}
      </section>
      <Options options={options} change={change} />
    </dialog>
  );
}
