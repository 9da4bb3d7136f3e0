/**
 * Keeps the open game: stores every change, opens games from the shelf, and shares them fairly between windows.
 * What is asked for from outside runs one after the other, so that no two games are opened at once.
 */
import { emptyGame, type Game, type GameDocument } from '../../src/game/model.ts';
import { writeGame } from '../../src/game/write.ts';
import { NEWS, titleOf } from '../../src/words/keep.ts';
import { type GameState, useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { useView } from '../store/view.ts';
import { addressedGame, lastShown, setAddress } from './address.ts';
import { changesSince, type Mark, markNow } from './changes.ts';
import { openShelf } from './database.ts';
import { readText } from './reading.ts';
import { type KeptGame, passingShelf, type Shelf } from './shelf.ts';
import { type News, type Storage, useKeep } from './state.ts';
import { type Turn, takeTurn } from './turn.ts';
import { joinWindows, type Message, type Windows } from './windows.ts';

/** Milliseconds of rest after which a change is stored. When the page is hidden or closed it is stored at once. */
const REST = 300;
const DELETED_FOR = 7 * 24 * 60 * 60 * 1000;
const ANSWER_WITHIN = 3000;
/** As long as a page may take to end when it is reloaded. */
const RELOAD = 600;

let shelf: Shelf = passingShelf();
let windows: Windows | undefined;
let turn: Turn | undefined;
/** The content of the store comes from the shelf at this moment, so it is no change. */
let replacing = false;
/** What the changes of the open game are counted from. */
let mark: Mark = { step: undefined, changes: 0 };
/** There are changes that the shelf does not have. */
let pending = false;
let timer: ReturnType<typeof setTimeout> | undefined;
let started: Promise<unknown> | undefined;
let last: Promise<unknown> = Promise.resolve();

/** Runs what is asked for after all that was asked for before. Undefined: the browser's store failed, and the head says so. */
export function inTurn<T>(task: () => Promise<T>): Promise<T | undefined> {
  const result = last.then(task).catch((error: unknown) => {
    if (!(error instanceof DOMException)) throw error;
    tell({ sentence: troubleOf(error) === 'full' ? NEWS.noRoom : NEWS.storeSilent });
    return undefined;
  });
  last = result.catch(() => undefined);
  return result;
}

export function entryOf(document: GameDocument, since: Partial<KeptGame> = {}): KeptGame {
  const { game, provenance } = document;
  return {
    id: provenance.id,
    title: game.head.title,
    basedOn: provenance.basedOn,
    edited: Date.now(),
    filed: undefined,
    changes: 0,
    deleted: undefined,
    ...since,
  };
}

function openDocument(): GameDocument {
  const { game, provenance } = useGame.getState();
  return { game, provenance };
}

export async function refreshList(): Promise<void> {
  const games = await shelf.list();
  useKeep.setState({ games: games.toSorted((a, b) => b.edited - a.edited) });
}

/** Why the browser did not store something. */
export function troubleOf(error: unknown): Extract<Storage, 'full' | 'failed'> {
  return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'failed';
}

/** Stores the open game if it has changed. The request to the browser is made before the first await. */
async function flush(): Promise<void> {
  clearTimeout(timer);
  const { open } = useKeep.getState();
  if (!pending || !open) return;
  pending = false;
  try {
    await shelf.write(open, writeGame(openDocument()));
  } catch (error) {
    pending = true;
    useKeep.setState({ storage: troubleOf(error) });
    return;
  }
  useKeep.setState({ storage: shelf.lasts ? 'kept' : 'refused' });
  windows?.tell({ say: 'stored', id: open.id });
  await refreshList();
  await askToLast();
}

/** Asks the browser once not to clear the games away when it needs room. */
async function askToLast(): Promise<void> {
  const asked = 'latchmap.asked-to-last';
  try {
    if (!shelf.lasts || localStorage.getItem(asked) !== null) return;
    localStorage.setItem(asked, 'yes');
    await navigator.storage.persist();
  } catch {
    return;
  }
}

function flushLater(): void {
  pending = true;
  clearTimeout(timer);
  timer = setTimeout(flush, REST);
}

function onGame(now: GameState, before: GameState): void {
  if (replacing || now.readOnly || now.game === before.game) return;
  if (now.history === before.history && now.provenance === before.provenance) {
    // Positions that the game came without: kept, but no change.
    flushLater();
    return;
  }
  const { open } = useKeep.getState();
  const since = changesSince(now.history, mark);
  const changes = since ?? (open?.changes ?? 0) + 1;
  if (since === undefined) mark = markNow(now.history, changes);
  useKeep.setState({ open: entryOf(openDocument(), { filed: open?.filed, changes }) });
  setAddress(now.provenance.id);
  flushLater();
}

/** Puts a game on the page as it is on the shelf. */
function show(document: GameDocument, open: KeptGame | undefined, elsewhere: boolean): void {
  const { provenance, game } = document;
  const another = useGame.getState().provenance.id !== provenance.id;
  replacing = true;
  try {
    useGame.getState().open(game, provenance);
    useGame.getState().setReadOnly(elsewhere);
    if (another) useView.getState().reset();
  } finally {
    replacing = false;
  }
  mark = markNow(useGame.getState().history, open?.changes ?? 0);
  useKeep.setState({ open, elsewhere, ...(another && { fromNothing: false }) });
  setAddress(open?.id);
}

async function fromShelf(id: string): Promise<{ document: GameDocument; kept: KeptGame } | undefined> {
  const found = await shelf.read(id);
  if (!found) return undefined;
  const reading = typeof found.text === 'string' ? await readText(found.text) : undefined;
  if (!reading?.ok) {
    useKeep.setState({ news: { sentence: NEWS.damaged(titleOf(found.kept.title)), damaged: id } });
    return undefined;
  }
  return { document: reading.document, kept: found.kept };
}

/** Whoever had the game has let go: take what they left, and edit. */
async function takeOver(id: string): Promise<void> {
  if (useGame.getState().provenance.id !== id) return;
  const newest = await fromShelf(id);
  if (newest) show(newest.document, newest.kept, false);
  else useKeep.setState({ elsewhere: true });
}

/** False when the open game has changes that are on this page alone, unless they may go: it stays, and it is said why. */
async function leave(next: Turn, mayGo = false): Promise<boolean> {
  await flush();
  const { open } = useKeep.getState();
  if (pending && !mayGo && open && open.changes > 0) {
    next.letGo();
    tell({ sentence: NEWS.onlyHere(titleOf(open.title)) });
    return false;
  }
  pending = false;
  turn?.letGo();
  turn = next;
  return true;
}

const turnAt = (id: string, patience?: number) =>
  takeTurn(id, () => void inTurn(() => takeOver(id)), patience);

/** To be called in turn. */
export async function openNow(id: string, patience?: number): Promise<boolean> {
  if (useKeep.getState().open?.id === id) return true;
  const next = await turnAt(id, patience);
  const found = await fromShelf(id);
  if (!found) {
    next.letGo();
    return false;
  }
  if (!(await leave(next))) return false;
  show(found.document, found.kept, !next.mine);
  return true;
}

/** Opens a game that could not be stored, from the file that it came in. To be called in turn. */
export async function openUnstored(
  document: GameDocument,
  kept: KeptGame,
  storage: Storage,
): Promise<boolean> {
  if (!(await leave(await turnAt(document.provenance.id)))) return false;
  show(document, kept, false);
  // Stored with its next change, if there is room then.
  useKeep.setState({ storage });
  return true;
}

/** Opens a game of the shelf. False: it is not there or is damaged, and the open game stays. */
export async function openGame(id: string): Promise<boolean> {
  return (await inTurn(() => openNow(id))) ?? false;
}

async function beginNow(mayGo = false): Promise<void> {
  const provenance = { id: freshId(), revision: 0 };
  if (!(await leave(await turnAt(provenance.id), mayGo))) return;
  show({ game: emptyGame, provenance }, undefined, false);
}

/** An empty game. It joins the list with its first change. */
export function beginGame(): Promise<unknown> {
  return inTurn(() => beginNow());
}

/** Puts a game on the shelf, beside all that is there. */
export async function shelve(document: GameDocument, since: Partial<KeptGame>): Promise<void> {
  await shelf.write(entryOf(document, since), writeGame(document));
  windows?.tell({ say: 'stored', id: document.provenance.id });
  await refreshList();
}

/** The game as the shelf or, for the open one, the page has it; undefined when it is not there or is damaged. */
export async function contentOf(id: string): Promise<Game | undefined> {
  const { game, provenance } = useGame.getState();
  if (provenance.id === id) return game;
  return (await fromShelf(id))?.document.game;
}

/** What was kept of a damaged game, as text. */
export async function rawText(id: string): Promise<string> {
  const found = await shelf.read(id);
  return typeof found?.text === 'string' ? found.text : JSON.stringify(found?.text ?? null);
}

export function tell(news: News): void {
  useKeep.setState({ news });
}

/** The open game has been saved to a file, as this document. */
export async function markFiled(document: GameDocument): Promise<void> {
  useGame.getState().setProvenance(document.provenance);
  mark = markNow(useGame.getState().history, 0);
  useKeep.setState({ open: entryOf(document, { filed: Date.now() }) });
  setAddress(document.provenance.id);
  pending = true;
  await flush();
}

async function note(id: string, change: Partial<KeptGame>): Promise<void> {
  const kept = useKeep.getState().games.find((game) => game.id === id);
  if (!kept) return;
  await shelf.note({ ...kept, ...change });
  windows?.tell({ say: 'stored', id });
  await refreshList();
}

/** Deletes a game; it can be brought back for seven days. */
export function deleteGame(id: string): Promise<unknown> {
  return inTurn(async () => {
    const { games, open } = useKeep.getState();
    const title = games.find((game) => game.id === id)?.title;
    if (open?.id === id && turn?.mine) await beginNow(true);
    // What this window has just let go comes to it a moment later.
    const held = await takeTurn(id, () => undefined, RELOAD);
    try {
      if (!held.mine) return tell({ sentence: NEWS.heldElsewhere(titleOf(title)) });
      await note(id, { deleted: Date.now() });
      tell({ sentence: NEWS.deleted(titleOf(title)), deleted: id });
    } finally {
      held.letGo();
    }
  });
}

export function bringBack(id: string): Promise<unknown> {
  return inTurn(() => note(id, { deleted: undefined }));
}

/** Asks the window that edits the open game to let go. */
export function askForTurn(): void {
  const { id } = useGame.getState().provenance;
  windows?.tell({ say: 'ask', id });
  setTimeout(() => {
    const { elsewhere, open } = useKeep.getState();
    if (elsewhere && open?.id === id) tell({ sentence: NEWS.noAnswer });
  }, ANSWER_WITHIN);
}

async function lend(id: string): Promise<void> {
  if (useKeep.getState().open?.id !== id || !turn?.mine) return;
  await flush();
  useGame.getState().setReadOnly(true);
  useKeep.setState({ elsewhere: true });
  turn.letGo();
  turn = await turnAt(id);
}

async function hear({ say, id }: Message): Promise<void> {
  if (say === 'ask') return lend(id);
  await refreshList();
  const { open, elsewhere } = useKeep.getState();
  if (open?.id !== id || !elsewhere) return;
  const newest = await fromShelf(id);
  if (newest) show(newest.document, newest.kept, true);
}

async function sweep(): Promise<void> {
  for (const { id, deleted } of await shelf.list()) {
    if (deleted !== undefined && deleted < Date.now() - DELETED_FOR) await shelf.remove(id);
  }
}

/** The game of the address, else the one last on the page, else an empty one. */
async function openFirst(): Promise<void> {
  const addressed = addressedGame(location.hash);
  const { games } = useKeep.getState();
  if (addressed !== undefined) {
    if (await openNow(addressed, RELOAD)) return;
    if (!useKeep.getState().news) tell({ sentence: NEWS.notHere });
  } else {
    const here = games.filter((game) => game.deleted === undefined);
    const last = here.find((game) => game.id === lastShown()) ?? here[0];
    if (last && (await openNow(last.id, RELOAD))) return;
  }
  await beginNow();
}

function watchPage(): void {
  const now = () => void flush();
  /** The first of them: a page that is reloaded may hear the others only when the new one reads already. */
  addEventListener('beforeunload', now);
  addEventListener('pagehide', now);
  document.addEventListener('freeze', now);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') now();
  });
  /** Out of the browser's cache of pages: others may have edited since. */
  addEventListener('pageshow', ({ persisted }) => {
    if (persisted) location.reload();
  });
  addEventListener('hashchange', () => {
    const id = addressedGame(location.hash);
    if (id !== undefined && id !== useKeep.getState().open?.id) void openGame(id);
  });
}

async function start(): Promise<void> {
  useGame.getState().setReadOnly(true);
  shelf = await openShelf();
  useKeep.setState({ storage: shelf.lasts ? 'kept' : 'refused' });
  windows = joinWindows((message) => void inTurn(() => hear(message)));
  await sweep();
  await refreshList();
  await openFirst();
  useGame.subscribe(onGame);
  watchPage();
  useKeep.setState({ ready: true });
}

/** Opens what the page begins with, and keeps it from then on. Called once; further calls wait for the first. */
export function startKeeping(): Promise<unknown> {
  started ??= inTurn(start);
  return started;
}
