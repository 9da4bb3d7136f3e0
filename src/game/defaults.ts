/** What holds where the document is silent. Applied when a game is compiled or shown, never written into the file. */
import { fastenerType } from '../fasteners/index.ts';
import type { Estimate, Game, GameNode } from './model.ts';

/** Common practice, no published source: the teacher changes them, and the runs of the game refine them. */
const SEARCH: Estimate = { low: 1, likely: 2, high: 5 };
const THINKING: Estimate = { low: 3, likely: 5, high: 10 };
const RED_HERRING: Estimate = { low: 0.5, likely: 1, high: 3 };
const NO_TIME: Estimate = { low: 0, likely: 0, high: 0 };

export function defaultMinutes(node: GameNode): Estimate {
  switch (node.kind) {
    case 'place':
      return SEARCH;
    case 'puzzle':
      return THINKING;
    case 'fastener':
      return fastenerType(node.type).minutes;
    case 'clue':
    case 'key':
    case 'tool':
      return node.decoy === true ? RED_HERRING : NO_TIME;
    default:
      return NO_TIME;
  }
}

/** Three estimates in minutes: the node's own, else its kind's. */
export function minutesOf(node: GameNode): Estimate {
  return node.minutes ?? defaultMinutes(node);
}

/** A step is anything that pupils spend time on. */
export function isStep(node: GameNode): boolean {
  return minutesOf(node).high > 0;
}

/** (low + 4·likely + high) / 6 of a step, in minutes; 0 of anything else. The PERT mean (Malcolm et al. 1959). */
export function expectedMinutes(node: GameNode): number {
  const { low, likely, high } = minutesOf(node);
  return high > 0 ? (low + 4 * likely + high) / 6 : 0;
}

/** How many pupils a step keeps busy. */
export function handsOf(node: GameNode): number {
  if (node.hands !== undefined) return node.hands;
  if (node.kind === 'place' || node.kind === 'puzzle') return 3;
  return node.kind === 'clue' || node.kind === 'fastener' ? 2 : 1;
}

/** Minutes of work on a step after which a hint is due: its own, else midway between its likely and its high estimate (common practice, no source). */
export function hintAfterOf(node: GameNode): number {
  const { likely, high } = minutesOf(node);
  return node.hintAfter ?? (likely + high) / 2;
}

/** How many of it there are for all teams together; undefined where every team has its own. */
export function sharedOf(node: GameNode): number | undefined {
  return node.kind === 'tool' || node.kind === 'container' || node.kind === 'place' ? node.shared : undefined;
}

/** A lock that is there for the joy of opening: it is no bottleneck, whatever it costs. */
export function isForFun(node: GameNode): boolean {
  return node.kind === 'fastener' && node.forFun === true;
}

/** Whether the teams share something that is used. */
export function sharesAnything(game: Game): boolean {
  for (const node of game.nodes.values())
    if (sharedOf(node) !== undefined && node.leftOut !== true) return true;
  return false;
}

export interface LessonPlan {
  readonly ages: string;
  readonly pupils: number;
  readonly teams: number;
  /** Of play alone. */
  readonly minutes: number;
  /** That a team may have. */
  readonly hints: number;
  readonly adults: number;
  /** From when a hint is given until the step is done. */
  readonly hintMinutes: number;
  /** That a check by the teacher takes. */
  readonly checkMinutes: number;
  readonly talkBefore: number;
  readonly talkAfter: number;
  readonly clearUp: number;
}

/** Minutes and adults: common practice, no source. */
const USUAL_LESSON: LessonPlan = {
  ages: '',
  pupils: 24,
  teams: 4,
  minutes: 40,
  hints: 3,
  adults: 1,
  hintMinutes: 1,
  checkMinutes: 0.5,
  talkBefore: 5,
  talkAfter: 5,
  clearUp: 5,
};

export function lessonOf(game: Game): LessonPlan {
  return { ...USUAL_LESSON, ...game.head.lesson };
}

/** Pupils of one team: halves up, and nobody plays alone in an empty room. Where a lesson of no teams is given, all are one team. */
export function teamSize({ pupils, teams }: Pick<LessonPlan, 'pupils' | 'teams'>): number {
  return Math.max(1, Math.floor(pupils / Math.max(1, teams) + 0.5));
}
