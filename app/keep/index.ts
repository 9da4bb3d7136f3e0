/** Keeping, saving, opening and sharing games: what the page mounts and its commands call. */
export { duplicateGame, openExample, openFiles } from './arriving.ts';
export { BeginHere } from './BeginHere.tsx';
export { openFile } from './choosing.ts';
export { FileDrop } from './FileDrop.tsx';
export { GamesMenu } from './GamesMenu.tsx';
export { KeepNews } from './KeepNews.tsx';
export { beginGame, deleteGame, openGame, startKeeping } from './keeping.ts';
export { SavedState } from './SavedState.tsx';
export { saveToFile } from './saving.ts';
export { useKeep } from './state.ts';
