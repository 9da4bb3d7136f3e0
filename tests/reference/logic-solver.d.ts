/** The part of the library that the tests use. It ships no types. */
declare module 'logic-solver' {
  export type Formula = string | { readonly type?: string };
  export interface Solution {
    getTrueVars(): string[];
  }
  export class Solver {
    require(...formulas: Formula[]): void;
    solve(): Solution | null;
    solveAssuming(formula: Formula): Solution | null;
  }
  export function or(...operands: Formula[]): Formula;
  export function and(...operands: Formula[]): Formula;
  export function not(operand: Formula): Formula;
}
