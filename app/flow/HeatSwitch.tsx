/** Turns 'where the time goes' on and off. The legend is loaded with it. */
import { HEAT } from '../../src/words/canvas.ts';
import { PartView } from '../parts/PartView.tsx';
import { part } from '../parts/part.ts';
import { useView } from '../store/view.ts';
import type { HeatShown } from './heat.ts';

const HEAT_LEGEND = part(() => import('./HeatLegend.tsx'));

/** `shown`: undefined while nothing is known. */
export function HeatSwitch({ shown }: { shown: HeatShown | undefined }) {
  const on = useView((state) => state.heat);
  if (on) {
    return (
      <PartView of={HEAT_LEGEND} onLost={() => useView.getState().setHeat(false)}>
        {({ default: HeatLegend }) => <HeatLegend shown={shown} />}
      </PartView>
    );
  }
  return (
    <button
      type="button"
      className="flow-heat"
      aria-pressed={false}
      onClick={() => useView.getState().setHeat(true)}
    >
      {HEAT.show}
    </button>
  );
}
