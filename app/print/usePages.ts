/** The pages of a game as they are being laid out, each better result in the place of the one before. */
import { startTransition, useEffect, useState } from 'react';
import type { Game } from '../../src/game/model.ts';
import type { Printing, Sheet, SheetOptions } from '../../src/sheets/sheet.ts';
import { loadFaces } from './faces.ts';
import { layOutPages } from './lay-out.ts';

export interface PagesState {
  readonly sheets: readonly Sheet[];
  readonly state: 'starting' | 'improving' | 'ready' | 'failed';
}

const NOTHING: PagesState = { sheets: [], state: 'starting' };

/** What was shown stays until the first result of a new question. Colour needs no new layout. */
export function usePages(game: Game, options: SheetOptions, printing: Printing): PagesState {
  const [pages, setPages] = useState(NOTHING);
  const { paper, orientation, codes, times, rescue, ticks } = options;
  const sheets = options.sheets.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: options are compared by what they say, and colour changes no layout
  useEffect(() => {
    let stopped = false;
    let heard = 0;
    setPages(({ sheets }) => ({ sheets, state: 'starting' }));
    const stop = layOutPages({ game, options, printing }, async (answer) => {
      if ('failed' in answer) return setPages({ sheets: [], state: 'failed' });
      heard += 1;
      const turn = heard;
      // Text is fitted to its measure when it is drawn, so its faces come first.
      await loadFaces(answer.sheets.flatMap(({ pages }) => pages));
      // Faces may take longer for one answer than for the next, which is then the better one.
      if (stopped || turn < heard) return;
      startTransition(() => setPages({ sheets: answer.sheets, state: answer.final ? 'ready' : 'improving' }));
    });
    return () => {
      stopped = true;
      stop();
    };
  }, [game, printing, paper, orientation, codes, times, rescue, ticks, sheets]);
  return pages;
}
