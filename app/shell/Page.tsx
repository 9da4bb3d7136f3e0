/** The whole page: head, things to drag, the map, the panel. */
import { useEffect } from 'react';
import { PRINT_HINT } from '../../src/words/print-command.ts';
import { PAGE } from '../../src/words/screen.ts';
import { ADAPT_PAGE, closeAdapt, useAdaptShown } from '../adapt/open.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { listenToClipboard } from '../commands/clipboard.ts';
import { useKeyList } from '../commands/key-list.ts';
import { listenToKeys } from '../commands/keyboard.ts';
import { FlowCanvas } from '../flow/FlowCanvas.tsx';
import { BeginHere, FileDrop, KeepNews } from '../keep/index.ts';
import { closeKit, KIT_DIALOG, useKitShown } from '../kit/open.ts';
import { Panel } from '../panel/Panel.tsx';
import { PartView } from '../parts/PartView.tsx';
import { part } from '../parts/part.ts';
import { closePrint, PRINT_PREVIEW, usePrint } from '../print/open.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { EmptyMat } from './EmptyMat.tsx';
import { Head } from './Head.tsx';
import { Palette } from './Palette.tsx';
import './page.css';

const KEY_LIST = part(() => import('../commands/KeyList.tsx'));
const PLAY_THROUGH = part(() => import('../play/PlayThrough.tsx'));

export function Page() {
  const title = useGame((state) => state.game.head.title ?? '');
  const keysShown = useKeyList((state) => state.open);
  const printShown = usePrint((state) => state.open);
  const adaptShown = useAdaptShown((state) => state.open);
  const kitShown = useKitShown((state) => state.open);
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
        <PartView of={PLAY_THROUGH} onLost={() => useView.getState().setPlay(false)}>
          {({ default: PlayThrough }) => <PlayThrough />}
        </PartView>
      )}
      <Panel />
      <FileDrop />
      {keysShown && (
        <PartView of={KEY_LIST} onLost={() => useKeyList.setState({ open: false })}>
          {({ default: KeyList }) => <KeyList />}
        </PartView>
      )}
      {printShown && (
        <PartView of={PRINT_PREVIEW} onLost={closePrint}>
          {({ default: PrintPreview }) => <PrintPreview />}
        </PartView>
      )}
      {adaptShown && (
        <PartView of={ADAPT_PAGE} onLost={closeAdapt}>
          {({ default: AdaptPage }) => <AdaptPage />}
        </PartView>
      )}
      {kitShown && (
        <PartView of={KIT_DIALOG} onLost={closeKit}>
          {({ default: KitDialog }) => <KitDialog />}
        </PartView>
      )}
      <p className="page-on-paper">{PRINT_HINT}</p>
    </div>
  );
}
