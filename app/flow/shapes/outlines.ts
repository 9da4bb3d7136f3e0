/** Outlines of the shapes that a border cannot draw, as SVG paths inside a box of the given size. `inset` is half the line's width. */

const FOLD = 9;
const POINT = 9;
const CUT = 9;
const NOTCH = 9;

/** A slip of paper whose upper right corner is folded. */
export function slip(width: number, height: number, inset: number): string {
  const r = width - inset;
  const b = height - inset;
  return `M${inset} ${inset}H${r - FOLD}L${r} ${inset + FOLD}V${b}H${inset}Z`;
}

/** The fold itself. */
export function fold(width: number, inset: number): string {
  const r = width - inset;
  return `M${r - FOLD} ${inset}V${inset + FOLD}H${r}`;
}

/** A tag with a pointed end, on the left, where its hole is. */
export function tag(width: number, height: number, inset: number): string {
  const r = width - inset;
  const b = height - inset;
  return `M${inset + POINT} ${inset}H${r}V${b}H${inset + POINT}L${inset} ${b - POINT}V${inset + POINT}Z`;
}

/** A ribbon, its right end notched. */
export function ribbon(width: number, height: number, inset: number): string {
  const r = width - inset;
  const b = height - inset;
  return `M${inset} ${inset}H${r}L${r - NOTCH} ${height / 2}L${r} ${b}H${inset}Z`;
}

/** A bar with cut corners and flat ends. */
export function bar(width: number, height: number, inset: number): string {
  const r = width - inset;
  const b = height - inset;
  const c = Math.min(CUT, height / 3);
  return `M${inset + c} ${inset}H${r - c}L${r} ${inset + c}V${b - c}L${r - c} ${b}H${inset + c}L${inset} ${b - c}V${inset + c}Z`;
}
