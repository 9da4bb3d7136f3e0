/** What reading a file has to say, as codes and values. The sentences stand in src/words/problems.ts. */
import type { Kind } from './model.ts';

/** Where in the file. `number` counts nodes or links from 1 in the file's order; id and name are given when they are texts. */
export type Where =
  | { readonly part: 'file'; readonly field?: string }
  | {
      readonly part: 'node' | 'link';
      readonly number: number;
      readonly id?: string;
      readonly name?: string;
      readonly kind?: string;
      /** Path within the node or link, such as `minutes.low`. */
      readonly field?: string;
    };

/** What a field should have held. */
export type Expected =
  | {
      readonly is:
        | 'text'
        | 'someText'
        | 'number'
        | 'wholeNumber'
        | 'trueOrFalse'
        | 'list'
        | 'object'
        | 'nothing';
    }
  | { readonly is: 'atLeast' | 'above' | 'atMost'; readonly limit: number }
  /** A list with fewer members than it needs. */
  | { readonly is: 'members'; readonly least: number }
  | { readonly is: 'oneOf'; readonly values: readonly (string | number)[] }
  | { readonly is: 'either'; readonly options: readonly Expected[] };

/** What it held: the value itself when it is a simple one. */
export type Found =
  | { readonly is: 'missing' | 'list' | 'object' }
  | { readonly is: 'value'; readonly value: string | number | boolean | null };

/** A node by the words that a person knows it by. */
export interface Named {
  readonly id: string;
  readonly name: string;
  readonly kind: Kind;
}

/** Each refuses the file. */
export type Problem =
  /** Signs of text, counted as UTF-16 units. */
  | { readonly code: 'tooLarge'; readonly length: number; readonly limit: number }
  | { readonly code: 'notJson'; readonly empty: boolean }
  | { readonly code: 'otherJson' }
  | { readonly code: 'newerVersion'; readonly version: number; readonly known: number }
  | { readonly code: 'tooDeep'; readonly limit: number }
  /** A list of more members than any game has. */
  | { readonly code: 'tooLong'; readonly where: Where; readonly length: number; readonly limit: number }
  /** A number beyond what numbers can be, such as 1e999. */
  | { readonly code: 'notFinite'; readonly where: Where }
  | { readonly code: 'shape'; readonly where: Where; readonly expected: Expected; readonly found: Found }
  | { readonly code: 'idTwice'; readonly where: Where; readonly first: number }
  | { readonly code: 'holderMissing' | 'carrierMissing'; readonly where: Where; readonly id: string }
  | {
      readonly code: 'holderHoldsNothing' | 'carrierNoContainer';
      readonly where: Where;
      readonly holder: Named;
    }
  /** Each lies in the next, and the last in the first. */
  | { readonly code: 'holderRing'; readonly ring: readonly Named[] }
  | { readonly code: 'endMissing'; readonly where: Where; readonly end: 'from' | 'to'; readonly id: string }
  | { readonly code: 'linkToItself'; readonly where: Where; readonly node: Named }
  | { readonly code: 'linkKinds'; readonly where: Where; readonly from: Named; readonly to: Named }
  | {
      readonly code: 'linkTwice';
      readonly where: Where;
      readonly first: Where;
      readonly from: Named;
      readonly to: Named;
    }
  | {
      readonly code: 'estimates';
      readonly where: Where;
      readonly low: number;
      readonly likely: number;
      readonly high: number;
    };

/** Each comes with a game that was read. */
export type Note =
  /** Keys named `__proto__`, which programs can be misled by, were left away. */
  | { readonly code: 'keysDropped'; readonly count: number; readonly first: Where }
  /** Fasteners of a type that this version does not know count as answered by their links. */
  | { readonly code: 'unknownType'; readonly type: string; readonly nodes: readonly Named[] };
