/** What may be wrong with a printed page. */

export type FaultKind =
  /** Two trays, bars, boxes to tick, numbers, signs or texts share paper. */
  | 'overlap'
  | 'line on line'
  | 'line along a wall'
  | 'line through text'
  | 'line through a sign'
  /** A line runs through a tray or bar that neither of its ends is in. */
  | 'line through an area'
  | 'slanted line'
  /** A text lies across the wall of a tray or bar, or outside the one that it belongs to. */
  | 'text over a wall'
  | 'text covered'
  | 'text narrower than told'
  | 'text too small'
  | 'too near the edge'
  /** What a game uses, and the pages do not show. */
  | 'missing'
  | 'name not whole'
  | 'row outside its tray'
  | 'link neither drawn nor told'
  | 'link told at one end'
  | 'link drawn and told'
  | 'link told wrong'
  | 'line without its end'
  | 'unknown link'
  | 'step number'
  | 'code missing'
  | 'code given away'
  | 'tick boxes'
  | 'page number'
  | 'left out by the options'
  | 'no band';

export interface Fault {
  readonly kind: FaultKind;
  /** From 1; 0 for all pages together. */
  readonly page: number;
  /** What and where, for whoever mends it. */
  readonly what: string;
}
