/** Whether the print preview is open. */
import { create } from 'zustand';
import { part } from '../parts/part.ts';

export const PRINT_PREVIEW = part(() => import('./PrintPreview.tsx'));
const LAYING_OUT = part(() => import('./lay-out.ts'));

export const usePrint = create<{ readonly open: boolean }>()(() => ({ open: false }));

export function openPrint(): void {
  usePrint.setState({ open: true });
}

export function closePrint(): void {
  usePrint.setState({ open: false });
}

/** The pointer or the focus has come to the button: most of the wait for the first page is for reading scripts. */
export async function preparePrint(): Promise<void> {
  const [layingOut] = await Promise.all([LAYING_OUT.load(), PRINT_PREVIEW.load()]);
  if (!usePrint.getState().open) layingOut?.prepareLayingOut();
}
