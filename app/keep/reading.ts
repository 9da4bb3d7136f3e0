/** From a file to a game, or to lines that say what is wrong with it. */
import { type Game, type GameDocument, hasUnplaced } from '../../src/game/model.ts';
import type { Note } from '../../src/game/problem.ts';
import { MAX_LENGTH, readGame } from '../../src/game/read.ts';
import { UNREADABLE } from '../../src/words/keep.ts';
import { PARTS } from '../../src/words/parts.ts';
import { part } from '../parts/part.ts';
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

/** Up to this many nodes arranging does not hold the page up. A larger game is shown in plain columns, and arranged once it is open. */
export const PLACED_ON_READING = 120;

/** Most games have their positions, and the first view does not wait for what would find them. */
const PLACING = part(() => import('./placing.ts'));

/** Arranging comes with the reading, not after it: read twice, a file without positions is the same game twice. */
async function placed(game: Game): Promise<Game> {
  if (game.nodes.size > PLACED_ON_READING || !hasUnplaced(game)) return game;
  const placing = await PLACING.load();
  // In plain columns, as a large one.
  return placing ? placing.place(game) : game;
}

/** Most files are as they should be, and the first view does not wait for the words about those that are not. */
const WORDS = part(() => import('../../src/words/problems.ts'));

async function noteTexts(notes: readonly Note[]): Promise<readonly string[]> {
  const words = await WORDS.load();
  return words ? notes.map(words.noteText) : [PARTS.lostProblems];
}

export async function readText(text: string): Promise<Reading> {
  let idGiven = false;
  const result = readGame(text, {
    newId() {
      idGiven = true;
      return freshId();
    },
  });
  if (!result.ok) {
    const lines = (await WORDS.load())?.problemLines(result.problems, result.more);
    return { ok: false, lines: lines ?? [PARTS.lostProblems] };
  }
  const { provenance, game } = result.document;
  return {
    ok: true,
    document: { provenance, game: await placed(game) },
    idGiven,
    notes: result.notes.length > 0 ? await noteTexts(result.notes) : [],
  };
}

/** A file that is too large is not read at all, so that no size of junk holds the page up. */
export async function readFile(file: Blob): Promise<Reading> {
  if (file.size > MAX_LENGTH) {
    const words = await WORDS.load();
    const line = words?.problemText({ code: 'tooLarge', length: file.size, limit: MAX_LENGTH });
    return { ok: false, lines: [line ?? PARTS.lostProblems] };
  }
  try {
    return await readText(await file.text());
  } catch {
    return { ok: false, lines: [UNREADABLE] };
  }
}
