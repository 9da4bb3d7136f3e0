/** Path data of polylines and polygons, with round corners. */
import type { Spot } from './drawing.ts';

/** A number as SVG writes it: no more decimals than can be seen. */
export function short(value: number, decimals = 2): string {
  const text = value.toFixed(decimals);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed === '-0' ? '0' : trimmed;
}

const at = ({ x, y }: Spot) => `${short(x)} ${short(y)}`;

export function pointsOf(points: readonly Spot[]): string {
  return points.map((spot, i) => `${i === 0 ? 'M' : 'L'}${at(spot)}`).join('');
}

/** A turn below this is none: the arc would have no end. */
const STRAIGHT = 1e-6;

interface Corner {
  /** Where the arc begins and ends; the corner itself where there is none. */
  readonly from: Spot;
  readonly to: Spot;
  readonly radius: number;
  readonly clockwise: boolean;
}

/** The arc that touches both sides. It takes at most half of either, so that the next corner has the same. */
function cornerAt(before: Spot, corner: Spot, after: Spot, wanted: number): Corner {
  const lengthIn = Math.hypot(corner.x - before.x, corner.y - before.y);
  const lengthOut = Math.hypot(after.x - corner.x, after.y - corner.y);
  const sharp = { from: corner, to: corner, radius: 0, clockwise: true };
  if (wanted <= 0 || lengthIn === 0 || lengthOut === 0) return sharp;
  const inX = (corner.x - before.x) / lengthIn;
  const inY = (corner.y - before.y) / lengthIn;
  const outX = (after.x - corner.x) / lengthOut;
  const outY = (after.y - corner.y) / lengthOut;
  const cross = inX * outY - inY * outX;
  const dot = inX * outX + inY * outY;
  if (Math.abs(cross) < STRAIGHT) return sharp;
  // Tangent of half the angle turned.
  const tangent = Math.abs(cross) / (1 + dot);
  const reach = Math.min(wanted * tangent, lengthIn / 2, lengthOut / 2);
  return {
    from: { x: corner.x - inX * reach, y: corner.y - inY * reach },
    to: { x: corner.x + outX * reach, y: corner.y + outY * reach },
    radius: reach / tangent,
    clockwise: cross > 0,
  };
}

function arc({ from, to, radius, clockwise }: Corner, command: 'M' | 'L'): string {
  const start = `${command}${at(from)}`;
  if (radius === 0) return start;
  return `${start}A${short(radius)} ${short(radius)} 0 0 ${clockwise ? 1 : 0} ${at(to)}`;
}

export function pathOf(points: readonly Spot[], rounded: number, closed: boolean): string {
  const last = points.length - 1;
  const parts = points.map((spot, i) => {
    const before = points[i - 1] ?? (closed ? points[last] : undefined);
    const after = points[i + 1] ?? (closed ? points[0] : undefined);
    const command = i === 0 ? 'M' : 'L';
    if (!before || !after) return `${command}${at(spot)}`;
    return arc(cornerAt(before, spot, after, rounded), command);
  });
  return parts.join('') + (closed ? 'Z' : '');
}
