/** When each box opens: a metal square on the bar of its spread over all lessons. A press on it goes to that minute. */
import { memo, useMemo, useState } from 'react';
import { type TextStyle, textWidth } from '../../src/type/text.ts';
import { endText, openingText, PLAY, THE_END } from '../../src/words/play.ts';
import { sayer } from '../../src/words/say.ts';
import { plain } from '../../src/words/sentence.ts';
import type { Axis } from './axis.ts';
import { type Bar, lanesOf, namesOf, placesOf } from './lanes.ts';
import { type Lesson, tenthFrom } from './lesson.ts';

const TYPE: TextStyle = { size: 12.5, weight: 'regular', family: 'words' };
/** As near to the minute shown, in pixels, a square is named that otherwise is not. */
const NEAR = 6;
/** Height of a lane in pixels. */
export const LANE = 15;

interface Mark extends Bar {
  readonly key: string;
  readonly text: string;
  readonly told: string;
  /** In this lesson: the tenth from which it is open. */
  readonly minute: number | undefined;
  readonly isEnd: boolean;
}

export function marksOf(lesson: Lesson, axis: Axis, width: number): Mark[] {
  const say = sayer(lesson.game);
  const x = (minute: number) => Math.min(width, (minute / axis.span) * width);
  const { p90 } = lesson.simulated;
  return lesson.openings.map(({ node, minute, low, high }) => {
    const text = node === undefined ? THE_END : plain(say.name(node));
    const told = { name: text, minute, low, high };
    return {
      key: node ?? '',
      text,
      told: node === undefined ? endText(told) : openingText(told),
      minute: minute === undefined ? undefined : tenthFrom(minute),
      isEnd: node === undefined,
      from: x(low),
      // What is not always opened stays open to question until nearly all lessons have ended.
      to: x(high ?? Math.max(low, p90)),
      at: x(minute ?? low),
      name: textWidth(text, TYPE),
    };
  });
}

/** @param most lanes that there is room for */
export function useLanes(lesson: Lesson, axis: Axis, width: number, most: number) {
  return useMemo(() => {
    const marks = marksOf(lesson, axis, width);
    const laneOf = lanesOf(marks, most, width);
    return { marks, laneOf };
  }, [lesson, axis, width, most]);
}

interface Props {
  readonly marks: readonly Mark[];
  readonly laneOf: readonly number[];
  readonly width: number;
  /** Pixels from the left edge to the minute shown. */
  readonly now: number;
  /** Upper edge of the first lane. */
  readonly top: number;
  readonly low: boolean;
}

export function Openings({ marks, laneOf, width, now, top, low }: Props) {
  const names = useMemo(() => (low ? [] : namesOf(marks, laneOf, width)), [marks, laneOf, width, low]);
  return (
    <ul aria-label={PLAY.openings}>
      {marks.map((mark, i) => (
        <Opening
          key={mark.key}
          mark={mark}
          top={top + (laneOf[i] ?? 0) * LANE}
          nameAt={names[i]?.left}
          isNow={mark.minute !== undefined && Math.abs(mark.at - now) < NEAR}
          width={width}
        />
      ))}
    </ul>
  );
}

interface OpeningProps {
  readonly mark: Mark;
  readonly top: number;
  /** Where its name stands, if there is room for it. */
  readonly nameAt: number | undefined;
  /** It opens at about the minute shown. */
  readonly isNow: boolean;
  readonly width: number;
}

const Opening = memo(({ mark, top, nameAt, isNow, width }: OpeningProps) => {
  const [pointed, setPointed] = useState(false);
  const { text, told, minute, isEnd, from, to, at } = mark;
  const left = Math.min(from, at);
  const pointing = {
    onPointerEnter: () => setPointed(true),
    onPointerLeave: () => setPointed(false),
  };
  return (
    <li className={isEnd ? 'play-opening play-opening-end' : 'play-opening'} style={{ top }}>
      <span className="aloud">{told}</span>
      <i className="play-stray" style={{ left, width: Math.max(to, at) - left }} />
      <i
        className="play-bar"
        style={{ left: from, width: Math.max(1, to - from) }}
        title={told}
        {...pointing}
      />
      {minute !== undefined && (
        <i className="play-square" style={{ left: at }} title={told} data-minute={minute} {...pointing} />
      )}
      {nameAt !== undefined ? (
        <span className="play-opening-name" style={{ left: nameAt }} aria-hidden="true">
          {text}
        </span>
      ) : (
        (pointed || isNow) && (
          <span
            className="play-opening-name play-opening-over"
            style={{ left: placesOf(mark, width)[0]?.left ?? 0 }}
            aria-hidden="true"
          >
            {text}
          </span>
        )
      )}
    </li>
  );
});
