/** Whether the list of keys is open. */
import { create } from 'zustand';

export const useKeyList = create<{ readonly open: boolean }>()(() => ({ open: false }));
