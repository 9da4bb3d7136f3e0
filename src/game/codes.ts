/** Codes and answers: kept as typed, compared as one stored form. */
import { graphemesOf } from './graphemes.ts';
import type { Game, NodeId } from './model.ts';

/** Arrows as people type or paste them, with or without the selector that makes an emoji of them. */
const ARROWS = /([↑⬆⇧])|([↓⬇⇩])|([←⬅⇦])|([→➡⇨])/gu;

/** NFC, without spaces, upper case, arrows as U D L R. */
export function normaliseCode(raw: string): string {
  return raw
    .replace(/([↑⬆⇧↓⬇⇩←⬅⇦→➡⇨])\uFE0F/gu, '$1')
    .replace(ARROWS, (_, up, down, left) => (up ? 'U' : down ? 'D' : left ? 'L' : 'R'))
    .replace(/\s/gu, '')
    .toUpperCase()
    .normalize('NFC');
}

/** The symbols of a normalised code: user-perceived characters. */
export function symbolsOf(code: string): string[] {
  // Each visible ASCII character is a cluster of its own; nearly every code is made of them, and the segmenter is slow.
  if (/^[!-~]*$/.test(code)) return code.split('');
  return graphemesOf(code);
}

/** A code in its two forms: as typed, for showing, and normalised, for comparing. */
export interface WrittenCode {
  readonly typed: string;
  readonly normalised: string;
}

/**
 * The code of a fastener, or answer of a puzzle or clue; undefined when it has none or an empty one.
 * Everything reads codes and answers here, so that a code set has one place to step in.
 */
export function writtenCode(game: Game, id: NodeId): WrittenCode | undefined {
  const node = game.nodes.get(id);
  const typed =
    node?.kind === 'fastener'
      ? node.code
      : node?.kind === 'puzzle' || node?.kind === 'clue'
        ? node.answer
        : undefined;
  const normalised = typed === undefined ? '' : normaliseCode(typed);
  return typed === undefined || normalised === '' ? undefined : { typed, normalised };
}

/** The normalised code or answer of a node; undefined when it has none or an empty one. */
export function codeOf(game: Game, id: NodeId): string | undefined {
  return writtenCode(game, id)?.normalised;
}

/** The code or answer as it is said: normalised, but with the spaces between words and numbers ("32 14 25") as typed. */
export function saidCode(game: Game, id: NodeId): string | undefined {
  const code = writtenCode(game, id);
  if (!code || isDirections(code.normalised)) return code?.normalised;
  const words = code.typed.trim().split(/\s+/u).map(normaliseCode);
  // Symbols typed apart one by one are one word.
  return words.some((word) => symbolsOf(word).length > 1) ? words.join(' ') : code.normalised;
}

/** Whether a normalised code is made of U, D, L and R alone. */
export function isDirections(code: string): boolean {
  return /^[UDLR]+$/u.test(code);
}
