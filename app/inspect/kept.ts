/**
 * What was typed and the game cannot take yet, by the field it stands in. Kept while the game is open, so that nothing
 * typed is lost when something else is selected meanwhile.
 */
import { create } from 'zustand';
import { useGame } from '../store/game.ts';

export interface Kept {
  /** One entry for each box that is typed in. */
  readonly typed: readonly string[];
  /** What the game's value looked like then: once the game says something else, this is out of date. */
  readonly of: string;
}

const useKept = create<{ readonly kept: ReadonlyMap<string, Kept> }>()(() => ({ kept: new Map() }));

useGame.subscribe((now, before) => {
  if (now.provenance.id !== before.provenance.id) useKept.setState({ kept: new Map() });
});

/** Undefined as long as the game has what the field shows. */
export function useKeptDraft(field: string, shown: string): Kept | undefined {
  const kept = useKept((state) => state.kept.get(field));
  return kept?.of === shown ? kept : undefined;
}

export function keepDraft(field: string, draft: Kept | undefined): void {
  const kept = new Map(useKept.getState().kept);
  if (draft) kept.set(field, draft);
  else kept.delete(field);
  useKept.setState({ kept });
}
