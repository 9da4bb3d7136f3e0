/** The small tab on a step: what it adds to the end, or with which others it ties. */

import { type TextStyle, textWidth } from '../../../src/type/text.ts';
import type { Heat } from '../card.ts';
import { inkOn, shade } from '../scale.ts';

/** Paint for what is tinted: undefined where nothing is. */
export function heatPaint(heat: Heat | undefined): { background: string; color: string } | undefined {
  if (!heat) return undefined;
  const share = heat.share ?? 0;
  return { background: shade(share), color: inkOn(share) };
}

const TYPE: TextStyle = { size: 12.5, weight: 'strong', family: 'words' };
/** Beside the words and around them. */
const EDGES = 22;

/** 11 px on the screen where there is room. */
const grown = (most: number) => `max(${TYPE.size}px, min(0.88 * var(--name-size), ${most}px))`;

interface Props {
  readonly heat: Heat | undefined;
  readonly className: string;
  /** Width that it may take, with what is around it. */
  readonly room: number;
}

export function Tab({ heat, className, room }: Props) {
  if (!heat) return null;
  const fontSize = grown((TYPE.size * (room - EDGES)) / textWidth(heat.text, TYPE));
  return (
    <span className={`flow-tab ${className}`} style={{ ...heatPaint(heat), fontSize }}>
      {heat.text}
    </span>
  );
}
