/** The part of the library that the tests use. It ships no types. */
declare module 'logic-solver' {
  export type Formula = string | { readonly type?: string };
  export interface Solution {
    getTrueVars(): string[];
  }
  export interface Solver {
    require(...formulas: Formula[]): void;
    solveAssuming(formula: Formula): Solution | null;
  }
  const Logic: {
    readonly Solver: new () => Solver;
    or(...operands: Formula[]): Formula;
    and(...operands: Formula[]): Formula;
    not(operand: Formula): Formula;
  };
  export default Logic;
}
