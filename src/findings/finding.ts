/** What the engine has to say about a game, as codes and values. The sentences stand in src/words/. */
import type { Edit } from '../game/edits/edit.ts';
import type { LinkId, NodeId } from '../game/model.ts';

/** 'stops': with that node never reached a prize falls, or there is no prize to win; else 'look', worth a look. */
export type Level = 'stops' | 'look';

/** Values for a sentence: names are looked up by id when it is worded, so that renaming needs no new analysis. */
export type Value = string | number | NodeId | readonly NodeId[] | readonly number[];

/** A change that settles something: a code, values for its sentence, and the edits; applied and undone as one. */
export interface Proposal {
  readonly code: string;
  readonly values: Readonly<Record<string, Value>>;
  readonly edits: readonly Edit[];
}

export interface Finding {
  readonly code: string;
  readonly level: Level;
  /** Those concerned, the culprit first. */
  readonly nodes: readonly NodeId[];
  readonly links: readonly LinkId[];
  readonly values: Readonly<Record<string, Value>>;
  readonly proposals: readonly Proposal[];
}
