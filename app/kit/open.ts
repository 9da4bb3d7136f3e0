/** Whether my kit is open, and at which of its pages. */
import { create } from 'zustand';
import { part } from '../parts/part.ts';

export const KIT_DIALOG = part(() => import('./KitDialog.tsx'));

export const KIT_PAGES = ['game', 'have', 'room'] as const;

/** For the open game; what I have; my room. */
export type KitPage = (typeof KIT_PAGES)[number];

interface KitShown {
  readonly open: boolean;
  /** Undefined until one was chosen: a kit with nothing in it is filled first. */
  readonly page: KitPage | undefined;
}

export const useKitShown = create<KitShown>()(() => ({ open: false, page: undefined }));

export function openKit(page?: KitPage): void {
  useKitShown.setState(page === undefined ? { open: true } : { open: true, page });
}

export function closeKit(): void {
  useKitShown.setState({ open: false });
}
