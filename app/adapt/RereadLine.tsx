/** A text to be read again: why, the text itself to be changed where it has to be, and the word that it is right as it is. */
import { useState } from 'react';
import type { Game } from '../../src/game/model.ts';
import { type Plan, type RereadLine as Reread, rereadBack } from '../../src/kit/adapt/plan.ts';
import { setText, spotKey } from '../../src/kit/adapt/texts.ts';
import { ADAPT, fieldName, reasonSentence, rereadDone, rereadTitle } from '../../src/words/adapt.ts';
import { plain } from '../../src/words/sentence.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useView } from '../store/view.ts';
import { act, keep, useBusy } from './adapting.ts';
import { LineFrame } from './LineFrame.tsx';
import { closeAdapt } from './open.ts';

interface RereadLineProps {
  readonly line: Reread;
  readonly plan: Plan;
  readonly game: Game;
  readonly original: Game;
  readonly main: boolean;
}

/** So many lines of a text are shown at once. */
const MOST_ROWS = 8;
const SIGNS_A_ROW = 90;

function rowsOf(text: string): number {
  const rows = text.split('\n').map((line) => Math.max(1, Math.ceil(line.length / SIGNS_A_ROW)));
  return Math.min(
    MOST_ROWS,
    rows.reduce((sum, row) => sum + row, 0),
  );
}

export function RereadLine({ line, plan, game, original, main }: RereadLineProps) {
  const title = rereadTitle(game, line);
  const name = plain(title);
  const busy = useBusy();
  const [typed, setTyped] = useState<ReadonlyMap<string, string>>(new Map());
  const texts = line.passages.map(({ spot, text, suggestion }) => ({
    spot,
    text,
    value: typed.get(spotKey(spot)) ?? suggestion ?? text,
  }));
  const changed = texts.filter(({ text, value }) => text !== value);
  return (
    <LineFrame line={line} done={rereadDone(game, line)} otherwise={rereadBack(plan, game, line)}>
      <p>
        <SentenceText sentence={title} />
      </p>
      <ul className="adapt-reasons">
        {line.reasons.map((reason) => (
          <li key={JSON.stringify(reason)}>
            <SentenceText sentence={reasonSentence(original, game, line.of, reason)} />
          </li>
        ))}
      </ul>
      {texts.map(({ spot, text, value }) => (
        <label key={spotKey(spot)} className="adapt-note">
          <span className="label">{fieldName(spot)}</span>
          <textarea
            className="field"
            rows={rowsOf(value)}
            value={value}
            aria-label={`${fieldName(spot)}: ${name}`}
            onChange={(event) => setTyped(new Map(typed).set(spotKey(spot), event.target.value))}
          />
          {text !== value && (
            <span className="adapt-came">
              {ADAPT.was}: <del>{text}</del>
            </span>
          )}
        </label>
      ))}
      <div className="adapt-acts">
        {texts.length > 0 && (
          <button
            type="button"
            className={main && changed.length > 0 ? 'button button-main' : 'button'}
            aria-label={ADAPT.takeTextNamed(name)}
            disabled={changed.length === 0 || busy}
            onClick={() =>
              void act(
                line.key,
                changed.map(({ spot, value }) => setText(spot, value)),
                true,
              )
            }
          >
            {ADAPT.takeText}
          </button>
        )}
        <button
          type="button"
          className={main && changed.length === 0 ? 'button button-main' : 'button'}
          aria-label={ADAPT.rightNamed(name)}
          onClick={() => keep(line.key)}
        >
          {ADAPT.right}
        </button>
        <button
          type="button"
          className="button"
          aria-label={ADAPT.showNamed(name)}
          onClick={() => {
            closeAdapt();
            useView.getState().show([line.of]);
          }}
        >
          {ADAPT.show}
        </button>
      </div>
    </LineFrame>
  );
}
