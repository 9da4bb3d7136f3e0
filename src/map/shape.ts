/** The shape of one node by itself, at a given width: its text in lines, where the text stands, and how high that makes it. */
import { type FastenerType, fastenerType } from '../fasteners/index.ts';
import { isForFun, isStep, sharedOf } from '../game/defaults.ts';
import { type Game, type GameNode, type NodeId, parentOf } from '../game/model.ts';
import { type TextStyle, textWidth, wrap } from '../type/text.ts';
import { noteText } from '../words/canvas.ts';
import { NO_KEY } from '../words/kinds.ts';
import { isGivenOut } from './caption.ts';
import { codeLines, codeWidth } from './code.ts';
import type { CodeLines, Note } from './layout.ts';
import {
  GIVES_WIDTH,
  LINE,
  NAME,
  NOTE,
  OVERHANG,
  PLATE_HEIGHT,
  PLATE_MIN_WIDTH,
  PLATE_PAD,
  PORT_GAP,
  PUZZLE_MIN_HEIGHT,
  PUZZLE_WIDTH,
  SIGN_ROOM,
  STATE_ROOM,
  STEP_ROOM,
  THING,
  THING_HEIGHT,
  TRAY_PAD,
  TRAY_TOP,
} from './sizes.ts';

/** What shapes need to know of the links, gathered once for the whole game. */
export interface LinkFacts {
  /** Links into each node. */
  readonly into: ReadonlyMap<NodeId, number>;
  /** Links into and out of each node. */
  readonly touching: ReadonlyMap<NodeId, number>;
  /** For which type of lock each code and answer is written. */
  readonly writtenFor: ReadonlyMap<NodeId, FastenerType>;
  /** Nodes that a puzzle leads to. */
  readonly handedOver: ReadonlySet<NodeId>;
}

export interface Shape {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly string[];
  readonly text: { readonly x: number; readonly y: number };
  readonly step: boolean;
  readonly code?: CodeLines;
  readonly notes: readonly Note[];
}

interface Named {
  readonly width: number;
  readonly style: TextStyle;
  readonly lines: readonly string[];
}
const lastNamed = new WeakMap<GameNode, Named>();

/** The name in lines. Remembered by the node's identity: on each edit all but the changed one are the same objects. */
function nameLines(node: GameNode, width: number, style: TextStyle): readonly string[] {
  const last = lastNamed.get(node);
  if (last && last.width === width && last.style === style) return last.lines;
  const lines = wrap(node.name, width, style);
  lastNamed.set(node, { width, style, lines });
  return lines;
}

const widest = (lines: readonly string[], style: TextStyle) =>
  Math.max(...lines.map((line) => textWidth(line, style)));

function notesOf(node: GameNode, facts: LinkFacts): readonly Note[] {
  const notes: Note[] = [];
  if (typeof node.need === 'number') {
    const of = facts.into.get(node.id) ?? 0;
    if (node.need !== of) notes.push({ note: 'need', need: node.need, of });
  }
  if (node.atMinute !== undefined && node.atMinute > 0) {
    const givenOut = isGivenOut(node, parentOf(node) !== undefined, facts.handedOver.has(node.id));
    notes.push({ note: 'atMinute', minute: node.atMinute, givenOut });
  }
  const copies = sharedOf(node);
  if (copies !== undefined) notes.push({ note: 'shared', copies });
  if (node.checked === true) notes.push({ note: 'checked' });
  if (isForFun(node)) notes.push({ note: 'forFun' });
  if (node.decoy === true) notes.push({ note: 'redHerring' });
  if (node.leftOut === true) notes.push({ note: 'notToday' });
  return notes;
}

/** Between the left edge and the text, after room for a step number; and after the text. The ends of the shapes differ. */
const THING_INSETS = {
  key: { left: 22, right: 10 },
  clue: { left: 12, right: 16 },
  tool: { left: 16, right: 14 },
  prize: { left: 31, right: 18 },
} as const;

export function thingShape(
  node: GameNode & { readonly kind: keyof typeof THING_INSETS },
  width: number,
  facts: LinkFacts,
): Shape {
  const insets = THING_INSETS[node.kind];
  const step = isStep(node);
  const x = insets.left + (step ? STEP_ROOM : 0);
  const lines = nameLines(node, width - x - insets.right, THING);
  const notes = notesOf(node, facts);
  const height = THING_HEIGHT + LINE * (lines.length + notes.length - 1);
  return { width, height, lines, text: { x, y: (THING_HEIGHT - LINE) / 2 }, step, notes };
}

export function puzzleShape(game: Game, node: GameNode, facts: LinkFacts): Shape {
  const step = isStep(node);
  const x = step ? 10 + STEP_ROOM : 14;
  const room = PUZZLE_WIDTH - x - 12;
  const lines = nameLines(node, room, NAME);
  const code = codeLines(game, node, room - GIVES_WIDTH);
  const notes = notesOf(node, facts);
  const textHeight = LINE * (lines.length + notes.length + (code?.lines.length ?? 0));
  const ports = PORT_GAP * ((facts.touching.get(node.id) ?? 0) + 1);
  const height = Math.max(textHeight + 22, PUZZLE_MIN_HEIGHT, ports);
  const y = Math.round((height - textHeight) / 2);
  return { width: PUZZLE_WIDTH, height, lines, text: { x, y }, step, notes, ...(code && { code }) };
}

/** A lock is called like its key; with no arrow to it that name would promise one. */
function hasNoKey(node: GameNode, { into }: LinkFacts): boolean {
  return (
    node.kind === 'fastener' && fastenerType(node.type).opensWith === 'key' && (into.get(node.id) ?? 0) === 0
  );
}

/** A plate shows its code, or the name of the lock when it takes a key or has no code, or that it has no key. As wide as its text asks, up to what leaves room for its state. */
export function plateShape(game: Game, node: GameNode, containerWidth: number, facts: LinkFacts): Shape {
  const step = isStep(node);
  const x = PLATE_PAD + (step ? STEP_ROOM : 4) + SIGN_ROOM;
  const right = PLATE_PAD + 4;
  const most = Math.max(PLATE_MIN_WIDTH, containerWidth + OVERHANG - STATE_ROOM - 6);
  const room = most - x - right;
  const code = codeLines(game, node, room);
  const lines = code ? [] : hasNoKey(node, facts) ? wrap(NO_KEY, room, THING) : nameLines(node, room, THING);
  const notes = notesOf(node, facts);
  const textWidthUsed = Math.max(
    code ? codeWidth(code) : widest(lines, THING),
    ...notes.map((note) => textWidth(noteText(note), NOTE)),
  );
  const width = Math.max(PLATE_MIN_WIDTH, Math.min(most, Math.ceil(x + textWidthUsed + right)));
  const count = (code?.lines.length ?? lines.length) + notes.length;
  const height = PLATE_HEIGHT + LINE * (count - 1);
  return {
    width,
    height,
    lines,
    text: { x, y: (PLATE_HEIGHT - LINE) / 2 },
    step,
    notes,
    ...(code && { code }),
  };
}

/** Name and notes of a tray; its height ends below them, where the rows begin. */
export function trayHead(node: GameNode, width: number, facts: LinkFacts): Shape {
  const step = isStep(node);
  const x = step ? 10 + STEP_ROOM : TRAY_PAD;
  const lines = nameLines(node, width - x - TRAY_PAD, NAME);
  const notes = notesOf(node, facts);
  const height = TRAY_TOP + LINE * (lines.length + notes.length) + 10;
  return { width, height, lines, text: { x, y: TRAY_TOP }, step, notes };
}

/** A tray drawn as one row: its name, and below it a line for lock signs and the count of what it holds. */
export function foldedShape(node: GameNode, width: number, facts: LinkFacts): Shape {
  const head = trayHead(node, width, facts);
  const y = 10;
  const height = y + LINE * (head.lines.length + head.notes.length + 1) + 12;
  return { ...head, height, text: { x: head.text.x, y } };
}
