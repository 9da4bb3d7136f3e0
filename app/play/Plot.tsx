/** The chart with what stands under it; the whole of it is dragged to a minute, and answers the arrow keys. */
import { type PointerEvent, useMemo, useRef } from 'react';
import { minuteAloud, PLAY, type PlayedMinute } from '../../src/words/play.ts';
import { axisOf } from './axis.ts';
import { Chart } from './Chart.tsx';
import { eventFrom, goTo, usePlayClock } from './clock.ts';
import type { Lesson } from './lesson.ts';
import { LANE, Openings, useLanes } from './Openings.tsx';

interface Props {
  readonly lesson: Lesson;
  readonly told: PlayedMinute;
  /** Of what is left for the areas. */
  readonly width: number;
  /** A screen so low that there is no room for words and figures. */
  readonly low: boolean;
}

const AREAS = { high: 46, low: 19 };
/** Between the areas and the lanes: figures, or on a low screen none. */
const FIGURES = { high: 20, low: -2 };
const MOST_LANES = 4;
/** A hand that moves by fewer pixels only presses. */
const STILL = 3;

export function Plot({ lesson, told, width, low }: Props) {
  const chart = useRef<HTMLDivElement>(null);
  const range = useRef<HTMLInputElement>(null);
  /** Where the pointer was pressed, until it has moved from there. */
  const pressed = useRef(0);
  const bell = lesson.clock.lesson.minutes;
  const axis = useMemo(() => axisOf(latestOf(lesson), bell, width), [lesson, bell, width]);
  const { marks, laneOf } = useLanes(lesson, axis, width, low ? 1 : MOST_LANES);
  const { minute } = told;
  const now = (Math.min(minute, lesson.end) / axis.span) * width;
  const height = low ? AREAS.low : AREAS.high;
  const top = height + (low ? FIGURES.low : FIGURES.high);

  const goToPointer = (event: PointerEvent) => {
    const left = chart.current?.getBoundingClientRect().left ?? 0;
    goTo(lesson, ((event.clientX - left) / width) * axis.span);
  };
  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return;
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    pressed.current = event.clientX;
    range.current?.focus({ preventScroll: true });
    const minute = event.target instanceof HTMLElement ? event.target.dataset['minute'] : undefined;
    if (minute === undefined) goToPointer(event);
    else goTo(lesson, Number(minute));
  };
  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    if (Math.abs(event.clientX - pressed.current) < STILL) return;
    pressed.current = Number.NEGATIVE_INFINITY;
    goToPointer(event);
  };

  return (
    <div
      className="play-drag"
      data-low={low || undefined}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
    >
      <div
        ref={chart}
        className="play-plot"
        style={{ width, height: top + (low ? 14 : (Math.max(0, ...laneOf) + 1) * LANE) }}
      >
        <input
          ref={range}
          type="range"
          className="play-range"
          min={0}
          max={lesson.last}
          step="any"
          value={minute}
          aria-label={PLAY.minute}
          aria-valuetext={minuteAloud(lesson.game, told)}
          onChange={(event) => goTo(lesson, Number(event.target.value))}
          onKeyDown={(event) => {
            const there =
              event.altKey || event.ctrlKey || event.metaKey ? undefined : keyed(lesson, minute, event);
            if (there === undefined) return;
            event.preventDefault();
            goTo(lesson, there);
          }}
        />
        <Chart lesson={lesson} axis={axis} width={width} height={height} low={low} />
        <Openings marks={marks} laneOf={laneOf} width={width} now={now} top={top} low={low} />
        <Hand x={now} height={height} />
      </div>
    </div>
  );
}

/** The line at the minute that is shown, and its knob. */
function Hand({ x, height }: { x: number; height: number }) {
  const glide = usePlayClock((state) => (state.playing ? 6 / state.speed : 0));
  return (
    <i
      className="play-hand"
      style={{ transform: `translateX(${x}px)`, height, transitionDuration: `${glide}s` }}
    />
  );
}

/** The last minute that is drawn. */
function latestOf({ end, openings }: Lesson): number {
  return Math.max(end, ...openings.map(({ high }) => high ?? 0));
}

const HALF_A_MINUTE = 0.5;
const PAGE = 5;

/** Where a key leads; undefined for one that leads nowhere. */
function keyed(lesson: Lesson, minute: number, { key, shiftKey }: { key: string; shiftKey: boolean }) {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return shiftKey ? eventFrom(lesson, minute, 1) : minute + HALF_A_MINUTE;
    case 'ArrowLeft':
    case 'ArrowDown':
      return shiftKey ? eventFrom(lesson, minute, -1) : minute - HALF_A_MINUTE;
    case 'PageUp':
      return minute + PAGE;
    case 'PageDown':
      return minute - PAGE;
    case 'Home':
      return 0;
    case 'End':
      return lesson.last;
    default:
      return undefined;
  }
}
