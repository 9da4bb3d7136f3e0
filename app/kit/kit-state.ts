/**
 * My kit as it is on the page, with one history for all that is done while it is open: whatever was changed last, the kit or the game,
 * is taken back first. A kit is a value, so that a step of it is what was there before and after.
 */
import { create } from 'zustand';
import type { Edit } from '../../src/game/edits/edit.ts';
import type { Storage } from '../keep/state.ts';
import { type EditTag, useGame } from '../store/game.ts';
import type { HistoryStep } from '../store/history.ts';
import { NOTHING_OWNED, type Owned } from './owned.ts';

type Deed =
  | {
      readonly of: 'kit';
      readonly before: Owned;
      readonly after: Owned;
      /** Deeds that carry one tag and follow each other are one. */
      readonly tag: string | undefined;
    }
  | { readonly of: 'game'; readonly step: HistoryStep };

/** What has just happened to the kit, or why a file could not be read. */
export interface KitNews {
  readonly lines: readonly string[];
  readonly trouble: boolean;
  /** What can be done about it. */
  readonly act?: { readonly label: string; readonly run: () => void };
}

export interface KitState {
  /** False until what the browser keeps has been read. */
  readonly ready: boolean;
  readonly owned: Owned;
  readonly past: readonly Deed[];
  readonly future: readonly Deed[];
  readonly storage: Storage;
  /** Every change so far is stored. */
  readonly stored: boolean;
  readonly news: KitNews | undefined;

  change(next: Owned, tag?: string): void;
  /** True when the edits were applied. */
  changeGame(edits: readonly Edit[], tag?: EditTag): boolean;
  /** Ends a gesture, such as typing in a field. */
  settle(): void;
  undo(): void;
  redo(): void;
  /** From then on the map takes back what was done to the game. */
  leaveGame(): void;
  tell(news: KitNews | undefined): void;
}

/** Whether it is still the next that the game would take back, or do again. */
function isNext(deed: Deed, way: 'past' | 'future'): boolean {
  return deed.of === 'kit' || useGame.getState().history[way].at(-1) === deed.step;
}

const withoutGame = (deeds: readonly Deed[]) => deeds.filter(({ of }) => of === 'kit');

export const useKit = create<KitState>()((set, get) => ({
  ready: false,
  owned: NOTHING_OWNED,
  past: [],
  future: [],
  storage: 'kept',
  stored: true,
  news: undefined,

  change(next, tag) {
    const { owned, past, future } = get();
    if (next === owned) return;
    const last = past.at(-1);
    const joins = last?.of === 'kit' && tag !== undefined && last.tag === tag && future.length === 0;
    const deed: Deed = { of: 'kit', before: joins ? last.before : owned, after: next, tag };
    set({ owned: next, past: [...(joins ? past.slice(0, -1) : past), deed], future: [], news: undefined });
  },

  changeGame(edits, tag) {
    const before = useGame.getState().history.past;
    if (!useGame.getState().apply(edits, tag)) return false;
    const after = useGame.getState().history.past;
    const step = after.at(-1);
    if (after === before || !step) return true;
    const { past } = get();
    const last = past.at(-1);
    const joins = last?.of === 'game' && after.length === before.length && last.step === before.at(-1);
    set({ past: [...(joins ? past.slice(0, -1) : past), { of: 'game', step }], future: [], news: undefined });
    return true;
  },

  settle() {
    useGame.getState().settle();
    const { past } = get();
    const last = past.at(-1);
    if (last?.of === 'game') {
      const step = useGame.getState().history.past.at(-1);
      if (step && step.patches === last.step.patches)
        set({ past: [...past.slice(0, -1), { of: 'game', step }] });
    } else if (last?.tag !== undefined) {
      set({ past: [...past.slice(0, -1), { ...last, tag: undefined }] });
    }
  },

  undo() {
    const past = get().past.filter((deed, i, all) => i < all.length - 1 || isNext(deed, 'past'));
    const deed = past.at(-1);
    if (!deed) return set({ past });
    if (deed.of === 'game') useGame.getState().undo();
    set({
      past: past.slice(0, -1),
      future: [...get().future, deed],
      news: undefined,
      ...(deed.of === 'kit' && { owned: deed.before }),
    });
  },

  redo() {
    const deed = get().future.at(-1);
    if (!deed) return;
    const future = get().future.slice(0, -1);
    if (!isNext(deed, 'future')) return set({ future });
    if (deed.of === 'game') useGame.getState().redo();
    set({
      past: [...get().past, deed],
      future,
      news: undefined,
      ...(deed.of === 'kit' && { owned: deed.after }),
    });
  },

  leaveGame: () => set({ past: withoutGame(get().past), future: withoutGame(get().future) }),
  tell: (news) => set({ news }),
}));
