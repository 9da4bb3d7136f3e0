/** The small tab on a thing: the minutes that the overlay gives it, or how it stands at the minute that is shown. */

import { type TextStyle, textWidth } from '../../../src/type/text.ts';
import type { Heat, Look } from '../card.ts';
import { inkOn, shade } from '../scale.ts';

/** Paint for what is tinted: undefined where nothing is. */
export function heatPaint(heat: Heat | undefined): { background: string; color: string } | undefined {
  if (!heat) return undefined;
  return { background: shade(heat.share), color: inkOn(heat.share) };
}

export const TAB_TYPE: TextStyle = { size: 12.5, weight: 'strong', family: 'words' };
/** Beside the words and around them. */
export const TAB_EDGES = 22;

/** Undefined where there is no tab. */
export function tabText({ heat, moment }: Look): string | undefined {
  return heat?.text ?? moment?.text;
}

/** 11 px on the screen where there is room. */
const grown = (most: number) => `max(${TAB_TYPE.size}px, min(0.88 * var(--name-size), ${most}px))`;

interface Props {
  readonly look: Look;
  readonly className: string;
  /** Width that it may take, with what is around it. */
  readonly room: number;
}

export function Tab({ look, className, room }: Props) {
  const text = tabText(look);
  if (text === undefined) return null;
  const fontSize = grown((TAB_TYPE.size * (room - TAB_EDGES)) / textWidth(text, TAB_TYPE));
  return (
    <span className={`flow-tab ${className}`} style={{ ...heatPaint(look.heat), fontSize }}>
      {text}
    </span>
  );
}
