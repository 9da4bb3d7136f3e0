/** The whole page: head, things to drag, the map, the panel. */
import { lazy, Suspense, useEffect } from 'react';
import { PRINT_HINT } from '../../src/words/print-command.ts';
import { PAGE } from '../../src/words/screen.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { listenToClipboard } from '../commands/clipboard.ts';
import { useKeyList } from '../commands/key-list.ts';
import { listenToKeys } from '../commands/keyboard.ts';
import { FlowCanvas } from '../flow/FlowCanvas.tsx';
import { BeginHere, FileDrop, KeepNews } from '../keep/index.ts';
import { Panel } from '../panel/Panel.tsx';
import { usePrint } from '../print/open.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { EmptyMat } from './EmptyMat.tsx';
import { Head } from './Head.tsx';
import { Palette } from './Palette.tsx';
import './page.css';

const KeyList = lazy(() => import('../commands/KeyList.tsx'));
const PlayThrough = lazy(() => import('../play/PlayThrough.tsx'));
const PrintPreview = lazy(() => import('../print/PrintPreview.tsx'));

export function Page() {
  const title = useGame((state) => state.game.head.title ?? '');
  const keysShown = useKeyList((state) => state.open);
  const printShown = usePrint((state) => state.open);
  const playShown = useView((state) => state.play);

  useEffect(() => {
    document.title = PAGE.documentTitle(title.trim());
  }, [title]);
  useEffect(() => {
    const stopKeys = listenToKeys();
    const stopClipboard = listenToClipboard();
    return () => {
      stopKeys();
      stopClipboard();
    };
  }, []);

  return (
    <div className="page">
      <Head />
      <KeepNews />
      <Palette />
      <main className="page-mat" aria-label={PAGE.map}>
        <FlowCanvas>
          <CommandButton name="play" className="flow-play" />
        </FlowCanvas>
        <BeginHere />
        <EmptyMat />
      </main>
      {playShown && (
        <Suspense>
          <PlayThrough />
        </Suspense>
      )}
      <Panel />
      <FileDrop />
      {keysShown && (
        <Suspense>
          <KeyList />
        </Suspense>
      )}
      {printShown && (
        <Suspense>
          <PrintPreview />
        </Suspense>
      )}
      <p className="page-on-paper">{PRINT_HINT}</p>
    </div>
  );
}
