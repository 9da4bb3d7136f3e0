/** The lasting shelf: IndexedDB, with the list apart from the documents, so that a list of games reads no game. */
import type { DBSchema, IDBPDatabase } from 'idb';
import { type Connection, commit, connect } from './connection.ts';
import { type KeptGame, passingShelf, type Shelf } from './shelf.ts';

interface Schema extends DBSchema {
  games: { key: string; value: KeptGame };
  documents: { key: string; value: unknown };
}

const NAME = 'latchmap';
const VERSION = 1;
const BOTH: ('games' | 'documents')[] = ['games', 'documents'];

/** The games in this browser. Where it refuses to store anything, a shelf that lasts as long as the page. */
export async function openShelf(): Promise<Shelf> {
  let connection: Connection<Schema>;
  try {
    connection = await connect<Schema>(
      NAME,
      VERSION,
      (database) => {
        database.createObjectStore('games', { keyPath: 'id' });
        database.createObjectStore('documents');
      },
      (database) => database.count('games'),
    );
  } catch {
    return passingShelf();
  }
  const { now, connected } = connection;

  const put = (open: IDBPDatabase<Schema>, kept: KeptGame, text: string) => {
    const change = open.transaction(BOTH, 'readwrite');
    return commit(change, [
      change.objectStore('games').put(kept),
      change.objectStore('documents').put(text, kept.id),
    ]);
  };

  return {
    lasts: true,
    list: async () => (await connected()).getAll('games'),
    async read(id) {
      const look = (await connected()).transaction(BOTH);
      const [kept, text] = await Promise.all([
        look.objectStore('games').get(id),
        look.objectStore('documents').get(id),
      ]);
      return kept && { kept, text };
    },
    write(kept, text) {
      const open = now();
      return open ? put(open, kept, text) : connected().then((again) => put(again, kept, text));
    },
    async note(kept) {
      await (await connected()).put('games', kept);
    },
    async remove(id) {
      const change = (await connected()).transaction(BOTH, 'readwrite');
      const removed = BOTH.map((store) => change.objectStore(store).delete(id));
      await Promise.all([...removed, change.done]);
    },
  };
}
