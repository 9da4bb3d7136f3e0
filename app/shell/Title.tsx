/** The title of the game: changed in place by a click. */
import { useEffect, useRef, useState } from 'react';
import { TITLE } from '../../src/words/screen.ts';
import { useDraft } from '../inspect/draft.ts';
import { readText } from '../inspect/TextField.tsx';
import { useGame } from '../store/game.ts';

export function writeTitle(title: string | undefined): void {
  useGame.getState().apply([{ type: 'setHead', fields: { title } }], 'title');
}

export function Title() {
  const title = useGame((state) => state.game.head.title ?? '');
  const readOnly = useGame((state) => state.readOnly);
  const [changing, setChanging] = useState(false);
  const draft = useDraft('title', title, readText, writeTitle);
  const input = useRef<HTMLInputElement>(null);
  const shown = title.trim() === '' ? TITLE.nameless : title;

  useEffect(() => {
    if (changing) input.current?.select();
  }, [changing]);

  useEffect(() => {
    if (readOnly) setChanging(false);
  }, [readOnly]);

  if (changing && !readOnly) {
    return (
      <h1 className="head-title">
        <input
          ref={input}
          className="field head-title-field"
          aria-label={TITLE.label}
          value={draft.value}
          autoComplete="off"
          onChange={(event) => draft.change(event.target.value)}
          onBlur={() => {
            draft.leave();
            setChanging(false);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter' || event.key === 'Escape') event.currentTarget.blur();
          }}
        />
      </h1>
    );
  }
  return (
    <h1 className="head-title">
      <button
        type="button"
        className="head-title-button"
        aria-label={TITLE.change(shown)}
        title={TITLE.change(shown)}
        disabled={readOnly}
        onClick={() => setChanging(true)}
      >
        {shown}
      </button>
    </h1>
  );
}
