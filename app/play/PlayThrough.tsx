/** A typical lesson under the map: what happens at a minute in one sentence, the chart, and the map itself at that minute. */
import { useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import { chanceSentence } from '../../src/words/lesson-time.ts';
import { minuteSentence, PLAY } from '../../src/words/play.ts';
import type { Moment } from '../flow/card.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { Sign } from '../shell/signs.tsx';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { Controls } from './Controls.tsx';
import { usePlayClock, usePlaying, within } from './clock.ts';
import { type Lesson, minuteOf, type ShownMinute } from './lesson.ts';
import { Plot } from './Plot.tsx';
import { useLesson } from './use-lesson.ts';
import './play.css';

export default function PlayThrough() {
  const { lesson, words, isOld } = useLesson();
  useBeginning();
  return (
    <section className={isOld ? 'play play-old' : 'play'} aria-label={PLAY.label} onKeyDown={closeOnEscape}>
      {lesson ? (
        <Played lesson={lesson} isOld={isOld} />
      ) : (
        <div className="play-head">
          <h2>{PLAY.title}</h2>
          <p className="play-sentence">{words}</p>
          <Close />
        </div>
      )}
    </section>
  );
}

/** With the focus in it; elsewhere Escape ends a selection. */
function closeOnEscape(event: React.KeyboardEvent): void {
  if (event.key !== 'Escape' || event.defaultPrevented) return;
  event.preventDefault();
  close();
}

/** The focus goes back to the button that opens it. */
function close(): void {
  useView.getState().setPlay(false);
  document.querySelector<HTMLElement>('.flow-play')?.focus();
}

function Played({ lesson, isOld }: { lesson: Lesson; isOld: boolean }) {
  const minute = usePlayClock((state) => within(lesson, state.minute));
  const shown = useShownMinute(lesson, minute);
  const low = useSyncExternalStore(onScreenChange, () => matchMedia(LOW).matches);
  const [body, setBody] = useState<HTMLElement | null>(null);
  const width = useInnerWidth(body);
  usePlaying(lesson);
  return (
    <>
      <div className="play-head">
        <h2>{PLAY.title}</h2>
        <p className="play-sentence">
          <SentenceText sentence={minuteSentence(lesson.game, shown.told)} leads />
        </p>
        <p className="play-chance">
          {isOld ? <span className="quiet">{PLAY.again}</span> : chanceSentence(lesson)}
          {!low && <small>{PLAY.legend}</small>}
        </p>
        <Close />
      </div>
      <div className="play-body">
        <Controls lesson={lesson} />
        <div ref={setBody} className="play-room">
          {width > 0 && <Plot lesson={lesson} told={shown.told} width={width} low={low} />}
        </div>
      </div>
    </>
  );
}

function Close() {
  return (
    <button type="button" className="play-close" aria-label={PLAY.close} title={PLAY.close} onClick={close}>
      <Sign name="cross" />
    </button>
  );
}

const NOTHING: ReadonlyMap<NodeId, Moment> = new Map();

/** How things stand at the minute, for the sentence here and for the map. */
function useShownMinute(lesson: Lesson, minute: number): ShownMinute {
  const last = useRef<ReadonlyMap<NodeId, Moment>>(NOTHING);
  const shown = useMemo(() => minuteOf(lesson, minute, last.current), [lesson, minute]);
  last.current = shown.moments;
  useEffect(() => useView.setState({ moments: shown.moments }), [shown.moments]);
  useEffect(() => () => useView.setState({ moments: undefined }), []);
  return shown;
}

/** Another game is played from its beginning. */
function useBeginning(): void {
  const id = useGame((state) => state.provenance.id);
  const last = useRef(id);
  useEffect(() => {
    if (last.current !== id) usePlayClock.setState({ minute: 0, playing: false });
    last.current = id;
  }, [id]);
  useEffect(() => () => usePlayClock.setState({ playing: false }), []);
}

const LOW = '(max-height: 540px)';

function onScreenChange(changed: () => void): () => void {
  const query = matchMedia(LOW);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
}

/** In whole pixels; 0 until it is known. */
function useInnerWidth(element: HTMLElement | null): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)));
    watch.observe(element);
    return () => watch.disconnect();
  }, [element]);
  return width;
}
