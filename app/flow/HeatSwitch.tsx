/** Turns 'where the time goes' on and off. The legend is loaded with it. */
import { lazy, Suspense } from 'react';
import { HEAT } from '../../src/words/canvas.ts';
import { useView } from '../store/view.ts';
import type { HeatShown } from './heat.ts';

const HeatLegend = lazy(() => import('./HeatLegend.tsx'));

/** `shown`: undefined while nothing is known. */
export function HeatSwitch({ shown }: { shown: HeatShown | undefined }) {
  const on = useView((state) => state.heat);
  if (on) {
    return (
      <Suspense>
        <HeatLegend shown={shown} />
      </Suspense>
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
