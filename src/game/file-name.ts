/** The name of a game's file: its title, as far as every system can store it. */
import { symbolsOf } from './codes.ts';
import type { Game } from './model.ts';

const ENDING = '.latchmap.json';
const UNTITLED = 'game';

/** In UTF-8 bytes: file systems take 255 for a name, and copies add ' (1)' or a date. */
const MAX_BYTES = 120;

/** Reserved in a name by Windows, macOS or Linux; controls; signs that turn the direction of writing; halves of surrogate pairs. */
const RESERVED = /[<>:"/\\|?*\p{Cc}\p{Cs}\u200E\u200F\u2028-\u202E\u2066-\u2069\uFEFF]/gu;

/** Names of devices on Windows, whatever follows the first full stop. */
const DEVICE = /^(con|prn|aux|nul|conin\$|conout\$|com[0-9¹²³]|lpt[0-9¹²³])\s*(\.|$)/iu;

function bytesOf(text: string): number {
  let bytes = 0;
  for (const sign of text) {
    const point = sign.codePointAt(0) ?? 0;
    bytes += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
  }
  return bytes;
}

/** As many whole user-perceived characters as fit. */
function cut(text: string): string {
  let kept = '';
  let bytes = 0;
  for (const symbol of symbolsOf(text)) {
    bytes += bytesOf(symbol);
    if (bytes > MAX_BYTES) break;
    kept += symbol;
  }
  return kept;
}

/** No full stop or space at either end, no hyphen in front: hidden files, names that Windows shortens, options of commands. */
function trimmed(text: string): string {
  return text.replace(/^[\s.-]+|[\s.]+$/gu, '');
}

/** Without an ending. */
export function fileStem({ head }: Pick<Game, 'head'>): string {
  const title = (head.title ?? '').normalize('NFC').replace(RESERVED, ' ').replace(/\s+/gu, ' ');
  const name = trimmed(cut(trimmed(title)));
  if (name === '') return UNTITLED;
  return DEVICE.test(name) ? `${UNTITLED} ${name}` : name;
}

export function fileName(game: Pick<Game, 'head'>): string {
  return fileStem(game) + ENDING;
}
