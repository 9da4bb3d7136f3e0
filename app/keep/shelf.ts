/** Where games are kept: what every store of them can do, and the one that lasts only as long as the page. */

export interface KeptGame {
  readonly id: string;
  readonly title: string | undefined;
  readonly basedOn: string | undefined;
  /** When it was last changed. Moments are milliseconds since 1970. */
  readonly edited: number;
  /** When it was last saved to a file; undefined: never. */
  readonly filed: number | undefined;
  /** Changes since it was last saved to a file, or since it began. */
  readonly changes: number;
  /** When it was deleted. It can be brought back for a while. */
  readonly deleted: number | undefined;
}

export interface KeptDocument {
  readonly kept: KeptGame;
  /** The text of its file. Of unknown type: what a browser kept may be damaged. */
  readonly text: unknown;
}

export interface Shelf {
  /** Whether the games are still there when the page is opened again. */
  readonly lasts: boolean;
  list(): Promise<readonly KeptGame[]>;
  read(id: string): Promise<KeptDocument | undefined>;
  /** Both the entry in the list and the document, or neither. The request is made before the first await, so that it also works while a page closes. */
  write(kept: KeptGame, text: string): Promise<void>;
  /** The entry in the list alone. */
  note(kept: KeptGame): Promise<void>;
  remove(id: string): Promise<void>;
}

/** For browsers that refuse to store anything: several games, gone with the page. */
export function passingShelf(): Shelf {
  const games = new Map<string, KeptDocument>();
  return {
    lasts: false,
    list: async () => Array.from(games.values(), ({ kept }) => kept),
    read: async (id) => games.get(id),
    async write(kept, text) {
      games.set(kept.id, { kept, text });
    },
    async note(kept) {
      const document = games.get(kept.id);
      if (document) games.set(kept.id, { ...document, kept });
    },
    async remove(id) {
      games.delete(id);
    },
  };
}
