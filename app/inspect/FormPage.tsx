/** A form with its heading: what it is the form of, its step number, and the way back. Read only, the way back stays open. */
import type { GameNode } from '../../src/game/model.ts';
import { FORM, formTitle } from '../../src/words/screen-form.ts';
import { Sign } from '../shell/signs.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { stepNumber } from './measured.ts';

export function FormPage({ head, children }: { head: React.ReactNode; children: React.ReactNode }) {
  const readOnly = useGame((state) => state.readOnly);
  return (
    <>
      {head}
      <fieldset className="form-fields" disabled={readOnly}>
        {children}
      </fieldset>
    </>
  );
}

export function FormHead({ title, step = 0 }: { title: string; step?: number }) {
  return (
    <header className="form-head">
      <h2 className="form-title">{title}</h2>
      {step > 0 && <span className="form-step">{FORM.step(step)}</span>}
      <button
        type="button"
        className="form-cross"
        aria-label={FORM.back}
        title={FORM.back}
        onClick={() => useView.getState().select([])}
      >
        <Sign name="cross" />
      </button>
    </header>
  );
}

export function NodeHead({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  return <FormHead title={formTitle(game, node)} step={stepNumber(useAssessment(), node.id)} />;
}
