/** The one order of texts in files and reports: by code point, so that it is the same in every language and on every machine. */

/** Surrogates stand for code points above all others, yet as UTF-16 units they sort below U+E000 to U+FFFF. */
function rank(unit: number): number {
  if (unit < 0xd800) return unit;
  return unit < 0xe000 ? unit + 0x2000 : unit - 0x800;
}

/** Negative when `a` stands before `b`, 0 when they are the same text. */
export function compareCodePoints(a: string, b: string): number {
  const shared = Math.min(a.length, b.length);
  for (let i = 0; i < shared; i++) {
    const x = a.charCodeAt(i);
    const y = b.charCodeAt(i);
    if (x !== y) return rank(x) - rank(y);
  }
  return a.length - b.length;
}
