/** The symbols of a code as plates: moves with their arrow, numbers of a dial with the way it is turned. */
import { Fragment } from 'react';
import type { FastenerType } from '../../../src/fasteners/index.ts';
import { CODE } from '../../../src/words/form-code.ts';
import { Sign, type SignName } from '../../shell/signs.tsx';

export const MOVES = ['U', 'D', 'L', 'R'] as const;
export type Move = (typeof MOVES)[number];

export const MOVE_SIGNS: Readonly<Record<Move, SignName>> = { U: 'up', D: 'down', L: 'left', R: 'right' };

function moveOf(symbol: string): Move | undefined {
  return MOVES.find((move) => move === symbol);
}

export function CodePlates({ type, symbols }: { type: FastenerType; symbols: readonly string[] }) {
  return symbols.map((symbol, at) => {
    const move = type.directions ? moveOf(symbol) : undefined;
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: a symbol of a code is known by its place
      <Fragment key={at}>
        <span className="code-plate">
          {move && <Sign name={MOVE_SIGNS[move]} />}
          {type.type === 'dial' && <Turn at={at} />}
          {symbol}
        </span>{' '}
      </Fragment>
    );
  });
}

/** Right to the first number, left to the next, and so on: common practice; the maker's leaflet decides. */
function Turn({ at }: { at: number }) {
  const isRight = at % 2 === 0;
  return (
    <>
      <span className="aloud">{isRight ? CODE.turns.right : CODE.turns.left} </span>
      <Sign name={isRight ? 'turnRight' : 'turnLeft'} />
    </>
  );
}
