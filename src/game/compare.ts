/** The one order of texts in files and reports: by code point, so that it is the same in every language and on every machine. */

const isHighSurrogate = (unit: number) => (unit & 0xfc00) === 0xd800;

/**
 * Negative when `a` stands before `b`, 0 when they are the same text. The language's own `<` orders by UTF-16 unit, which puts
 * signs beyond the basic plane before U+E000 to U+FFFF. Half a surrogate pair without the other counts as a sign of its own.
 */
export function byCodePoint(a: string, b: string): number {
  const shared = Math.min(a.length, b.length);
  for (let i = 0; i < shared; i++) {
    if (a.charCodeAt(i) === b.charCodeAt(i)) continue;
    // Two pairs may share their first half.
    const start = i > 0 && isHighSurrogate(a.charCodeAt(i - 1)) ? i - 1 : i;
    return (a.codePointAt(start) ?? 0) - (b.codePointAt(start) ?? 0);
  }
  return a.length - b.length;
}
