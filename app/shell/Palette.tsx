/** The things to drag onto the map, in the order in which a room is set up. */
import type { Kind } from '../../src/game/model.ts';
import { KIND_NAMES, PALETTE } from '../../src/words/screen.ts';
import { KindShape } from './KindShape.tsx';
import './palette.css';

const KINDS: readonly Kind[] = ['place', 'container', 'fastener', 'key', 'clue', 'tool', 'puzzle', 'prize'];

export function Palette() {
  return (
    <nav className="palette page-palette" aria-label={PALETTE.label}>
      {KINDS.map((kind) => (
        <button key={kind} type="button" className="palette-thing" title={PALETTE.add(KIND_NAMES[kind])}>
          <KindShape kind={kind} />
          {KIND_NAMES[kind]}
        </button>
      ))}
    </nav>
  );
}
