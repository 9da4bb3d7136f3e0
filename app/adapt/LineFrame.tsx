/** A line of the list: whether it is done, what it is about, and, when it is done, the way back. */
import type { Edit } from '../../src/game/edits/edit.ts';
import type { Line } from '../../src/kit/adapt/plan.ts';
import { ADAPT } from '../../src/words/adapt.ts';
import { plain, type Sentence } from '../../src/words/sentence.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { Sign } from '../shell/signs.tsx';
import { backOf, undoLine, useAdapting } from './adapting.ts';

interface LineFrameProps {
  readonly line: Line;
  /** What is said of it once it is done, or stays. */
  readonly done: Sentence;
  /** What takes it back where it is not known any more what it did; undefined where nothing does. */
  readonly otherwise: readonly Edit[] | undefined;
  /** What is to be done. */
  readonly children: React.ReactNode;
}

export function LineFrame({ line: { key, state, sort }, done, otherwise, children }: LineFrameProps) {
  return (
    <li className={`adapt-line adapt-line-${state}`} data-line={key} data-state={state}>
      <span className="adapt-mark">
        {state !== 'open' && <Sign name="tick" />}
        <span className={state === 'open' ? undefined : 'aloud'}>
          {sort === 'spare' && state === 'open' ? '' : ADAPT.state[state]}
        </span>
      </span>
      <div className="adapt-body">
        {state === 'open' ? (
          children
        ) : (
          <div className="adapt-done">
            <p>
              <SentenceText sentence={done} />
            </p>
            <Back lineKey={key} state={state} done={done} otherwise={otherwise} />
          </div>
        )}
      </div>
    </li>
  );
}

interface BackProps extends Pick<LineFrameProps, 'done' | 'otherwise'> {
  readonly lineKey: string;
  readonly state: Line['state'];
}

function Back({ lineKey, state, done, otherwise }: BackProps) {
  // Whether it can be taken back hangs on what was done since.
  useAdapting((adapting) => adapting.deeds);
  const back = backOf(lineKey, otherwise);
  const canGo = state === 'kept' || back !== undefined;
  return (
    <button
      type="button"
      className="button"
      aria-label={ADAPT.backNamed(plain(done))}
      disabled={!canGo}
      title={canGo ? undefined : ADAPT.cannotGoBack}
      onClick={() => undoLine(lineKey, back)}
    >
      {ADAPT.back}
    </button>
  );
}
