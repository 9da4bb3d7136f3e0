/** What one row of a tray comes to. */
import type { Mark } from '../../drawing.ts';

export interface RowFigure {
  readonly height: number;
  /** From the upper edge of the row and the left edge of the tray. */
  readonly marks: readonly Mark[];
  /** Middle of its first line; undefined for what no line can lead to. */
  readonly middle?: number;
  /** Where a line ends or begins, from the left edge of the tray. */
  readonly reach?: number;
}
