/** What is looked at, and how: selection, lifted thing, overlay, minute played, open boxes. Not part of the game and not undone. */
import { create } from 'zustand';
import type { Game, LinkId, NodeId } from '../../src/game/model.ts';
import type { Moment } from '../flow/card.ts';

const HEAT_KEY = 'latchmap.heat';
const PLAY_KEY = 'latchmap.play';

/** What the overlay shows of each step: minutes by which the game ends sooner without it, or those that pupils wait meanwhile. */
export type Reading = 'cost' | 'waiting';

export interface ViewState {
  readonly nodes: ReadonlySet<NodeId>;
  readonly links: ReadonlySet<LinkId>;
  /** The thing of which is asked: what if nobody finds this? */
  readonly lifted: NodeId | undefined;
  /** Where the time goes, remembered between visits. */
  readonly heat: boolean;
  readonly reading: Reading;
  /** While the overlay is on: the chain that decides the end is drawn heavier. */
  readonly chain: boolean;
  /** A lesson is played through under the map, remembered between visits. Of this and the overlay, one at a time. */
  readonly play: boolean;
  /** How things stand at the minute that is shown; undefined while none is. */
  readonly moments: ReadonlyMap<NodeId, Moment> | undefined;
  /** Boxes two or more deep that have been opened up to be seen. */
  readonly opened: ReadonlySet<NodeId>;
  /** Pointed at from elsewhere on the page: ringed on the map, without being selected. */
  readonly pointed: ReadonlySet<NodeId>;
  /** Counts requests to bring the selection into view, so that the canvas can answer each. */
  readonly shown: number;
  /** Whose name is to be typed next: the form that takes the request up clears it again. */
  readonly naming: NodeId | undefined;

  select(nodes: Iterable<NodeId>, links?: Iterable<LinkId>): void;
  /** Selects, and asks the canvas to go there. */
  show(nodes: Iterable<NodeId>, links?: Iterable<LinkId>): void;
  /** Selects one thing and asks for its name to be typed; undefined when the request has been taken up. */
  askName(id: NodeId | undefined): void;
  point(nodes: Iterable<NodeId>): void;
  lift(id: NodeId | undefined): void;
  setHeat(heat: boolean): void;
  setReading(reading: Reading): void;
  setChain(chain: boolean): void;
  /** Opening it puts back what is lifted; closing it brings the overlay back if that was on. */
  setPlay(play: boolean): void;
  setOpened(id: NodeId, opened: boolean): void;
  /** Lets go of what is no longer in the game. What was opened stays so, for when an undo brings it back. */
  keepTo(game: Pick<Game, 'nodes' | 'links'>): void;
  /** For another game: nothing selected, lifted or opened. */
  reset(): void;
}

const NONE: ReadonlySet<never> = new Set();

export const useView = create<ViewState>()((set, get) => ({
  nodes: NONE,
  links: NONE,
  lifted: undefined,
  heat: remembered(HEAT_KEY) && !remembered(PLAY_KEY),
  reading: 'cost',
  chain: false,
  play: remembered(PLAY_KEY),
  moments: undefined,
  opened: NONE,
  pointed: NONE,
  shown: 0,
  naming: undefined,

  select: (nodes, links = []) => set({ nodes: new Set(nodes), links: new Set(links), naming: undefined }),
  show: (nodes, links = []) =>
    set({ nodes: new Set(nodes), links: new Set(links), naming: undefined, shown: get().shown + 1 }),
  askName: (id) =>
    set(id === undefined ? { naming: undefined } : { nodes: new Set([id]), links: NONE, naming: id }),
  point: (nodes) => set({ pointed: new Set(nodes) }),
  lift: (lifted) => set({ lifted }),
  setHeat(heat) {
    if (heat && get().play) get().setPlay(false);
    set({ heat });
    remember(HEAT_KEY, heat);
  },
  setReading: (reading) => set({ reading }),
  setChain: (chain) => set({ chain }),
  setPlay(play) {
    set(
      play
        ? { play, heat: false, lifted: undefined }
        : { play, heat: remembered(HEAT_KEY), moments: undefined },
    );
    remember(PLAY_KEY, play);
  },
  setOpened(id, opened) {
    const next = new Set(get().opened);
    if (opened) next.add(id);
    else next.delete(id);
    set({ opened: next });
  },
  keepTo({ nodes, links }) {
    const view = get();
    const there = (id: NodeId | undefined) => (id !== undefined && nodes.has(id) ? id : undefined);
    set({
      nodes: within(view.nodes, nodes),
      links: within(view.links, links),
      pointed: within(view.pointed, nodes),
      lifted: there(view.lifted),
      naming: there(view.naming),
    });
  },
  reset: () =>
    set({ pointed: NONE, nodes: NONE, links: NONE, lifted: undefined, opened: NONE, naming: undefined }),
}));

/** The same set where all of it is there. */
function within<Id>(ids: ReadonlySet<Id>, there: ReadonlyMap<Id, unknown>): ReadonlySet<Id> {
  const left = [...ids].filter((id) => there.has(id));
  return left.length === ids.size ? ids : new Set(left);
}

/** A setting is a convenience: where storage is refused it is simply not remembered. */
function remembered(key: string): boolean {
  try {
    return localStorage.getItem(key) === 'on';
  } catch {
    return false;
  }
}

function remember(key: string, on: boolean): void {
  try {
    localStorage.setItem(key, on ? 'on' : 'off');
  } catch {
    return;
  }
}
