/** The head of the page: what game this is, whether it can be won, and what can be done with the whole of it. */
import { CommandButton } from '../commands/CommandButton.tsx';
import { GamesMenu, SavedState } from '../keep/index.ts';
import { KIT_DIALOG } from '../kit/open.ts';
import { preparePrint } from '../print/open.ts';
import { LessonLine } from './LessonLine.tsx';
import { ShareMenu } from './ShareMenu.tsx';
import { Title } from './Title.tsx';
import { Verdict } from './Verdict.tsx';
import './head.css';

export function Head() {
  return (
    <header className="head page-head">
      <div className="head-game">
        <Title />
        <LessonLine />
      </div>
      <Verdict />
      <div className="head-acts">
        <SavedState />
        <GamesMenu />
        <CommandButton name="kit" className="button button-large" onApproach={() => void KIT_DIALOG.load()} />
        <ShareMenu />
        <CommandButton name="print" className="button button-main button-large" onApproach={preparePrint} />
      </div>
    </header>
  );
}
