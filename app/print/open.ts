/** Whether the print preview is open. */
import { create } from 'zustand';

export const usePrint = create<{ readonly open: boolean }>()(() => ({ open: false }));

export function openPrint(): void {
  usePrint.setState({ open: true });
}

export function closePrint(): void {
  usePrint.setState({ open: false });
}

/** The pointer or the focus has come to the button: most of the wait for the first page is for reading scripts. */
export async function preparePrint(): Promise<void> {
  const [{ prepareLayingOut }] = await Promise.all([import('./lay-out.ts'), import('./PrintPreview.tsx')]);
  if (!usePrint.getState().open) prepareLayingOut();
}
