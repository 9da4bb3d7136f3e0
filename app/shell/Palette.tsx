/** The things to drag onto the map, in the order in which a room is set up; below them undo and redo. */
import { KINDS, type Kind } from '../../src/game/model.ts';
import { KIND_NAMES, PALETTE } from '../../src/words/screen.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { prepareTidying } from '../commands/selection.ts';
import { addByClick } from '../flow/drag/adding.ts';
import { beginPaletteDrag } from '../flow/drag/palette.ts';
import { useGame } from '../store/game.ts';
import { useTidying } from '../store/tidying.ts';
import { useView } from '../store/view.ts';
import { KindShape } from './KindShape.tsx';
import './palette.css';

/** Only a lock can be refused: it needs a box to sit on, and none is selected. */
function add(kind: Kind): void {
  if (!addByClick(kind)) useGame.getState().refuse({ reason: 'needsContainer', id: '' });
}

export function Palette() {
  const readOnly = useGame((state) => state.readOnly);
  return (
    <nav className="palette page-palette" aria-label={PALETTE.label}>
      {KINDS.map((kind) => (
        <button
          key={kind}
          type="button"
          className="palette-thing"
          title={PALETTE.add(KIND_NAMES[kind])}
          disabled={readOnly}
          onPointerDown={(event) => {
            if (event.button === 0) beginPaletteDrag(kind, event);
          }}
          onClick={() => add(kind)}
        >
          <KindShape kind={kind} />
          {KIND_NAMES[kind]}
        </button>
      ))}
      <div className="palette-acts">
        <CommandButton name="undo" sign="undo" className="palette-act" />
        <CommandButton name="redo" sign="redo" className="palette-act" />
        <TidyButton />
        <CommandButton name="keys" sign="keys" className="palette-act palette-act-wide" />
      </div>
    </nav>
  );
}

/** Its longer words fill the width alone. */
function TidyButton() {
  const several = useView((state) => state.nodes.size > 1);
  const stopping = useTidying((state) => state.work === 'asked');
  const className = 'palette-act palette-act-wide';
  return several || stopping ? (
    <CommandButton name="tidy" className={className} onApproach={prepareTidying} />
  ) : (
    <CommandButton name="tidy" sign="tidy" className={className} onApproach={prepareTidying} />
  );
}
