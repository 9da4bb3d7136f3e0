/** Where my kit lasts: an IndexedDB database of its own beside that of the games. Where the browser refuses, as long as the page. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** Of unknown shape: what a browser kept may be damaged, or written by a newer version of this page. */
export interface Stored {
  /** The text of the kit's file; undefined: nothing was kept yet. */
  readonly kit: unknown;
  /** By games: which real locks the teacher has chosen for them. */
  readonly pins: unknown;
}

export interface Cupboard {
  /** Whether what is in it is there when the page is opened again. */
  readonly lasts: boolean;
  read(): Promise<Stored>;
  /** Both or neither. The request is made before the first await, so that it also works while a page closes. */
  write(stored: Stored): Promise<void>;
  /** What cannot be read is put by under another name, so that nothing is written over it. */
  putBy(damaged: unknown): Promise<void>;
}

type Name = 'kit' | 'pins' | 'damaged';

interface Schema extends DBSchema {
  kept: { key: Name; value: unknown };
}

const NAME = 'latchmap-kit';
const VERSION = 1;
const STORE = 'kept';

function connect(lost: () => void): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(NAME, VERSION, {
    upgrade(database) {
      database.createObjectStore(STORE);
    },
    /** A newer version of this page wants to change the store: it must not wait for this window. */
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
      lost();
    },
    terminated: lost,
  });
}

export function passingCupboard(): Cupboard {
  let kept: Stored = { kit: undefined, pins: undefined };
  return {
    lasts: false,
    read: async () => kept,
    async write(stored) {
      kept = stored;
    },
    putBy: async () => undefined,
  };
}

export async function openCupboard(): Promise<Cupboard> {
  let database: IDBPDatabase<Schema> | undefined;
  const lost = () => {
    database = undefined;
  };
  try {
    database = await connect(lost);
    await database.count(STORE);
  } catch {
    return passingCupboard();
  }
  const connected = async () => {
    database ??= await connect(lost);
    return database;
  };

  const put = async (open: IDBPDatabase<Schema>, values: readonly (readonly [Name, unknown])[]) => {
    const change = open.transaction(STORE, 'readwrite');
    const written = values.map(([name, value]) => change.store.put(value, name));
    /** Without it, what is written while the page closes would wait for an answer that nobody hears. */
    change.commit();
    const ends = await Promise.allSettled([...written, change.done]);
    const failed = ends.find((end) => end.status === 'rejected');
    // Requests only say that the whole was given up; the whole says why, such as that there is no room.
    if (failed) throw change.error ?? failed.reason;
  };

  return {
    lasts: true,
    async read() {
      const look = (await connected()).transaction(STORE);
      const [kit, pins] = await Promise.all([look.store.get('kit'), look.store.get('pins')]);
      return { kit, pins };
    },
    write({ kit, pins }) {
      const values = [['kit', kit] as const, ['pins', pins] as const];
      return database ? put(database, values) : connected().then((open) => put(open, values));
    },
    async putBy(damaged) {
      await put(await connected(), [['damaged', damaged]]);
    },
  };
}
