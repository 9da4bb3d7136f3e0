/** Cupboards for the browser tests, invented here. */

/** As a spreadsheet of another country writes it: semicolons. Two small number locks, one word lock without Q, four padlocks whose keys are alike, a few tins. */
export const POOR_CUPBOARD = [
  'What;Label;How many;Wheels;Keys alike with;Kept shut by;Holes;Note',
  'number lock;blue;2;3;;;;',
  'number lock;black;4;4;;;;one sticks',
  'word lock;brass;1;1 × BCDFGHLMPRSTW / 1 × AEHILNORTUWY / 1 × ACEILMNORSTU / 1 × ADEKLNRSTY / 1 × DEHKLNRSTY;;;;no Q',
  'direction lock;;1;;;;;',
  'key lock;little;4;;little;;;',
  'typed-code lock;old tablet;1;;;;;',
  'box;tins;12;;;one lock;;',
  'box;crate;2;;;a hasp;;',
  'hasp;;1;;;;6;',
].join('\r\n');

/** A column that cannot be done without is missing. */
export const NO_THINGS = 'Label,How many\r\nblue,2\r\n';
