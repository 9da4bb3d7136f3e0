/** An example game as its file holds it, read for what stands on each thing. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { normaliseCode } from '../../src/game/codes.ts';
import type { Game } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { type FileNode, type GameFile, gameFile } from '../../src/game/schema.ts';

export const SLUGS = ['greenhouse-pump', 'mineral-hall', 'front-page'] as const;
export type Slug = (typeof SLUGS)[number];

export function sourceOf(slug: Slug): string {
  const url = new URL(`../../public/games/${slug}.latchmap.json`, import.meta.url);
  return readFileSync(fileURLToPath(url), 'utf8');
}

export interface Example {
  readonly file: GameFile;
  node(id: string): FileNode;
  /** What pupils read on it. */
  text(id: string): string;
  /** The lines of its text that have a word in them. */
  lines(id: string): string[];
  /** The answer of a puzzle or clue, or the code of a lock, as it is compared. */
  code(id: string): string;
}

export function openExample(slug: Slug): Example {
  const file = gameFile.parse(JSON.parse(sourceOf(slug)));
  const nodes = new Map(file.nodes.map((node) => [node.id, node]));
  const node = (id: string) => {
    const found = nodes.get(id);
    if (!found) throw new Error(`${slug} has no node ${id}`);
    return found;
  };
  const text = (id: string) => {
    const words = node(id).text;
    if (words === undefined) throw new Error(`${slug}: nothing to read on ${id}`);
    return words;
  };
  return {
    file,
    node,
    text,
    lines: (id) =>
      text(id)
        .split('\n')
        .filter((line) => line.trim() !== ''),
    code: (id) => {
      const one = node(id);
      const raw =
        one.kind === 'fastener'
          ? one.code
          : one.kind === 'puzzle' || one.kind === 'clue'
            ? one.answer
            : undefined;
      if (raw === undefined) throw new Error(`${slug}: no code or answer on ${id}`);
      return normaliseCode(raw);
    },
  };
}

/** The groups of a pattern in a text, or an error that shows the text. */
export function groups(text: string, pattern: RegExp): string[] {
  const match = pattern.exec(text);
  if (!match) throw new Error(`${pattern} is not in: ${text}`);
  return match.slice(1).map((group) => group ?? '');
}

/** The one thing that fits; an error when nothing does, or more than one. */
export function only<T>(things: readonly T[], what: string): T {
  const [first] = things;
  if (first === undefined || things.length > 1) throw new Error(`${things.length} fit: ${what}`);
  return first;
}

/** What a table of the test says to a text: the value of the one entry whose pattern is in it. */
export function known<T>(facts: readonly (readonly [RegExp, T])[], text: string): T {
  return only(
    facts.filter(([pattern]) => pattern.test(text)).map(([, value]) => value),
    text,
  );
}

export function permutations<T>(things: readonly T[]): T[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((thing, index) =>
    permutations([...things.slice(0, index), ...things.slice(index + 1)]).map((rest) => [thing, ...rest]),
  );
}

/** The example as the page would open it. */
export function gameOf(slug: Slug): Game {
  const result = readGame(sourceOf(slug), { newId: () => slug });
  if (!result.ok) throw new Error(`${slug} is refused: ${JSON.stringify(result.problems)}`);
  return result.document.game;
}
