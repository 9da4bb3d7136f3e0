/** Busy and waiting over the minutes of the typical lesson: two areas that add up to the team, the bell, and the minute shown. */
import { memo } from 'react';
import { PLAY, pupilsText } from '../../src/words/play.ts';
import type { Axis } from './axis.ts';
import type { Lesson, Stretch } from './lesson.ts';

export interface ChartSize {
  readonly width: number;
  /** Of the areas. */
  readonly height: number;
  /** Too low for words and figures. */
  readonly low: boolean;
}

interface Props extends ChartSize {
  readonly lesson: Lesson;
  readonly axis: Axis;
}

/** What does not change with the minute. */
export const Chart = memo(({ lesson, axis, width, height, low }: Props) => {
  const { stretches, end, clock } = lesson;
  const team = clock.lesson.team;
  const x = (minute: number) => (minute / axis.span) * width;
  const y = (pupils: number) => height - (pupils / team) * height;
  const bell = axis.bellBeyond ? undefined : x(clock.lesson.minutes);
  return (
    <svg className="play-svg" width={width} height={height} aria-hidden="true">
      <rect className="play-waiting" width={x(end)} height={height} />
      <path className="play-busy" d={area(stretches, x, y)} />
      {!low && <Mean lesson={lesson} x={x} y={y} until={axis.span} />}
      {!low && <Names stretches={stretches} x={x} y={y} height={height} />}
      <path className="play-axis" d={`M0 ${height + 0.5}H${width}`} />
      {axis.ticks.map((minute) => (
        <path key={minute} className="play-axis" d={`M${x(minute)} ${height}v4`} />
      ))}
      {!low && (
        <>
          {axis.ticks.map((minute) => (
            <text key={minute} className="play-figure" x={x(minute)} y={height + 16} textAnchor="middle">
              {minute}
            </text>
          ))}
          <text className="play-figure" x={-8} y={11} textAnchor="end">
            {pupilsText(team)}
          </text>
          <text className="play-figure" x={-8} y={height} textAnchor="end">
            0
          </text>
        </>
      )}
      {bell !== undefined && <path className="play-bell" d={`M${bell} ${low ? -2 : -4}V${height + 1}`} />}
      {!low && (
        <text className="play-bell-name" x={(bell ?? width) - 6} y={11} textAnchor="end">
          {bell === undefined ? PLAY.bellAt(clock.lesson.minutes) : PLAY.bell}
        </text>
      )}
    </svg>
  );
});

function area(
  stretches: readonly Stretch[],
  x: (minute: number) => number,
  y: (pupils: number) => number,
): string {
  const steps = stretches.map(({ from, to, busy }) => `H${x(from)}V${y(busy)}H${x(to)}`);
  return `M0 ${y(0)}${steps.join('')}V${y(0)}Z`;
}

interface MeanProps {
  readonly lesson: Lesson;
  readonly x: (minute: number) => number;
  readonly y: (pupils: number) => number;
  readonly until: number;
}

/** How many are busy on average over all runs; those that have ended count with nobody. */
function Mean({ lesson, x, y, until }: MeanProps) {
  const { minutes, busy } = lesson.simulated.profile;
  const points: string[] = [];
  minutes.forEach((minute, i) => {
    if (minute <= until) points.push(`${x(minute).toFixed(1)} ${y(busy[i] ?? 0).toFixed(1)}`);
  });
  if (points.length < 2) return null;
  const d = `M${points.join('L')}`;
  return (
    <>
      <path className="play-mean-casing" d={d} />
      <path className="play-mean" d={d} />
    </>
  );
}

/** Room for a word within an area. */
const WORD = { width: 58, height: 15 };

function Names({
  stretches,
  x,
  y,
  height,
}: {
  stretches: readonly Stretch[];
  x: (minute: number) => number;
  y: (pupils: number) => number;
  height: number;
}) {
  const busy = roomIn(stretches, x, ({ busy: pupils }) => height - y(pupils));
  const waiting = roomIn(stretches, x, ({ busy: pupils }) => y(pupils));
  return (
    <>
      {busy !== undefined && (
        <text className="play-name-busy" x={busy + 8} y={height - 6}>
          {PLAY.busy}
        </text>
      )}
      {waiting !== undefined && (
        <text className="play-name-waiting" x={waiting + 8} y={12}>
          {PLAY.waiting}
        </text>
      )}
    </>
  );
}

/** Where the longest run of stretches begins that are high enough, if it is wide enough. */
function roomIn(
  stretches: readonly Stretch[],
  x: (minute: number) => number,
  high: (stretch: Stretch) => number,
): number | undefined {
  let from: number | undefined;
  let best: number | undefined;
  let widest = WORD.width;
  for (const stretch of stretches) {
    if (high(stretch) < WORD.height) from = undefined;
    else {
      from ??= x(stretch.from);
      const width = x(stretch.to) - from;
      if (width < widest) continue;
      best = from;
      widest = width;
    }
  }
  return best;
}
