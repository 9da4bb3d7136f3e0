/** The kit as files, in and out. */
import { KIT } from '../../src/words/screen-kit.ts';
import { DropPanel } from '../shell/DropPanel.tsx';
import { chooseFile, saveAll, saveItems, savePlaces } from './files.ts';

export function FilesMenu() {
  return (
    <DropPanel label={KIT.files} buttonClass="button" align="right" className="kit-files">
      {(close) =>
        (
          [
            [KIT.openFile, chooseFile],
            [KIT.saveAll, saveAll],
            [KIT.saveItems, saveItems],
            [KIT.savePlaces, savePlaces],
          ] as const
        ).map(([label, act], i) => (
          <div key={label}>
            <button
              type="button"
              className="button"
              onClick={() => {
                close();
                act();
              }}
            >
              {label}
            </button>
            {i === 0 && <p className="hint">{KIT.fileLine}</p>}
          </div>
        ))
      }
    </DropPanel>
  );
}
