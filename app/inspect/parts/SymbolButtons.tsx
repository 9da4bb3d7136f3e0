/** Symbols to press where they are few and awkward to type: moves, and the pictures of a lock whose wheels are known. */
import type { FastenerType, Hardware } from '../../../src/fasteners/index.ts';
import { CODE } from '../../../src/words/form-code.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { Sign } from '../../shell/signs.tsx';
import { MOVE_SIGNS, MOVES } from './CodePlates.tsx';

/** More are found faster by typing. */
const MOST = 12;

export interface SymbolButtonsProps {
  readonly type: FastenerType;
  readonly hardware: Hardware | undefined;
  /** The position, from 0, that the next symbol takes. */
  readonly next: number;
  readonly onAdd: (symbol: string) => void;
}

export function SymbolButtons({ type, hardware, next, onAdd }: SymbolButtonsProps) {
  if (type.directions) {
    return (
      <div className="code-symbols code-moves">
        {MOVES.map((move) => (
          <button
            key={move}
            type="button"
            className="button"
            aria-label={CODE.add(FORM.directions[move])}
            onClick={() => onAdd(move)}
          >
            <Sign name={MOVE_SIGNS[move]} />
            {move}
          </button>
        ))}
      </div>
    );
  }
  const pictures = type.type === 'picture' ? (type.wheel(next, hardware) ?? []) : [];
  if (pictures.length === 0 || pictures.length > MOST) return null;
  return (
    <div className="code-symbols">
      {pictures.map((picture) => (
        <button
          key={picture}
          type="button"
          className="button"
          aria-label={CODE.add(picture)}
          onClick={() => onAdd(picture)}
        >
          {picture}
        </button>
      ))}
    </div>
  );
}
