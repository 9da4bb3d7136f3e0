/** When each box opens: a metal square on the bar of its spread over all lessons. A press goes to that minute. */
import { memo, useMemo, useState } from 'react';
import { type TextStyle, textWidth } from '../../src/type/text.ts';
import { endText, openingText, THE_END } from '../../src/words/play.ts';
import { sayer } from '../../src/words/say.ts';
import { plain } from '../../src/words/sentence.ts';
import type { Axis } from './axis.ts';
import { goTo } from './clock.ts';
import { type Bar, lanesOf, namesOf } from './lanes.ts';
import { type Lesson, tenthFrom } from './lesson.ts';

const TYPE: TextStyle = { size: 12.5, weight: 'regular', family: 'words' };
/** From a square to the name that is shown while it is pointed at. */
const BESIDE = 10;
/** Height of a lane in pixels. */
export const LANE = 15;

interface Mark extends Bar {
  readonly key: string;
  readonly text: string;
  readonly told: string;
  /** In this lesson. */
  readonly minute: number | undefined;
  readonly isEnd: boolean;
}

export function marksOf(lesson: Lesson, axis: Axis, width: number): Mark[] {
  const say = sayer(lesson.game);
  const x = (minute: number) => Math.min(width, (minute / axis.span) * width);
  return lesson.openings.map(({ node, minute, low, high }) => {
    const text = node === undefined ? THE_END : plain(say.name(node));
    const told = { name: text, minute, low, high };
    return {
      key: node ?? '',
      text,
      told: node === undefined ? endText(told) : openingText(told),
      minute,
      isEnd: node === undefined,
      from: x(low),
      to: x(high ?? axis.span),
      at: x(minute ?? low),
      name: textWidth(text, TYPE),
    };
  });
}

interface Props {
  readonly lesson: Lesson;
  readonly marks: readonly Mark[];
  readonly laneOf: readonly number[];
  readonly width: number;
  /** Pixels from the left. */
  readonly now: number;
  /** Upper edge of the first lane. */
  readonly top: number;
  readonly low: boolean;
}

/** @param most lanes that there is room for */
export function useLanes(lesson: Lesson, axis: Axis, width: number, most: number) {
  return useMemo(() => {
    const marks = marksOf(lesson, axis, width);
    const laneOf = lanesOf(marks, most, width);
    return { marks, laneOf };
  }, [lesson, axis, width, most]);
}

export function Openings({ lesson, marks, laneOf, width, now, top, low }: Props) {
  const names = useMemo(
    () => (low ? [] : namesOf(marks, laneOf, width, now)),
    [marks, laneOf, width, now, low],
  );
  return marks.map((mark, i) => (
    <Opening
      key={mark.key}
      lesson={lesson}
      mark={mark}
      top={top + (laneOf[i] ?? 0) * LANE}
      nameAt={names[i]?.left}
      width={width}
    />
  ));
}

interface OpeningProps {
  readonly lesson: Lesson;
  readonly mark: Mark;
  readonly top: number;
  /** Where its name stands, if there is room for it now. */
  readonly nameAt: number | undefined;
  readonly width: number;
}

const Opening = memo(({ lesson, mark, top, nameAt, width }: OpeningProps) => {
  const [pointed, setPointed] = useState(false);
  const { text, told, minute, isEnd, from, to, at } = mark;
  const left = Math.min(from, at);
  const beside = at > width / 2 ? { right: width - at + BESIDE } : { left: at + BESIDE };
  return (
    <div className={isEnd ? 'play-opening play-opening-end' : 'play-opening'} style={{ top }}>
      <i className="play-stray" style={{ left, width: Math.max(to, at) - left }} />
      <i className="play-bar" style={{ left: from, width: Math.max(1, to - from) }} />
      {minute !== undefined && (
        <button
          type="button"
          className="play-square"
          style={{ left: at }}
          aria-label={told}
          title={told}
          onClick={() => goTo(lesson, tenthFrom(minute))}
          onPointerEnter={() => setPointed(true)}
          onPointerLeave={() => setPointed(false)}
          onFocus={() => setPointed(true)}
          onBlur={() => setPointed(false)}
        />
      )}
      {nameAt !== undefined ? (
        <span className="play-opening-name" style={{ left: nameAt }}>
          {text}
        </span>
      ) : (
        pointed && (
          <span className="play-opening-name play-opening-over" style={beside}>
            {text}
          </span>
        )
      )}
    </div>
  );
});
