/** Play, pause, how fast, and on to the next event. */
import { PLAY } from '../../src/words/play.ts';
import { eventFrom, goTo, playOrPause, SPEEDS, type Speed, usePlayClock, within } from './clock.ts';
import type { Lesson } from './lesson.ts';

const DRAWINGS = {
  play: 'M4.5 2.5v11l9-5.5z',
  pause: 'M4 2.5h3v11H4zM9.5 2.5h3v11h-3z',
  next: 'M3 3l6.5 5L3 13zM11.5 3h2v10h-2z',
  previous: 'M13 3L6.5 8l6.5 5zM2.5 3h2v10h-2z',
} as const;

function Sign({ name }: { name: keyof typeof DRAWINGS }) {
  return (
    <svg className="play-sign" viewBox="0 0 16 16" aria-hidden="true">
      <path d={DRAWINGS[name]} />
    </svg>
  );
}

const speedOf = (text: string): Speed => SPEEDS.find((speed) => String(speed) === text) ?? 60;

export function Controls({ lesson }: { lesson: Lesson }) {
  const playing = usePlayClock((state) => state.playing);
  const speed = usePlayClock((state) => state.speed);
  const minute = usePlayClock((state) => within(lesson, state.minute));
  return (
    <div className="play-controls">
      <button type="button" className="button play-main" onClick={() => playOrPause(lesson)}>
        <Sign name={playing ? 'pause' : 'play'} />
        <span>{playing ? PLAY.pause : PLAY.play}</span>
      </button>
      <select
        className="field play-speed"
        aria-label={PLAY.speed}
        title={PLAY.times(speed)}
        value={speed}
        onChange={(event) => usePlayClock.setState({ speed: speedOf(event.target.value) })}
      >
        {SPEEDS.map((each) => (
          <option key={each} value={each}>
            {PLAY.timesShort(each)}
          </option>
        ))}
      </select>
      {([-1, 1] as const).map((way) => {
        const words = way > 0 ? PLAY.next : PLAY.previous;
        const there = eventFrom(lesson, minute, way);
        return (
          <button
            key={way}
            type="button"
            className="button play-step"
            aria-label={words}
            title={words}
            disabled={there === minute}
            onClick={() => goTo(lesson, there)}
          >
            <Sign name={way > 0 ? 'next' : 'previous'} />
          </button>
        );
      })}
    </div>
  );
}
