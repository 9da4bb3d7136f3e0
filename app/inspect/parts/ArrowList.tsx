/** A list of arrows by the things at their other ends, and a list to add one from. */
import { useState } from 'react';
import { FORM } from '../../../src/words/screen-form.ts';
import { NodeLink } from '../../shell/NodeLink.tsx';
import { Sign } from '../../shell/signs.tsx';
import { useGame } from '../../store/game.ts';
import { type Choice, Picker } from '../Picker.tsx';
import { type Arrow, removeArrow } from './arrows.ts';
import { shownName } from './holders.ts';

export interface ArrowListProps {
  readonly arrows: readonly Arrow[];
  readonly none: string;
  readonly add: string;
  readonly choices: () => readonly Choice[];
  readonly onAdd: (id: string) => void;
  /** What else is said of an arrow, below it. */
  readonly below?: (arrow: Arrow) => React.ReactNode;
  readonly children?: React.ReactNode;
}

export function ArrowList({ arrows, none, add, choices, onAdd, below, children }: ArrowListProps) {
  const game = useGame((state) => state.game);
  const [choosing, setChoosing] = useState(false);
  return (
    <>
      {arrows.length === 0 ? (
        <p className="quiet">{none}</p>
      ) : (
        <ul className="form-list">
          {arrows.map((arrow) => (
            <li key={arrow.link.id}>
              <div className="form-line">
                <NodeLink id={arrow.other.id}>{shownName(game, arrow.other)}</NodeLink>
                <button
                  type="button"
                  className="form-cross"
                  aria-label={FORM.removeArrow(shownName(game, arrow.other))}
                  title={FORM.removeArrow(shownName(game, arrow.other))}
                  onClick={() => removeArrow(arrow.link.id)}
                >
                  <Sign name="cross" />
                </button>
              </div>
              {below?.(arrow)}
            </li>
          ))}
        </ul>
      )}
      {children}
      <button
        type="button"
        className="button form-add"
        aria-expanded={choosing}
        onClick={() => setChoosing(!choosing)}
      >
        {add}
      </button>
      {choosing && (
        <Picker
          label={add}
          choices={choices()}
          onPick={(id) => {
            setChoosing(false);
            onAdd(id);
          }}
          onClose={() => setChoosing(false)}
        />
      )}
    </>
  );
}
