/** What would happen on letting go, said at the pointer; and the row that is meant. */
import { useEffect, useRef } from 'react';
import { ViewportPortal } from 'reactflow';
import { useGame } from '../store/game.ts';
import { useDrag } from './drag/held.ts';
import { useLevel } from './levels.ts';
import { useLinking } from './links/linking.ts';
import { useHover } from './pointing.ts';

/** A note stays within the window. */
const WIDEST = 290;
const HIGHEST = 70;

export function PointerNote() {
  const dragNote = useDrag((state) => state.note);
  const linkNote = useLinking((state) => state.linking?.note);
  const level = useLevel((state) => state.level);
  const hovered = useHover((state) => state.node);
  const name = useGame(({ game }) =>
    level === 'shapes' && hovered !== undefined ? game.nodes.get(hovered)?.name : undefined,
  );
  const note = dragNote ?? linkNote ?? (name ? { text: name, refused: false } : undefined);
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const follow = ({ clientX, clientY }: PointerEvent) => {
      if (element.current)
        element.current.style.translate = `${Math.min(clientX + 16, innerWidth - WIDEST)}px ${Math.min(clientY + 18, innerHeight - HIGHEST)}px`;
    };
    addEventListener('pointermove', follow);
    return () => removeEventListener('pointermove', follow);
  }, []);
  return (
    <div ref={element} className="flow-pointer" role="status">
      {note && (
        <span className={note.refused ? 'flow-note flow-note-refused' : 'flow-note'}>{note.text}</span>
      )}
    </div>
  );
}

export function RowMark() {
  const mark = useDrag((state) => state.mark);
  if (!mark) return null;
  return (
    <ViewportPortal>
      <i
        className="flow-mark"
        style={{ transform: `translate(${mark.x}px, ${mark.y}px)`, width: mark.width, height: mark.height }}
      />
    </ViewportPortal>
  );
}
