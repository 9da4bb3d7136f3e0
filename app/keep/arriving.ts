/** Games that come from outside: from files, from examples, from another game here. None takes the place of another. */
import { type GameDocument, hasUnplaced } from '../../src/game/model.ts';
import { sameContent } from '../../src/game/write.ts';
import { ADAPT_OFFER, adaptedTitle } from '../../src/words/adapt-command.ts';
import type { Example } from '../../src/words/examples.ts';
import { copyTitle, NEWS, titleOf } from '../../src/words/keep.ts';
import { ADAPT_OFFER_PART } from '../adapt/open.ts';
import { useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { contentOf, entryOf, inTurn, openNow, openUnstored, shelve, tell, troubleOf } from './keeping.ts';
import { type Reading, readFile } from './reading.ts';
import type { KeptGame } from './shelf.ts';
import { type ReadFailure, useKeep } from './state.ts';

type Read = Extract<Reading, { ok: true }>;

/**
 * `here`: the same game with the same content was kept already. `beside`: the same game was, with other content.
 * `full`, `failed`: the browser had no room for it, or could not store it.
 */
type Arrival = { readonly id: string; readonly title: string | undefined } & (
  | { readonly how: 'here' | 'beside' | 'new' }
  | { readonly how: 'full' | 'failed'; readonly document: GameDocument; readonly kept: KeptGame }
);

/** Those that may be the game that arrives. One without an id of its own is known by its title. */
export function namesakes(
  games: readonly KeptGame[],
  { document, idGiven }: Pick<Read, 'document' | 'idGiven'>,
): readonly KeptGame[] {
  const { id } = document.provenance;
  const { title } = document.game.head;
  return games.filter(
    (game) =>
      game.deleted === undefined && (idGiven ? game.title === title : game.id === id || game.basedOn === id),
  );
}

async function arrive(read: Read, since: Partial<KeptGame>): Promise<Arrival> {
  const { game, provenance } = read.document;
  const { title } = game.head;
  const candidates = namesakes(useKeep.getState().games, read);
  for (const { id } of candidates) {
    const content = await contentOf(id);
    if (content && sameContent(content, hasUnplaced(game) ? { ...game, positions: content.positions } : game))
      return { id, title, how: 'here' };
  }
  const copied = { id: freshId(), revision: 0, basedOn: provenance.id };
  const document: GameDocument = { game, provenance: read.idGiven ? provenance : copied };
  const { id } = document.provenance;
  try {
    await shelve(document, since);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { id, title, how: troubleOf(error), document, kept: entryOf(document, since) };
  }
  return { id, title, how: candidates.length > 0 ? 'beside' : 'new' };
}

/** False when the open game cannot be left, and that has been said. */
function openArrival(arrival: Arrival): Promise<boolean> {
  return 'document' in arrival
    ? openUnstored(arrival.document, arrival.kept, arrival.how)
    : openNow(arrival.id);
}

function sentenceFor(arrivals: readonly Arrival[]): string | undefined {
  const [only, second] = arrivals;
  if (only?.how === 'full') return NEWS.noRoomFor(titleOf(only.title));
  if (only?.how === 'failed') return NEWS.notStored(titleOf(only.title));
  if (second) return NEWS.several(arrivals.length);
  if (only?.how === 'here') return NEWS.here(titleOf(only.title));
  if (only?.how === 'beside') return NEWS.beside(titleOf(only.title));
  return undefined;
}

/** Opens games from files. The first that can be read is shown; of each other file it is said what is wrong with it. */
export function openFiles(files: Iterable<File>): Promise<unknown> {
  return inTurn(async () => {
    const arrivals: Arrival[] = [];
    const failures: ReadFailure[] = [];
    const notes: string[] = [];
    for (const file of files) {
      const reading = await readFile(file);
      if (!reading.ok) {
        failures.push({ file: file.name, lines: reading.lines });
        continue;
      }
      notes.push(...reading.notes);
      const arrival = await arrive(reading, { filed: file.lastModified });
      // Only one can be shown; another that is not stored either would be nowhere.
      if ('document' in arrival && arrivals.length > 0)
        failures.push({ file: file.name, lines: [NEWS.noRoom] });
      else arrivals.push(arrival);
    }
    const [first] = arrivals;
    if (first && !(await openArrival(first))) return useKeep.setState({ failures });
    const sentence = [sentenceFor(arrivals), ...notes].filter((part) => part !== undefined).join(' ');
    useKeep.setState({ failures, news: sentence === '' ? undefined : { sentence } });
    const [only, second] = arrivals;
    if (only?.how === 'new' && !second && sentence === '') void offerToAdapt(only);
  });
}

/** A game that was not here before was made for what its maker has. Said where it is known what this teacher has, and nothing else has happened since. */
async function offerToAdapt({ id, title }: Arrival): Promise<void> {
  const isKnown = await (await ADAPT_OFFER_PART.load())?.isKitKnown();
  const { open, news } = useKeep.getState();
  if (!isKnown || open?.id !== id || news) return;
  tell({ sentence: ADAPT_OFFER.sentence(titleOf(title)), adapt: true });
}

/** Opens an example as a copy of its own; an untouched copy from before is opened again. */
export function openExample({ slug, title }: Example): Promise<unknown> {
  return inTurn(async () => {
    const reading = await fetchExample(slug);
    if (!reading?.ok) return tell({ sentence: NEWS.exampleMissing(title) });
    const arrival = await arrive(reading, {});
    if (!(await openArrival(arrival))) return;
    const sentence = 'document' in arrival ? sentenceFor([arrival]) : undefined;
    useKeep.setState({ news: sentence === undefined ? undefined : { sentence }, failures: [] });
  });
}

/** Undefined: there is no such file, or no way to it. */
async function fetchExample(slug: string): Promise<Reading | undefined> {
  try {
    const answer = await fetch(`./games/${slug}.latchmap.json`);
    return answer.ok ? await readFile(await answer.blob()) : undefined;
  } catch {
    return undefined;
  }
}

/** A second game with the same content and a title that says so. The open game stays. */
export function duplicateGame(id: string): Promise<unknown> {
  return inTurn(async () => {
    const content = await contentOf(id);
    if (!content) return;
    const game = { ...content, head: { ...content.head, title: copyTitle(content.head.title) } };
    await shelve({ game, provenance: { id: freshId(), revision: 0, basedOn: id } }, { changes: 1 });
  });
}

/** A copy of the open game, opened in its place, to be adapted; the game itself stays as it came. The copy's id; undefined where it could not be opened. */
export function copyToAdapt(): Promise<string | undefined> {
  return inTurn(async () => {
    const { game: content, provenance } = useGame.getState();
    const game = { ...content, head: { ...content.head, title: adaptedTitle(titleOf(content.head.title)) } };
    const document: GameDocument = {
      game,
      provenance: { id: freshId(), revision: 0, basedOn: provenance.id },
    };
    const { id } = document.provenance;
    try {
      await shelve(document, { changes: 1 });
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      const opened = await openUnstored(document, entryOf(document, { changes: 1 }), troubleOf(error));
      return opened ? id : undefined;
    }
    return (await openNow(id)) ? id : undefined;
  });
}
