/** Whether the print preview is open. */
import { create } from 'zustand';

export const usePrint = create<{ readonly open: boolean }>()(() => ({ open: false }));

export function openPrint(): void {
  usePrint.setState({ open: true });
}

export function closePrint(): void {
  usePrint.setState({ open: false });
}
