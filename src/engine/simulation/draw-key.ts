/**
 * Two 32-bit words from an id: FNV-1a (Fowler, Noll, Vo) over its UTF-16 code units, low byte first, from two offsets.
 * Not for secrets; only so that different ids draw differently.
 */
const PRIME = 0x01000193;
const OFFSETS = [0x811c9dc5, 0x1b873593] as const;

export function drawKey(id: string): [number, number] {
  return [hash(id, OFFSETS[0]), hash(id, OFFSETS[1])];
}

function hash(text: string, offset: number): number {
  let value = offset;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    value = Math.imul(value ^ (unit & 0xff), PRIME);
    value = Math.imul(value ^ (unit >>> 8), PRIME);
  }
  return value >>> 0;
}
