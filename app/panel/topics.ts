/** Where the panel has been asked to go, and whether it is open where the screen is too small to show it always. */
import { create } from 'zustand';
import type { Topic } from '../../src/words/sentence.ts';
import { useView } from '../store/view.ts';

/** What of the order of play is marked. */
export type Marked = Extract<Topic, 'needed' | 'chain'>;

/** Where the panel lies over the map it waits to be called; see page.css. */
const OVER_THE_MAP = '(max-width: 1100px)';

interface PanelState {
  readonly open: boolean;
  readonly topic: Topic | undefined;
  /** Counts the requests, so that the same topic can be asked for again. */
  readonly asked: number;
  readonly marked: Marked | undefined;
  setOpen(open: boolean): void;
  setMarked(marked: Marked | undefined): void;
}

export const usePanel = create<PanelState>()((set) => ({
  open: !matchMedia(OVER_THE_MAP).matches,
  topic: undefined,
  asked: 0,
  marked: undefined,
  setOpen: (open) => set({ open }),
  setMarked: (marked) => set({ marked }),
}));

/** What an underlined word of the verdict counts is brought into view: minutes on the map, all else in the panel. */
export function goToTopic(topic: Topic): void {
  const view = useView.getState();
  if (topic === 'time') {
    view.setHeat(true);
    return;
  }
  view.lift(undefined);
  view.select([]);
  const { asked } = usePanel.getState();
  usePanel.setState({
    open: true,
    topic,
    asked: asked + 1,
    marked: topic === 'needed' || topic === 'chain' ? topic : undefined,
  });
}
