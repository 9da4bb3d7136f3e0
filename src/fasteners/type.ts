/**
 * What is known of a type of fastener, in one interface: what its codes look like and how they are typed, which of them a given
 * lock can show, how many there are, how long a try takes, which are weak, how a good one is drawn, what it asks of a pupil.
 * Symbols are normalised (src/game/codes.ts); positions in a Misfit, Trouble or the document count from 1, in `wheel` and `known` from 0.
 */
import type { Ability } from '../game/abilities.ts';
import type { Estimate, NodeOf } from '../game/model.ts';

/** What one lock is like, as far as the document says. */
export type Hardware = NonNullable<NodeOf<'fastener'>['hardware']>;

/** A code as a teacher types it: read as the one form that is stored, or what is wrong with it. */
export type CodeReading =
  | { readonly ok: true; readonly code: string }
  | { readonly ok: false; readonly trouble: CodeTrouble };

/** Where what was typed is not plain. `position` counts symbols, from 1; `symbol` is as typed. Worded in src/words/lock-codes.ts. */
export type CodeTrouble =
  | {
      readonly trouble: 'digitWanted' | 'letterWanted' | 'moveWanted' | 'numberWanted';
      readonly position: number;
      readonly symbol: string;
    }
  /** More digits than a number of a dial has. */
  | { readonly trouble: 'numbersRunTogether'; readonly position: number; readonly symbol: string }
  /** Directions of turning beside the numbers of a dial that are not right, left, right. */
  | { readonly trouble: 'turning'; readonly position: number; readonly symbol: string };

/**
 * Why a lock cannot show a code. `assumed`: the document does not say what the lock is like, and it is held against what is usual
 * for its type.
 */
export type Misfit =
  | {
      readonly misfit: 'length';
      readonly wanted: number;
      readonly got: number;
      readonly assumed: boolean;
    }
  | {
      readonly misfit: 'symbol';
      /** From 1. */
      readonly position: number;
      readonly symbol: string;
      /** What can be shown there. */
      readonly wheel: readonly string[];
      readonly assumed: boolean;
    };

/**
 * Why a code is tried before others. factorySetting: as it comes from the shop; allAlike: 333; run: 345, 10 20 30, once round;
 * year: of this time; repeated: 4747. Common practice, no source.
 */
export type WeakReason = 'factorySetting' | 'allAlike' | 'run' | 'year' | 'repeated';

export interface WeakOptions {
  /** The year of the lesson: with it that year and those beside it are weak, without it all of this century. */
  readonly year?: number;
  readonly hardware?: Hardware | undefined;
}

/** A uniform whole number from 0 to count − 1. */
export type PickOne = (count: number) => number;

/** How codes of a type are written, fit and count. */
export interface CodeRules {
  /** The symbols of any text as it stands in the document, normalised. */
  symbols(typed: string): readonly string[];
  /** Forgiving: whatever is plain. An empty text is the code ''. A lock's own wheels tell which accents are meant. */
  read(typed: string, hardware?: Hardware): CodeReading;
  /** Symbols as the one stored form: "472", "ULRD", "32 14 25", "FOX SUN BELL". */
  write(symbols: readonly string[]): string;

  /** The symbols that can be shown at a position, from 0; undefined: anything, or it is not known. */
  wheel(position: number, hardware?: Hardware): readonly string[] | undefined;
  /** How many symbols a code has, where the lock fixes it. */
  length(hardware?: Hardware): number | undefined;
  /** Why the lock cannot be set to this code; empty: it can. */
  misfits(symbols: readonly string[], hardware?: Hardware): readonly Misfit[];

  /**
   * How many codes of that length the lock has; 0 for a length that it cannot have, Infinity where none can count them.
   * `code`, the symbols that it is set to, tells for a typed answer what kind of signs to try.
   */
  codes(length: number, hardware?: Hardware, code?: readonly string[]): number;
  /** How many of them agree with what is known: the symbols at these positions, from 0. */
  left(
    length: number,
    hardware: Hardware | undefined,
    known: ReadonlySet<number>,
    code?: readonly string[],
  ): number;
  weak(symbols: readonly string[], options?: WeakOptions): WeakReason | undefined;
  /** A code that is not weak, each alike; empty where the lock has none of that length, or its symbols are not known. */
  draw(pick: PickOne, length: number, hardware?: Hardware): readonly string[];
}

/** What is known of one type of fastener. A type is one file in this folder and one line in its index. */
export interface FastenerType extends CodeRules {
  /** As the document says it. */
  readonly type: string;
  /** What opens it: a key, a code, nothing (a latch), or for a type that this version does not know, whatever is linked to it. */
  readonly opensWith: 'key' | 'code' | 'nothing' | 'links';
  /** Its code is a sequence of directions, drawn and typed as arrows. */
  readonly directions: boolean;
  /** Its symbols are names or numbers, with a space between them. */
  readonly apart: boolean;
  /** It has a wheel for each symbol, and says what is on them. */
  readonly hasWheels: boolean;
  /** Of a code that is drawn for a lock that fixes no length; undefined where none is drawn so. Common practice, no published source. */
  readonly usualLength: number | undefined;
  /** Common practice, no published source. */
  readonly minutes: Estimate;
  /** What one try takes, in seconds; the lock's own `hardware.trySeconds` wins. Common practice, no published source. */
  readonly trySeconds: number;
  /** What it asks of a pupil. The usual other way is worded in src/words/lock-types.ts. */
  readonly asks: readonly Ability[];
}

/** What one lock takes when it is known what to do. Common practice, no published source. */
export const USUAL_MINUTES: Estimate = { low: 0.3, likely: 0.5, high: 2 };
