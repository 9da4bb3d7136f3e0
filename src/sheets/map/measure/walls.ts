/** Where the walls of a tray, and of the boxes in it, stand from side to side. */
import type { Side } from '../../../map/layout.ts';
import type { Tray, TrayRow } from '../content.ts';
import type { Type } from './type.ts';

/** In sizes of the type. */
const OVERHANG = 0.75;
const CLEAR = 0.55;
const FAR = 0.4;
/** So much of the width stays for what lies deepest. */
const LEAST_SHARE = 0.6;

export interface Walls {
  readonly left: number;
  readonly right: number;
}

export interface TrayWalls {
  readonly side: Side;
  readonly width: number;
  /** Depth of the outermost box. */
  readonly base: number;
  /** How far plates stand outside their wall. */
  readonly overhang: number;
  readonly at: (depth: number) => Walls;
}

/**
 * Plates stand out of the wall that faces the spine, so that wall keeps off the one around it; deep nests keep off less.
 * @param isBox what stands by itself is a box, so that its own plates stay inside the tray's width
 */
export function wallsOf(tray: Tray, side: Side, width: number, type: Type, isBox: boolean): TrayWalls {
  const deepest = tray.rows.reduce((most: number, row: TrayRow) => Math.max(most, row.depth), 0);
  const near = (OVERHANG + CLEAR) * type.size;
  const far = FAR * type.size;
  const base = isBox ? OVERHANG * type.size : 0;
  const wanted = base + deepest * (near + far);
  const scale = wanted > 0 ? Math.min(1, ((1 - LEAST_SHARE) * width) / wanted) : 1;
  const at = (depth: number) => {
    const facing = scale * (base + depth * near);
    const away = scale * depth * far;
    return side === 'left' ? { left: away, right: width - facing } : { left: facing, right: width - away };
  };
  return { side, width, base: isBox ? 0 : 1, overhang: scale * OVERHANG * type.size, at };
}
