/** The kit out of files and into files. What comes is added to what is here; nothing is lost by it. */
import { addKit } from '../../src/kit/add-kit.ts';
import { writeItems, writePlaces } from '../../src/kit/csv/write.ts';
import type { Kit } from '../../src/kit/model.ts';
import { readKit } from '../../src/kit/read.ts';
import { MAX_KIT_LENGTH } from '../../src/kit/refusal.ts';
import { writeKit } from '../../src/kit/write.ts';
import { UNREADABLE } from '../../src/words/keep.ts';
import { kitNoteText, kitProblemLines } from '../../src/words/kit-problems.ts';
import { KIT, KIT_FILES } from '../../src/words/screen-kit.ts';
import { download } from '../keep/download.ts';
import { freshId } from '../store/ids.ts';
import { type KitNews, useKit } from './kit-state.ts';
import { changeKit } from './write.ts';

const kitNow = () => useKit.getState().owned.kit;

interface Read {
  readonly kit: Kit;
  readonly lines: readonly string[];
  /** Ids of what came without one. */
  readonly unnamed: ReadonlySet<string>;
}

/** Spreadsheets may save a table in the code page of Windows, which is then no UTF-8. */
function decoded(bytes: ArrayBuffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** A file that is too large is not read at all. */
async function read(file: File): Promise<Read | { readonly wrong: readonly string[] }> {
  if (file.size > MAX_KIT_LENGTH) {
    const problem = { code: 'tooLarge', length: file.size, limit: MAX_KIT_LENGTH } as const;
    return { wrong: kitProblemLines([problem], 0) };
  }
  let text: string;
  try {
    text = decoded(await file.arrayBuffer());
  } catch {
    return { wrong: [UNREADABLE] };
  }
  const unnamed = new Set<string>();
  const newId = () => {
    const id = freshId();
    unnamed.add(id);
    return id;
  };
  const reading = readKit(text, { newId });
  if (!reading.ok) return { wrong: kitProblemLines(reading.problems, reading.more) };
  return { kit: reading.kit, lines: reading.notes.map(kitNoteText), unnamed };
}

/** A table of things says nothing of places, and the other way round. */
function only(kit: Kit, here: Kit): Kit {
  return {
    ...here,
    items: kit.items.length > 0 ? kit.items : here.items,
    places: kit.places.length > 0 ? kit.places : here.places,
  };
}

function add(file: string, { kit, lines, unnamed }: Read): KitNews {
  const here = kitNow();
  const next = addKit(here, kit, freshId, unnamed);
  changeKit(() => next);
  const added = KIT.added(
    file,
    next.items.length - here.items.length,
    next.places.length - here.places.length,
  );
  const isBeside =
    (kit.items.length > 0 && here.items.length > 0) || (kit.places.length > 0 && here.places.length > 0);
  const keepOnly = () => {
    changeKit((now) => only(kit, now));
    useKit
      .getState()
      .tell({ lines: [KIT.replaced(file, kit.items.length > 0, kit.places.length > 0)], trouble: false });
  };
  return {
    lines: [added, ...lines],
    trouble: false,
    ...(isBeside && { act: { label: KIT.onlyFile, run: keepOnly } }),
  };
}

/** One undo for each file. Of each that cannot be read it is said what is wrong. */
export async function takeFiles(files: Iterable<File>): Promise<void> {
  const news: KitNews[] = [];
  for (const file of files) {
    const found = await read(file);
    if ('wrong' in found) news.push({ lines: [KIT.notTaken(file.name), ...found.wrong], trouble: true });
    else news.push(add(file.name, found));
  }
  const [first, second] = news;
  if (!first) return;
  useKit
    .getState()
    .tell(
      second
        ? { lines: news.flatMap(({ lines }) => lines), trouble: news.some(({ trouble }) => trouble) }
        : first,
    );
}

export function chooseFile(): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.multiple = true;
  input.accept = '.csv,.tsv,.txt,.json,text/csv,application/json';
  input.addEventListener('change', () => void takeFiles(input.files ?? []));
  input.click();
}

const table = (text: string) => new Blob([text], { type: 'text/csv;charset=utf-8' });

export function saveAll(): void {
  download(KIT_FILES.all, new Blob([writeKit(kitNow())], { type: 'application/json' }));
}

export function saveItems(): void {
  download(KIT_FILES.items, table(writeItems(kitNow())));
}

export function savePlaces(): void {
  download(KIT_FILES.places, table(writePlaces(kitNow())));
}
