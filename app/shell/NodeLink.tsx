/** The name of a thing as a word that leads to it: selects it, and the map goes there. */
import type { NodeId } from '../../src/game/model.ts';
import { useView } from '../store/view.ts';

export function NodeLink({ id, children }: { id: NodeId; children: React.ReactNode }) {
  return (
    <button type="button" className="word-link" onClick={() => useView.getState().show([id])}>
      {children}
    </button>
  );
}
