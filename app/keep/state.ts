/** What the page shows of keeping: the list of games, how safe the open one is, and what has just happened. */
import { create } from 'zustand';
import type { KeptGame } from './shelf.ts';

/** How safe the last changes are. `refused`: the browser stores nothing; `full`: it has no room; `failed`: anything else. */
export type Storage = 'kept' | 'refused' | 'full' | 'failed';

/** A file that was not opened, and what is wrong with it, a line each. */
export interface ReadFailure {
  readonly file: string;
  readonly lines: readonly string[];
}

export interface News {
  readonly sentence: string;
  /** The damaged game whose text can be saved as it is. */
  readonly damaged?: string;
  /** The deleted game that can be brought back. */
  readonly deleted?: string;
  /** The open game can be adapted to what this teacher has. */
  readonly adapt?: true;
}

export interface KeepState {
  /** False until the game of the address, or the last one, is open. */
  readonly ready: boolean;
  /** Newest change first, the deleted among them. */
  readonly games: readonly KeptGame[];
  /** The open game's entry; undefined while it is empty and was never changed. */
  readonly open: KeptGame | undefined;
  readonly storage: Storage;
  /** Another window is editing the open game. */
  readonly elsewhere: boolean;
  /** The teacher has chosen to begin with nothing. */
  readonly fromNothing: boolean;
  readonly news: News | undefined;
  readonly failures: readonly ReadFailure[];
}

export const useKeep = create<KeepState>()(() => ({
  ready: false,
  games: [],
  open: undefined,
  storage: 'kept',
  elsewhere: false,
  fromNothing: false,
  news: undefined,
  failures: [],
}));

export function beginFromNothing(): void {
  useKeep.setState({ fromNothing: true });
}

export function dismissNews(): void {
  useKeep.setState({ news: undefined, failures: [] });
}
