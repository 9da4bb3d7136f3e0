/** The small tab on a step: what it adds to the end, or with which others it ties. */

import type { Heat } from '../card.ts';
import { inkOn, shade } from '../scale.ts';

/** Paint for what is tinted: undefined where nothing is. */
export function heatPaint(heat: Heat | undefined): { background: string; color: string } | undefined {
  if (!heat) return undefined;
  const share = heat.share ?? 0;
  return { background: shade(share), color: inkOn(share) };
}

export function Tab({ heat, className }: { heat: Heat | undefined; className: string }) {
  if (!heat) return null;
  return (
    <span className={`flow-tab ${className}`} style={heatPaint(heat)}>
      {heat.text}
    </span>
  );
}
