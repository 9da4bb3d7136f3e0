/**
 * The open game and its history. Every change comes through `apply`: a list of named edits, all or nothing, one undo.
 * What follows from the game (verdict, findings, layout) is derived elsewhere and never stored here.
 */
import { create } from 'zustand';
import type { Applied, Edit, EditRefusal } from '../../src/game/edits/edit.ts';
import { applyEdits, applyPatchesTo } from '../../src/game/edits/index.ts';
import { emptyGame, type Game, type Provenance } from '../../src/game/model.ts';
import { makeRoom } from '../../src/map/make-room.ts';
import { type History, noHistory, record } from './history.ts';
import { freshId } from './ids.ts';
import { layoutOf } from './layout-of.ts';
import { useView } from './view.ts';

/** Names the gesture that an edit belongs to, such as `name b1` while a name is typed. */
export type EditTag = string;

export interface GameState {
  readonly game: Game;
  readonly provenance: Provenance;
  readonly history: History;
  /** Another window is editing this game: it can be read here, not changed. */
  readonly readOnly: boolean;
  /** Why the last edit was refused; gone with the next that is not. */
  readonly refusal: EditRefusal | undefined;

  /** True when the edits were applied. */
  apply(edits: readonly Edit[], tag?: EditTag): boolean;
  undo(): void;
  redo(): void;
  /** Ends a gesture: the next edit starts a step of its own even with the same tag. */
  settle(): void;
  /** Puts another game in the place of the open one. Its history begins here. */
  open(game: Game, provenance: Provenance): void;
  setReadOnly(readOnly: boolean): void;
  setProvenance(provenance: Provenance): void;
  /** The open game with positions that it came without. No edit: it says nothing that the file did not say, and the history stays. */
  place(game: Game): void;
  /** For what is refused before it comes to an edit. */
  refuse(refusal: EditRefusal): void;
  dismissRefusal(): void;
}

/** What a grown tray would cover gives way in the same step, so that one undo takes both back. */
function roomFor(before: Game, after: Game): Applied {
  // Moves alone let nothing grow.
  if (before.nodes === after.nodes && before.links === after.links) {
    return { game: after, patches: [], inverse: [] };
  }
  const { opened } = useView.getState();
  const positions = makeRoom(layoutOf({ game: before, opened }), layoutOf({ game: after, opened }));
  const result = applyEdits(after, [{ type: 'move', positions }]);
  return result.ok ? result : { game: after, patches: [], inverse: [] };
}

export const useGame = create<GameState>()((set, get) => ({
  game: emptyGame,
  provenance: { id: freshId(), revision: 0 },
  history: noHistory,
  readOnly: false,
  refusal: undefined,

  apply(edits, tag) {
    const { game, history, readOnly } = get();
    if (readOnly || edits.length === 0) return false;
    const result = applyEdits(game, edits);
    if (!result.ok) {
      set({ refusal: result.refusal });
      return false;
    }
    set({ refusal: undefined });
    if (result.patches.length === 0) return true;
    const room = roomFor(game, result.game);
    set({
      game: room.game,
      history: record(history, {
        patches: [...result.patches, ...room.patches],
        inverse: [...room.inverse, ...result.inverse],
        tag,
      }),
    });
    return true;
  },

  undo() {
    const { game, history, readOnly } = get();
    const step = history.past.at(-1);
    if (readOnly || !step) return;
    set({
      game: applyPatchesTo(game, step.inverse),
      history: { past: history.past.slice(0, -1), future: [...history.future, step] },
      refusal: undefined,
    });
  },

  redo() {
    const { game, history, readOnly } = get();
    const step = history.future.at(-1);
    if (readOnly || !step) return;
    set({
      game: applyPatchesTo(game, step.patches),
      history: { past: [...history.past, step], future: history.future.slice(0, -1) },
      refusal: undefined,
    });
  },

  settle() {
    const { history } = get();
    const last = history.past.at(-1);
    if (last?.tag === undefined) return;
    set({ history: { ...history, past: [...history.past.slice(0, -1), { ...last, tag: undefined }] } });
  },

  open(game, provenance) {
    set({ game, provenance, history: noHistory, readOnly: false, refusal: undefined });
  },

  place: (game) => set({ game }),
  setReadOnly: (readOnly) => set({ readOnly }),
  setProvenance: (provenance) => set({ provenance }),
  refuse: (refusal) => set({ refusal }),
  dismissRefusal: () => set({ refusal: undefined }),
}));

useGame.subscribe(({ game }, before) => {
  if (game !== before.game) useView.getState().keepTo(game);
});
