/** The pages of a game as they are being laid out, each better result in the place of the one before. */
import { startTransition, useEffect, useState } from 'react';
import type { Game } from '../../src/game/model.ts';
import type { LayoutOptions, Printing, Sheet, SheetOptions } from '../../src/sheets/sheet.ts';
import { loadFaces } from './faces.ts';
import { layOutPages } from './lay-out.ts';

export interface PagesState {
  readonly sheets: readonly Sheet[];
  readonly state: 'starting' | 'improving' | 'ready' | 'failed';
}

const NOTHING: PagesState = { sheets: [], state: 'starting' };

const FAILED: PagesState = { sheets: [], state: 'failed' };

/** All but colour, which needs no new layout; the same object for as long as it says the same. */
function useLayoutOptions({ colour: _, ...options }: SheetOptions): LayoutOptions {
  const [kept, setKept] = useState<LayoutOptions>(options);
  if (JSON.stringify(kept) === JSON.stringify(options)) return kept;
  setKept(options);
  return options;
}

/** What was shown stays until the first result of a new question. */
export function usePages(game: Game, options: SheetOptions, printing: Printing): PagesState {
  const [pages, setPages] = useState(NOTHING);
  const layout = useLayoutOptions(options);
  useEffect(() => {
    let stopped = false;
    let heard = 0;
    setPages(({ sheets }) => ({ sheets, state: 'starting' }));
    const stop = layOutPages({ game, options: layout, printing }, async (answer) => {
      heard += 1;
      const turn = heard;
      if ('failed' in answer) return setPages(FAILED);
      // Text is fitted to its measure when it is drawn, so its faces come first.
      await loadFaces(answer.sheets.flatMap(({ pages }) => pages));
      // Faces may take longer for one answer than for the next, which is then the better one, or says that none comes.
      if (stopped || turn < heard) return;
      startTransition(() => setPages({ sheets: answer.sheets, state: answer.final ? 'ready' : 'improving' }));
    });
    return () => {
      stopped = true;
      stop();
    };
  }, [game, printing, layout]);
  return pages;
}
