/** The minute that is shown, and playing on from it. */
import { useEffect } from 'react';
import { create } from 'zustand';
import { type Lesson, toTenth } from './lesson.ts';

/** Times as fast as in class. */
export const SPEEDS = [30, 60, 120] as const;
export type Speed = (typeof SPEEDS)[number];

interface PlayClock {
  readonly minute: number;
  readonly playing: boolean;
  readonly speed: Speed;
}

export const usePlayClock = create<PlayClock>()(() => ({ minute: 0, playing: false, speed: 60 }));

/** Goes there and stays. */
export function goTo(lesson: Lesson, minute: number): void {
  usePlayClock.setState({ minute: within(lesson, minute), playing: false });
}

/** In tenths, and never beyond what is shown. */
export function within({ last }: Lesson, minute: number): number {
  return Math.min(Math.max(0, toTenth(minute)), last);
}

/** The next minute at which something is new, or the one before; the minute itself where there is none. */
export function eventFrom({ events }: Lesson, minute: number, way: 1 | -1): number {
  const found = way > 0 ? events.find((event) => event > minute) : events.findLast((event) => event < minute);
  return found ?? minute;
}

/** From the beginning again once the end is reached. */
export function playOrPause(lesson: Lesson): void {
  const { playing, minute } = usePlayClock.getState();
  if (playing) usePlayClock.setState({ playing: false });
  else usePlayClock.setState({ playing: true, minute: within(lesson, minute) >= lesson.last ? 0 : minute });
}

/** The page may have been away: no jump is longer. */
const LONGEST_FRAME = 0.25;

/** Moves the minute while it is played; where the system asks for less movement, from event to event. */
export function usePlaying(lesson: Lesson): void {
  const playing = usePlayClock((state) => state.playing);
  const speed = usePlayClock((state) => state.speed);
  useEffect(() => {
    if (!playing) return;
    const inSteps = matchMedia('(prefers-reduced-motion: reduce)').matches;
    let before: number | undefined;
    let at = within(lesson, usePlayClock.getState().minute);
    let shown = at;
    let frame = requestAnimationFrame(function next(now) {
      const seconds = Math.min(LONGEST_FRAME, before === undefined ? 0 : (now - before) / 1000);
      before = now;
      at = Math.min(at + (seconds * speed) / 60, lesson.last);
      // Rounded down: nothing is shown before it happens.
      const tenth = at >= lesson.last ? lesson.last : Math.floor(at * 10) / 10;
      const minute = inSteps ? (lesson.events.findLast((event) => event <= tenth) ?? 0) : tenth;
      if (minute > shown) {
        shown = minute;
        usePlayClock.setState({ minute, playing: minute < lesson.last });
      }
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, speed, lesson]);
}
