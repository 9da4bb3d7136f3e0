/** Where my kit lasts: an IndexedDB database of its own beside that of the games. Where the browser refuses, as long as the page. */
import type { DBSchema, IDBPDatabase } from 'idb';
import { type Connection, commit, connect } from '../keep/connection.ts';

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
  let connection: Connection<Schema>;
  try {
    connection = await connect<Schema>(
      NAME,
      VERSION,
      (database) => database.createObjectStore(STORE),
      (database) => database.count(STORE),
    );
  } catch {
    return passingCupboard();
  }
  const { now, connected } = connection;

  const put = (open: IDBPDatabase<Schema>, values: readonly (readonly [Name, unknown])[]) => {
    const change = open.transaction(STORE, 'readwrite');
    return commit(
      change,
      values.map(([name, value]) => change.store.put(value, name)),
    );
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
      const open = now();
      return open ? put(open, values) : connected().then((again) => put(again, values));
    },
    async putBy(damaged) {
      await put(await connected(), [['damaged', damaged]]);
    },
  };
}
