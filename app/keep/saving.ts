/** To a file: by download, which every browser has and every teacher knows. */
import { fileName } from '../../src/game/file-name.ts';
import { writeGame } from '../../src/game/write.ts';
import { useGame } from '../store/game.ts';
import { download } from './download.ts';
import { inTurn, markFiled, rawText } from './keeping.ts';
import { useKeep } from './state.ts';

const asFile = (text: string) => new Blob([text], { type: 'application/json' });

/** Saves the open game. A window that may only read saves what it shows, and counts nothing. */
export function saveToFile(): Promise<unknown> {
  return inTurn(async () => {
    const { game, provenance, readOnly, settle } = useGame.getState();
    if (readOnly) return download(fileName(game), asFile(writeGame({ game, provenance })));
    settle();
    const saved = { game, provenance: { ...provenance, revision: provenance.revision + 1 } };
    download(fileName(game), asFile(writeGame(saved)));
    await markFiled(saved);
  });
}

/** What is left of a damaged game, as it is. */
export function saveRaw(id: string): Promise<unknown> {
  return inTurn(async () => {
    const title = useKeep.getState().games.find((game) => game.id === id)?.title;
    const head = title === undefined ? {} : { title };
    download(fileName({ head }), asFile(await rawText(id)));
  });
}
