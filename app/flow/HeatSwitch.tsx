/** Turns 'where the time goes' on and off; while it is on, its legend. */
import { HEAT } from '../../src/words/canvas.ts';
import { useView } from '../store/view.ts';
import { SHADES } from './scale.ts';

/** `end`: minutes at the right end of the scale; undefined when there is nothing to show. */
export function HeatSwitch({ end }: { end: number | undefined }) {
  const on = useView((state) => state.heat);
  const setHeat = useView((state) => state.setHeat);
  if (!on) {
    return (
      <button type="button" className="flow-heat" aria-pressed={false} onClick={() => setHeat(true)}>
        {HEAT.show}
      </button>
    );
  }
  return (
    <div className="flow-heat flow-heat-on">
      <strong>{HEAT.title}</strong>
      {end === undefined ? (
        <span className="flow-heat-note">{HEAT.none}</span>
      ) : (
        <>
          <span className="flow-heat-scale">
            0
            <span className="flow-heat-shades" aria-hidden="true">
              {SHADES.map((colour) => (
                <i key={colour} style={{ background: colour }} />
              ))}
            </span>
            {HEAT.most(end)}
          </span>
          <span className="flow-heat-note">{HEAT.legend}</span>
        </>
      )}
      <button type="button" aria-label={HEAT.hide} title={HEAT.hide} onClick={() => setHeat(false)}>
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M4 4l8 8M12 4l-8 8" />
        </svg>
      </button>
    </div>
  );
}
