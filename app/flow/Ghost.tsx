/** The new thing under the pointer, on its way from the edge of the page. */

import { newName } from '../../src/words/canvas.ts';
import { KindShape } from '../shell/KindShape.tsx';
import { usePalette } from './drag/palette.ts';

export function Ghost() {
  const ghost = usePalette((state) => state.ghost);
  if (!ghost) return null;
  return (
    <div className="flow-ghost" style={{ translate: `${ghost.x}px ${ghost.y}px` }}>
      <KindShape kind={ghost.kind} />
      {newName(ghost.kind)}
    </div>
  );
}
