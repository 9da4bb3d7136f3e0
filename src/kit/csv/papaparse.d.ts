/** As much of the library as the core uses. Its own types bring those of Node along, which the core does not know; see src/tsconfig.json. */
interface ParseResult<Row> {
  readonly data: Row[];
  readonly errors: readonly { readonly code: string; readonly row?: number }[];
}

interface Papa {
  parse<Row>(
    text: string,
    config: { readonly delimiter: string; readonly newline: '\n'; readonly preview?: number },
  ): ParseResult<Row>;
  unparse(table: string[][], config: { readonly delimiter: string; readonly newline: string }): string;
}

declare const papa: Papa;
export default papa;
