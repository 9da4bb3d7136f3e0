/** The lasting shelf: IndexedDB, with the list apart from the documents, so that a list of games reads no game. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type KeptGame, passingShelf, type Shelf } from './shelf.ts';

interface Schema extends DBSchema {
  games: { key: string; value: KeptGame };
  documents: { key: string; value: unknown };
}

const NAME = 'latchmap';
const VERSION = 1;
const BOTH: ('games' | 'documents')[] = ['games', 'documents'];

function connect(lost: () => void): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(NAME, VERSION, {
    upgrade(database) {
      database.createObjectStore('games', { keyPath: 'id' });
      database.createObjectStore('documents');
    },
    /** A newer version of this page wants to change the store: it must not wait for this window. */
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
      lost();
    },
    terminated: lost,
  });
}

/** The games in this browser. Where it refuses to store anything, a shelf that lasts as long as the page. */
export async function openShelf(): Promise<Shelf> {
  let database: IDBPDatabase<Schema> | undefined;
  const lost = () => {
    database = undefined;
  };
  try {
    database = await connect(lost);
    await database.count('games');
  } catch {
    return passingShelf();
  }
  const connected = async () => {
    database ??= await connect(lost);
    return database;
  };

  const put = async (open: IDBPDatabase<Schema>, kept: KeptGame, text: string) => {
    const change = open.transaction(BOTH, 'readwrite');
    const written = [
      change.objectStore('games').put(kept),
      change.objectStore('documents').put(text, kept.id),
    ];
    /** Without it, what is written while the page closes would wait for an answer that nobody hears. */
    change.commit();
    const ends = await Promise.allSettled([...written, change.done]);
    const failed = ends.find((end) => end.status === 'rejected');
    // Requests only say that the whole was given up; the whole says why, such as that there is no room.
    if (failed) throw change.error ?? failed.reason;
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
    write: (kept, text) =>
      database ? put(database, kept, text) : connected().then((open) => put(open, kept, text)),
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
