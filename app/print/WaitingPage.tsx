/** The first sheet, empty, until it has been laid out: what is coming, where it will be, as large as it will be. */
import { paperOfSheet, type SheetName, type SheetOptions } from '../../src/sheets/sheet.ts';
import { PRINT_STATUS } from '../../src/words/print.ts';
import { paperName } from './page-svg.ts';

interface WaitingPageProps {
  readonly options: SheetOptions;
  readonly first: SheetName;
}

export function WaitingPage({ options, first }: WaitingPageProps) {
  return (
    // The status in the head says the same to whoever hears the page.
    <div
      className="print-page print-waiting"
      data-paper={paperName(paperOfSheet(first, options))}
      aria-hidden="true"
    >
      {PRINT_STATUS.starting}
    </div>
  );
}
