/** The words of a shape when the map is drawn small (flow.css shows these or the others, so that zooming renders nothing anew). */
import { HOLDS_SIZE, type SmallWords } from '../small.ts';
import { StepNumber } from './Title.tsx';

export function Small({ words, number }: { words: SmallWords | undefined; number: number }) {
  if (!words) return null;
  const { x, y, width, height, name, step, size, holds } = words;
  return (
    <div
      className="flow-small"
      style={{ left: x, top: y, width, height, fontSize: `min(var(--name-size), ${size}px)` }}
    >
      {step && <StepNumber number={number} />}
      <span>
        <b>{name}</b>
        {holds !== '' && <span style={{ fontSize: `${HOLDS_SIZE}em` }}>{holds}</span>}
      </span>
    </div>
  );
}
