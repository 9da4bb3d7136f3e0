/** How a game gets to a colleague. */
import { SHARE } from '../../src/words/screen.ts';
import { saveToFile } from '../keep/index.ts';
import { DropPanel } from './DropPanel.tsx';
import { MapPictures } from './MapPictures.tsx';
import './share-menu.css';

export function ShareMenu() {
  return (
    <DropPanel label={SHARE.share} buttonClass="button button-large" align="right" className="share-menu">
      {(close) => (
        <>
          <p>{SHARE.line}</p>
          <button
            type="button"
            className="button button-main"
            onClick={() => {
              close();
              void saveToFile();
            }}
          >
            {SHARE.save}
          </button>
          <MapPictures close={close} />
        </>
      )}
    </DropPanel>
  );
}
