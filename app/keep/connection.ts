/** A connection to one of the browser's databases, opened again after it was lost, and changes written to it whole. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

export interface Connection<Schema extends DBSchema> {
  /** Undefined while it is lost. */
  readonly now: () => IDBPDatabase<Schema> | undefined;
  /** The same, or a new one. */
  readonly connected: () => Promise<IDBPDatabase<Schema>>;
}

/** Fails where the browser refuses to store anything, which some only say when something is asked of the database: `probe` asks. */
export async function connect<Schema extends DBSchema>(
  name: string,
  version: number,
  upgrade: (database: IDBPDatabase<Schema>) => void,
  probe: (database: IDBPDatabase<Schema>) => Promise<unknown>,
): Promise<Connection<Schema>> {
  let database: IDBPDatabase<Schema> | undefined;
  const lost = () => {
    database = undefined;
  };
  const open = () =>
    openDB<Schema>(name, version, {
      upgrade,
      /** A newer version of this page wants to change the store: it must not wait for this window. */
      blocking(_current, _blocked, event) {
        if (event.target instanceof IDBDatabase) event.target.close();
        lost();
      },
      terminated: lost,
    });
  database = await open();
  await probe(database);
  return {
    now: () => database,
    async connected() {
      database ??= await open();
      return database;
    },
  };
}

/** Ends a change with all that was asked of it; fails with the reason of the whole. */
export async function commit(
  change: { commit(): void; readonly done: Promise<void>; readonly error: DOMException | null },
  requests: readonly Promise<unknown>[],
): Promise<void> {
  /** Without it, what is written while the page closes would wait for an answer that nobody hears. */
  change.commit();
  const ends = await Promise.allSettled([...requests, change.done]);
  const failed = ends.find((end) => end.status === 'rejected');
  // Requests only say that the whole was given up; the whole says why, such as that there is no room.
  if (failed) throw change.error ?? failed.reason;
}
