/** The map as a picture, to show or to mail. What makes it is loaded when it is asked for. */
import { useState } from 'react';
import { PARTS } from '../../src/words/parts.ts';
import { MAP_PICTURES } from '../../src/words/print-command.ts';
import { part } from '../parts/part.ts';
import type { PictureFormat } from '../print/map-file.ts';
import { useGame } from '../store/game.ts';

const MAP_FILE = part(() => import('../print/map-file.ts'));
const OPTIONS = part(() => import('../print/options.ts'));

export function MapPictures({ close }: { close: () => void }) {
  const filled = useGame(({ game }) => game.nodes.size > 0);
  const [making, setMaking] = useState(false);
  const [problem, setProblem] = useState<string>();

  const save = async (format: PictureFormat) => {
    setMaking(true);
    const [file, options] = await Promise.all([MAP_FILE.load(), OPTIONS.load()]);
    // Said here: the menu lies over the head.
    const why =
      file && options
        ? await file.saveMap(format, useGame.getState().game, options.rememberedOptions())
        : PARTS.lost;
    setMaking(false);
    setProblem(why);
    if (why === undefined) close();
  };

  return (
    <>
      <p>{MAP_PICTURES.line}</p>
      <p className="share-pictures">
        {(['svg', 'png'] as const).map((format) => (
          <button
            key={format}
            type="button"
            className="button"
            disabled={!filled || making}
            onClick={() => void save(format)}
          >
            {MAP_PICTURES[format]}
          </button>
        ))}
      </p>
      <p className="quiet" role="status">
        {making ? MAP_PICTURES.making : problem}
      </p>
    </>
  );
}
