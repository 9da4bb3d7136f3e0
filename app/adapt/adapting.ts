/**
 * Going down the list: the first change makes a copy of the game, which is opened in its place; each line is one change and one undo. What is done is read off the game (plan.ts);
 * here stands only what cannot be: the game as it came, lines that stay as they are, and what each line has changed since the page was opened.
 */
import { create } from 'zustand';
import type { Edit } from '../../src/game/edits/edit.ts';
import { sameJson } from '../../src/game/json.ts';
import type { Game } from '../../src/game/model.ts';
import type { LineKey } from '../../src/kit/adapt/plan.ts';
import { takeBack } from '../../src/kit/adapt/take-back.ts';
import { copyToAdapt } from '../keep/arriving.ts';
import { contentOf } from '../keep/keeping.ts';
import { useGame } from '../store/game.ts';
import { adaptationOf, remember } from './record.ts';

/** The game before and after what a line did. */
export interface Deed {
  readonly before: Game;
  readonly after: Game;
  /** The line is done by it whatever the game says. */
  readonly settled: boolean;
}

interface Adapting {
  /** The open game that all of this is about; undefined while it is looked up. */
  readonly id: string | undefined;
  readonly original: Game | undefined;
  /** False until the first change has made a copy. */
  readonly isCopy: boolean;
  readonly kept: ReadonlySet<LineKey>;
  readonly deeds: ReadonlyMap<LineKey, Deed>;
  /** What takes back what a line did beside the game: what it put on the list to buy. */
  readonly besides: ReadonlyMap<LineKey, () => void>;
  /** The copy is being made. */
  readonly busy: boolean;
}

const NOTHING: Adapting = {
  id: undefined,
  original: undefined,
  isCopy: false,
  kept: new Set(),
  deeds: new Map(),
  besides: new Map(),
  busy: false,
};

export const useAdapting = create<Adapting>()(() => NOTHING);

/** Nothing can be changed now: the copy is being made, or another window has it. */
export function useBusy(): boolean {
  const { busy, isCopy } = useAdapting();
  const readOnly = useGame((state) => state.readOnly);
  return busy || (isCopy && readOnly);
}

/** Looks up what the open game was before it was adapted. Where that is gone, it begins with the game as it is. */
export async function beginAdapting(): Promise<void> {
  const { provenance, game } = useGame.getState();
  const { id } = provenance;
  const { id: about, busy } = useAdapting.getState();
  // A copy that is being made is about the same game.
  if (about === id || busy) return;
  const known = adaptationOf(id);
  const isCopy = known !== undefined && known.of !== id;
  const came = isCopy ? await contentOf(known.of) : game;
  if (useGame.getState().provenance.id !== id) return;
  useAdapting.setState({
    ...NOTHING,
    id,
    original: came ?? game,
    isCopy,
    kept: known?.kept ?? new Set(),
  });
}

function write(): void {
  const { id, kept } = useAdapting.getState();
  if (id !== undefined) remember(id, { of: adaptationOf(id)?.of ?? id, kept });
}

/** The open game is a copy from here on. False: it could not be opened, and that has been said. */
async function makeCopy(): Promise<boolean> {
  const { isCopy, id, kept } = useAdapting.getState();
  if (isCopy) return true;
  useAdapting.setState({ busy: true });
  const copy = await copyToAdapt();
  const isMade = copy !== undefined && id !== undefined;
  if (isMade) {
    remember(copy, { of: id, kept });
    useAdapting.setState({ id: copy, isCopy: true });
  }
  useAdapting.setState({ busy: false });
  return isMade;
}

const tagOf = (key: LineKey) => `adapt ${key}`;

/** Makes the change of a line. `settled`: the line is then done whatever the game says. */
export async function act(key: LineKey, edits: readonly Edit[], settled = false): Promise<void> {
  if (useAdapting.getState().busy || !(await makeCopy())) return;
  const { apply, settle, game: before } = useGame.getState();
  settle();
  if (!apply(edits, tagOf(key))) return;
  const after = useGame.getState().game;
  useAdapting.setState(({ deeds }) => ({ deeds: new Map(deeds).set(key, { before, after, settled }) }));
  if (settled) setKept(key);
}

const without = <T>(all: ReadonlyMap<LineKey, T>, key: LineKey): ReadonlyMap<LineKey, T> =>
  new Map([...all].filter(([one]) => one !== key));

function setKept(key: LineKey): void {
  useAdapting.setState(({ kept }) => ({ kept: new Set(kept).add(key) }));
  write();
}

/** Nothing is to be changed there. `putBack`: takes back what was done beside the game instead. */
export function keep(key: LineKey, putBack?: () => void): void {
  useAdapting.setState(({ deeds, besides }) => ({
    deeds: without(deeds, key),
    besides: putBack ? new Map(besides).set(key, putBack) : without(besides, key),
  }));
  setKept(key);
}

/** Whether all that it changed is as it was. */
const isUndone = ({ before, after }: Deed, game: Game): boolean =>
  [...before.nodes].every(
    ([id, old]) => sameJson(old, after.nodes.get(id)) || sameJson(old, game.nodes.get(id)),
  );

/** What was settled by a change is so only while the change stands: undo and redo are followed. */
export function followHistory(game: Game): void {
  const { deeds, kept } = useAdapting.getState();
  for (const [key, deed] of deeds) {
    if (!deed.settled) continue;
    const isGone = isUndone(deed, game);
    if (isGone && kept.has(key)) unkeep(key);
    else if (!isGone && !kept.has(key)) setKept(key);
  }
}

function unkeep(key: LineKey): void {
  useAdapting.setState(({ kept }) => ({ kept: new Set([...kept].filter((one) => one !== key)) }));
  write();
}

/** What takes a line back. `otherwise`: where it is not known what the line did, since the page was opened anew. Undefined: it cannot be taken back alone. */
export function backOf(key: LineKey, otherwise: readonly Edit[] | undefined): readonly Edit[] | undefined {
  const deed = useAdapting.getState().deeds.get(key);
  const { game } = useGame.getState();
  return (deed && takeBack(deed.before, deed.after, game)) ?? otherwise;
}

/** One undo: of the last change by the history, of an earlier one by a change that puts back what it did. */
export function undoLine(key: LineKey, back: readonly Edit[] | undefined): void {
  const { history, undo, apply } = useGame.getState();
  const isLast = history.past.at(-1)?.tag === tagOf(key);
  if (isLast) undo();
  else if (back && back.length > 0) apply(back);
  useAdapting.getState().besides.get(key)?.();
  useAdapting.setState(({ deeds, besides }) => ({
    deeds: without(deeds, key),
    besides: without(besides, key),
  }));
  unkeep(key);
}
