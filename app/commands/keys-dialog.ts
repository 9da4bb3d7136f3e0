/** Whether the list of keys is open. */
import { create } from 'zustand';

export const useKeys = create<{ readonly open: boolean }>()(() => ({ open: false }));
