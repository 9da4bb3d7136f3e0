/** While my kit is open, a file that is let go over the page is a kit and no game. */
import { type DragEvent, type ReactNode, useState } from 'react';
import { KIT } from '../../src/words/screen-kit.ts';
import { takeFiles } from './files.ts';

const holdsFiles = ({ dataTransfer }: DragEvent) => dataTransfer.types.includes('Files');

export function FileTarget({ children }: { children: ReactNode }) {
  const [over, setOver] = useState(false);
  const onOver = (event: DragEvent) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    // The page beneath would take it for a game.
    event.stopPropagation();
    event.dataTransfer.dropEffect = 'copy';
    setOver(true);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the same is offered by a button
    <div
      className="kit-target"
      onDragEnter={onOver}
      onDragOver={onOver}
      onDragLeave={(event) => {
        event.stopPropagation();
        const { relatedTarget, currentTarget } = event;
        if (!(relatedTarget instanceof Node) || !currentTarget.contains(relatedTarget)) setOver(false);
      }}
      onDrop={(event) => {
        if (!holdsFiles(event)) return;
        event.preventDefault();
        event.stopPropagation();
        setOver(false);
        void takeFiles(event.dataTransfer.files);
      }}
    >
      {children}
      {over && (
        <div className="kit-drop">
          <p className="kit-drop-words" role="status">
            {KIT.here}
          </p>
        </div>
      )}
    </div>
  );
}
