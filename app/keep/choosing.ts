/** The browser's own window for choosing files. */
import { openFiles } from './arriving.ts';

export function openFile(): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.multiple = true;
  /** Some systems know no ending of two parts. */
  input.accept = '.json,application/json';
  input.addEventListener('change', () => void openFiles(input.files ?? []));
  input.click();
}
