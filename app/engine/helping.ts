/**
 * What helps most, and the pace, of the open game: asked for only while they are looked at, anew after each edit; a newer question ends the older one.
 * A worker answers; where a browser, or a school's rules for it, refuse workers, the page does, from fewer runs.
 */
import { create } from 'zustand';
import type { Game } from '../../src/game/model.ts';
import type { WhatHelps } from '../../src/helps/what-helps.ts';
import { type Helper, startHelper } from '../parts/helper.ts';
import { holdScript } from '../parts/hold-script.ts';
import { inSlices } from '../parts/in-slices.ts';
import { useGame } from '../store/game.ts';
import { ON_THE_PAGE } from './figures.ts';
import script from './helps.worker.ts?worker&url';
import { type HelpsAnswer, type HelpsPart, helpsAnswers, type PaceOfGame } from './helps-work.ts';

export interface HelpsQuestion {
  readonly ticket: number;
  /** Without positions. */
  readonly game: Game;
  readonly parts: readonly HelpsPart[];
}

export interface HelpsReply {
  readonly ticket: number;
  /** Undefined: it cannot be worked out. */
  readonly answer: HelpsAnswer | undefined;
}

/** What was found out, and of which game. */
export interface Found<T> {
  readonly game: Game;
  /** Undefined where that game cannot be won. */
  readonly value: T | undefined;
}

export interface HelpsState {
  readonly helps: Found<WhatHelps> | undefined;
  readonly pace: Found<PaceOfGame> | undefined;
  /** Share of the changes that have been tried, while they are. */
  readonly done: number;
  readonly failed: boolean;
  /** What is folded out in the panel. */
  readonly open: ReadonlySet<HelpsPart>;
}

export const useHelps = create<HelpsState>()(() => ({
  helps: undefined,
  pace: undefined,
  done: 0,
  failed: false,
  open: new Set(),
}));

export function foldOut(part: HelpsPart, isOpen: boolean): void {
  const open = new Set(useHelps.getState().open);
  if (isOpen) open.add(part);
  else open.delete(part);
  useHelps.setState({ open });
}

/** Positions take no part in it. */
export function isOfGame(found: Found<unknown>, { nodes, links, head }: Game): boolean {
  return found.game.nodes === nodes && found.game.links === links && found.game.head === head;
}

/** Typing and dragging come to rest before a worker starts anew. */
const REST = 300;
/** Of the page, which also has frames to draw. */
const SLICE = 5;

/** In the order in which they are answered. */
const PARTS: readonly HelpsPart[] = ['pace', 'helps'];
const wanted = new Set<HelpsPart>();
holdScript(script);

let helper: Helper<HelpsQuestion | undefined, HelpsReply> | undefined;
let isStarted = false;
let ticket = 0;
let asked: HelpsQuestion | undefined;
let waiting: ReturnType<typeof setTimeout> | undefined;
let stopPage = (): void => undefined;

/** Somebody looks at a part; what is returned says that nobody does any more. */
export function lookAt(part: HelpsPart): () => void {
  start();
  wanted.add(part);
  ask();
  return () => {
    wanted.delete(part);
    if (wanted.size === 0) stop();
  };
}

function start(): void {
  if (isStarted) return;
  isStarted = true;
  helper = startWorker();
  useGame.subscribe(({ game, provenance }, before) => {
    const isSame = isOfGame({ game: before.game, value: undefined }, game);
    if (provenance.id !== before.provenance.id) {
      useHelps.setState({ helps: undefined, pace: undefined });
    } else if (isSame) return;
    stop();
    if (wanted.size > 0) waiting = setTimeout(ask, REST);
  });
}

function startWorker(): typeof helper {
  const own = startHelper<HelpsQuestion | undefined, HelpsReply>(script);
  if (!own) return undefined;
  own.hear = hear;
  own.lost = () => {
    helper = undefined;
    if (asked) put(asked);
  };
  return own;
}

function stop(): void {
  clearTimeout(waiting);
  ticket += 1;
  if (!asked) return;
  asked = undefined;
  stopPage();
  helper?.put(undefined);
}

function ask(): void {
  const { game } = useGame.getState();
  const known = useHelps.getState();
  const parts = PARTS.filter((part) => {
    const found = known[part];
    return wanted.has(part) && (!found || !isOfGame(found, game));
  });
  if (parts.length === 0) return;
  if (asked && parts.every((part) => asked?.parts.includes(part))) return;
  stop();
  asked = { ticket, game: { ...game, positions: new Map() }, parts };
  useHelps.setState({ done: 0, failed: false });
  put(asked);
}

function put(question: HelpsQuestion): void {
  if (helper) {
    helper.put(question);
    return;
  }
  const { game, parts } = question;
  stopPage = inSlices(helpsAnswers(game, parts, ON_THE_PAGE.runs), {
    hear: (answer) => hear({ ticket: question.ticket, answer }),
    fail: () => hear({ ticket: question.ticket, answer: undefined }),
    length: SLICE,
  });
}

function hear({ ticket: own, answer }: HelpsReply): void {
  if (!asked || own !== asked.ticket) return;
  const { game, parts } = asked;
  if (!answer) {
    asked = undefined;
    useHelps.setState({ failed: true });
  } else if (answer.part === 'progress') useHelps.setState({ done: answer.done });
  else if (answer.part === 'pace') useHelps.setState({ pace: { game, value: answer.value } });
  else useHelps.setState({ helps: { game, value: answer.value } });
  if (answer && answer.part === parts.at(-1)) asked = undefined;
}
