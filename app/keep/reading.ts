/** From a file to a game, or to lines that say what is wrong with it. */
import type { GameDocument } from '../../src/game/model.ts';
import { MAX_LENGTH, readGame } from '../../src/game/read.ts';
import { UNREADABLE } from '../../src/words/keep.ts';
import { noteText, problemLines, problemText } from '../../src/words/problems.ts';
import { freshId } from '../store/ids.ts';

export type Reading =
  | {
      readonly ok: true;
      readonly document: GameDocument;
      /** The file came without an id, so the one that the document has was given here. */
      readonly idGiven: boolean;
      /** What was left away or not understood. */
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly lines: readonly string[] };

export function readText(text: string): Reading {
  let idGiven = false;
  const result = readGame(text, {
    newId() {
      idGiven = true;
      return freshId();
    },
  });
  return result.ok
    ? { ok: true, document: result.document, idGiven, notes: result.notes.map(noteText) }
    : { ok: false, lines: problemLines(result.problems, result.more) };
}

/** A file that is too large is not read at all, so that no size of junk holds the page up. */
export async function readFile(file: Blob): Promise<Reading> {
  if (file.size > MAX_LENGTH) {
    return { ok: false, lines: [problemText({ code: 'tooLarge', length: file.size, limit: MAX_LENGTH })] };
  }
  try {
    return readText(await file.text());
  } catch {
    return { ok: false, lines: [UNREADABLE] };
  }
}
