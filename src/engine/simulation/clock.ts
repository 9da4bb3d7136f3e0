/**
 * The game as the simulation plays it: the compiled network and, for each node, what the network does not keep.
 * Plain data, structured-cloneable: this is what travels to the worker.
 */
import {
  handsOf,
  hintAfterOf,
  isForFun,
  lessonOf,
  minutesOf,
  sharedOf,
  teamSize,
} from '../../game/defaults.ts';
import type { Game } from '../../game/model.ts';
import type { Network } from '../network.ts';
import { drawKey } from './draw-key.ts';

export interface ClockLesson {
  /** Pupils in one team. */
  readonly team: number;
  readonly teams: number;
  /** Of play. */
  readonly minutes: number;
  readonly adults: number;
  /** Of one team. */
  readonly hints: number;
  readonly hintMinutes: number;
  readonly checkMinutes: number;
}

/** Arrays have one entry for each node of the network; minutes of what is no step are 0. */
export interface Clock {
  readonly network: Network;
  readonly low: Float64Array;
  readonly likely: Float64Array;
  readonly high: Float64Array;
  /** Pupils that a step keeps busy. */
  readonly hands: Int32Array;
  /** How many of it there are for all teams together; 0 where every team has its own. */
  readonly shared: Int32Array;
  /** 1 where the teacher checks or hands over. */
  readonly checked: Uint8Array;
  /** 1 for a lock that is there for the joy of opening: it is played as any other, and is no bottleneck. */
  readonly forFun: Uint8Array;
  /** Minutes of work after which a hint is due. */
  readonly hintAfter: Float64Array;
  /** Two words a node: from its id alone, so that the draws of a step stay the same when the rest of the game changes. */
  readonly keys: Uint32Array;
  readonly lesson: ClockLesson;
}

/** Far more than any class, and few enough for 32-bit whole numbers: whoever is above has nothing to do anyway. */
const MOST_PUPILS = 1_000_000_000;

export function clockOf(game: Game, network: Network): Clock {
  const { size, ids } = network;
  const low = new Float64Array(size);
  const likely = new Float64Array(size);
  const high = new Float64Array(size);
  const hands = new Int32Array(size);
  const shared = new Int32Array(size);
  const checked = new Uint8Array(size);
  const forFun = new Uint8Array(size);
  const hintAfter = new Float64Array(size);
  const keys = new Uint32Array(2 * size);
  const lesson = lessonOf(game);
  const team = Math.min(teamSize(lesson), MOST_PUPILS);
  const teams = Math.max(1, lesson.teams);
  for (let i = 0; i < size; i++) {
    const id = ids[i] ?? '';
    const node = game.nodes.get(id);
    if (node === undefined) continue;
    keys.set(drawKey(id), 2 * i);
    // More than a whole team, or one for each team, is as good as any number above.
    hands[i] = Math.min(handsOf(node), team);
    shared[i] = Math.min(sharedOf(node) ?? 0, teams);
    forFun[i] = isForFun(node) ? 1 : 0;
    if (network.isStep[i] !== 1) continue;
    const minutes = minutesOf(node);
    low[i] = minutes.low;
    likely[i] = minutes.likely;
    high[i] = minutes.high;
    checked[i] = node.checked === true ? 1 : 0;
    hintAfter[i] = hintAfterOf(node);
  }
  const { minutes, adults, hints, hintMinutes, checkMinutes } = lesson;
  return {
    network,
    low,
    likely,
    high,
    hands,
    shared,
    checked,
    forFun,
    hintAfter,
    keys,
    lesson: { team, teams, minutes, adults, hints, hintMinutes, checkMinutes },
  };
}
