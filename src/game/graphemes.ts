/** User-perceived characters (extended grapheme clusters, UAX #29). */

/** Firefox has it since 2024. */
const segmenter =
  typeof Intl.Segmenter === 'function' ? new Intl.Segmenter('en', { granularity: 'grapheme' }) : undefined;

/** Where the browser has no segmenter, letters with their combining marks: joined pictures then fall apart, nothing else does. */
export function graphemesOf(text: string): string[] {
  if (!segmenter) return text.match(/\P{M}\p{M}*|\p{M}+/gu) ?? [];
  return Array.from(segmenter.segment(text), (part) => part.segment);
}
