/** Legend of 'where the time goes': which of two readings, their scale, what is seen in one sentence, and the chain that decides the end. */
import { useId } from 'react';
import { HEAT_LEGEND, heatSentence } from '../../src/words/heat.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useAssessment } from '../store/assessment.ts';
import { type Reading, useView } from '../store/view.ts';
import type { HeatShown } from './heat.ts';
import { SHADES } from './scale.ts';
import './heat-legend.css';

const READINGS: readonly Reading[] = ['cost', 'waiting'];

export default function HeatLegend({ shown }: { shown: HeatShown | undefined }) {
  const { setHeat } = useView.getState();
  const { canBeWon } = useAssessment();
  return (
    <section className="heat-legend" aria-label={HEAT_LEGEND.title}>
      <div className="heat-row">
        <strong>{HEAT_LEGEND.title}</strong>
        <Picker />
        <button
          type="button"
          className="heat-close"
          aria-label={HEAT_LEGEND.hide}
          title={HEAT_LEGEND.hide}
          onClick={() => setHeat(false)}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="M4 4l8 8M12 4l-8 8" />
          </svg>
        </button>
      </div>
      <div className="heat-row">
        <Scale end={shown?.end} />
        <ChainSwitch />
      </div>
      <p className="heat-said" aria-live="polite">
        {shown ? <Seen shown={shown} /> : canBeWon ? HEAT_LEGEND.working : HEAT_LEGEND.none}
      </p>
    </section>
  );
}

function Picker() {
  const name = useId();
  const reading = useView((state) => state.reading);
  return (
    <span className="heat-readings" role="radiogroup" aria-label={HEAT_LEGEND.title}>
      {READINGS.map((one) => (
        <label key={one} title={HEAT_LEGEND.unit[one]}>
          <input
            type="radio"
            name={name}
            checked={one === reading}
            onChange={() => useView.getState().setReading(one)}
          />
          {HEAT_LEGEND.readings[one]}
        </label>
      ))}
    </span>
  );
}

function Scale({ end }: { end: number | undefined }) {
  const reading = useView((state) => state.reading);
  return (
    <span className="heat-scale" title={HEAT_LEGEND.unit[reading]}>
      0
      <span className="heat-shades" aria-hidden="true">
        {SHADES.map((colour) => (
          <i key={colour} style={{ background: colour }} />
        ))}
      </span>
      {end === undefined ? '' : HEAT_LEGEND.most(end)}
    </span>
  );
}

function ChainSwitch() {
  const chain = useView((state) => state.chain);
  return (
    <label className="heat-chain" title={HEAT_LEGEND.chainLong}>
      <input
        type="checkbox"
        checked={chain}
        onChange={(event) => useView.getState().setChain(event.target.checked)}
      />
      <i aria-hidden="true" />
      {HEAT_LEGEND.chain}
    </label>
  );
}

function Seen({ shown: { figures, isOld, most } }: { shown: HeatShown }) {
  const reading = useView((state) => state.reading);
  const { game } = useAssessment();
  return (
    <>
      {isOld && `${HEAT_LEGEND.old} `}
      <SentenceText sentence={heatSentence(game, figures, reading, most)} leads />
      {reading === 'waiting' && most !== undefined && ` ${HEAT_LEGEND.pupilMinutes}`}
    </>
  );
}
