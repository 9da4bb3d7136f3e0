/** Whether the page on which the open game is adapted is shown. */
import { create } from 'zustand';
import { part } from '../parts/part.ts';

export const ADAPT_PAGE = part(() => import('./AdaptPage.tsx'));
/** Asked when a game comes in from a file: it has to know the kit. */
export const ADAPT_OFFER_PART = part(() => import('./offer.ts'));

export const useAdaptShown = create<{ readonly open: boolean }>()(() => ({ open: false }));

export function openAdapt(): void {
  useAdaptShown.setState({ open: true });
}

export function closeAdapt(): void {
  useAdaptShown.setState({ open: false });
}
