/** The small tab on a thing: the minutes that the overlay gives it, or how it stands at the minute that is shown. */

import { type TextStyle, textWidth } from '../../../src/type/text.ts';
import type { Heat, Look } from '../card.ts';
import { inkOn, shade } from '../scale.ts';

/** Paint for what is tinted: undefined where nothing is. */
export function heatPaint(heat: Heat | undefined): { background: string; color: string } | undefined {
  if (!heat) return undefined;
  return { background: shade(heat.share), color: inkOn(heat.share) };
}

const TYPE: TextStyle = { size: 12.5, weight: 'strong', family: 'words' };
/** Beside the words and around them. */
const EDGES = 22;

/** 11 px on the screen where there is room. */
const grown = (most: number) => `max(${TYPE.size}px, min(0.88 * var(--name-size), ${most}px))`;

interface Props {
  readonly look: Look;
  readonly className: string;
  /** Width that it may take, with what is around it. */
  readonly room: number;
}

export function Tab({ look: { heat, moment }, className, room }: Props) {
  const text = heat?.text ?? moment?.text;
  if (text === undefined) return null;
  const fontSize = grown((TYPE.size * (room - EDGES)) / textWidth(text, TYPE));
  return (
    <span className={`flow-tab ${className}`} style={{ ...heatPaint(heat), fontSize }}>
      {text}
    </span>
  );
}
