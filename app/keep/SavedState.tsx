/** In the head: how safe the open game is, and what can be done about it. */
import { KEEP, savedToFile } from '../../src/words/keep.ts';
import { askForTurn } from './keeping.ts';
import { saveToFile } from './saving.ts';
import type { KeptGame } from './shelf.ts';
import { type Storage, useKeep } from './state.ts';
import { useMinute } from './useMinute.ts';
import './keep.css';

/** The trouble first; then what is known of the file; nothing of a game that has nothing to lose. */
function sentenceOf(storage: Storage, open: KeptGame | undefined, now: number): string | undefined {
  if (!open) return undefined;
  if (storage !== 'kept' && open.changes > 0) return KEEP[storage];
  if (open.filed === undefined && open.changes === 0) return undefined;
  return savedToFile(open.filed, open.changes, now);
}

export function SavedState() {
  const { open, storage, elsewhere } = useKeep();
  const now = useMinute();
  if (elsewhere) {
    return (
      <div className="saved-state saved-state-always" role="status">
        <p className="saved-state-words">{KEEP.elsewhere}</p>
        <button type="button" className="button" onClick={askForTurn}>
          {KEEP.takeOver}
        </button>
      </div>
    );
  }
  const sentence = sentenceOf(storage, open, now);
  if (sentence === undefined || !open) return null;
  const atRisk = storage !== 'kept' && open.changes > 0;
  return (
    <div className={atRisk ? 'saved-state saved-state-always' : 'saved-state'}>
      <p className={atRisk ? 'saved-state-words saved-state-risk' : 'saved-state-words'} role="status">
        {sentence}
      </p>
      {(open.changes > 0 || open.filed === undefined) && (
        <button type="button" className="button" onClick={() => void saveToFile()}>
          {KEEP.save}
        </button>
      )}
    </div>
  );
}
