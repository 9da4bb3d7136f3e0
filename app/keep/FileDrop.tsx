/** A file may be let go anywhere on the page. While one is held over it, the page says what will happen. */
import { useEffect, useState } from 'react';
import { DROP } from '../../src/words/keep.ts';
import { openFiles } from './arriving.ts';
import './keep.css';

function holdsFiles({ dataTransfer }: DragEvent): boolean {
  return dataTransfer?.types.includes('Files') ?? false;
}

export function FileDrop() {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const listening = new AbortController();
    const { signal } = listening;
    const onOver = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      if (event.dataTransfer) event.dataTransfer.dropEffect = 'copy';
      setOver(true);
    };
    addEventListener('dragenter', onOver, { signal });
    addEventListener('dragover', onOver, { signal });
    addEventListener(
      'dragleave',
      /** Only where the pointer leaves the page does it enter nothing. */
      (event) => event.relatedTarget === null && setOver(false),
      { signal },
    );
    addEventListener(
      'drop',
      (event) => {
        if (!holdsFiles(event)) return;
        event.preventDefault();
        setOver(false);
        void openFiles(event.dataTransfer?.files ?? []);
      },
      { signal },
    );
    return () => listening.abort();
  }, []);
  if (!over) return null;
  return (
    <div className="file-drop">
      <p className="file-drop-words" role="status">
        {DROP.here}
      </p>
    </div>
  );
}
