/** Over a form: what it is the form of, its step number, and the way back. */
import type { GameNode } from '../../src/game/model.ts';
import { FORM, formTitle } from '../../src/words/screen-form.ts';
import { Sign } from '../shell/signs.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { stepNumber } from './measured.ts';

export function BackButton() {
  return (
    <button
      type="button"
      className="form-cross"
      aria-label={FORM.back}
      title={FORM.back}
      onClick={() => useView.getState().select([])}
    >
      <Sign name="cross" />
    </button>
  );
}

export function FormHead({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  const number = stepNumber(useAssessment(), node.id);
  return (
    <header className="form-head">
      <h2 className="form-title">{formTitle(game, node)}</h2>
      {number > 0 && <span className="form-step">{FORM.step(number)}</span>}
      <BackButton />
    </header>
  );
}
